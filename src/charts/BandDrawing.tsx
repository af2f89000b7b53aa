import { useId, useMemo } from "react";
import { BandGround } from "./BandGround.tsx";
import type { BandTrace } from "./BandTrace.ts";
import type { BandLayout } from "./bandLayout.ts";
import { bandMarks } from "./bandMarks.ts";
import { bandNotes } from "./bandNotes.ts";
import { drawTraces } from "./drawTraces.ts";
import type { FeedFacts, FrequencySpan } from "./feedFacts.ts";
import { MarkText } from "./MarkText.tsx";
import { markPath } from "./markPath.ts";
import { type BandQuantity, readQuantity } from "./readSweep.ts";
import { TraceLabels } from "./TraceLabels.tsx";
import { traceClass } from "./traceClass.ts";

interface Props {
  readonly layout: BandLayout;
  readonly text_px: number;
  readonly quantity: BandQuantity;
  readonly curves: readonly (BandTrace & { readonly curve: readonly { frequency_MHz: number; value: number }[] })[];
  readonly facts: readonly (FeedFacts & { readonly id: string })[];
  readonly band: FrequencySpan;
  readonly bandLabel: string;
  readonly design_MHz: number;
  readonly marker_MHz: number;
}

const liveFirst = [0.12, 0.88, 0.2, 0.8, 0.3, 0.7, 0.4, 0.6, 0.05, 0.95];
const pinFirst = [0.85, 0.15, 0.75, 0.25, 0.65, 0.35, 0.92, 0.08, 0.5];

/** The picture of a band chart: band, rules, edges, design frequency, pins, live design, notes, names, marker. */
export function BandDrawing(p: Props) {
  const { layout, text_px, quantity, curves, facts, band, bandLabel, design_MHz } = p;
  const clip = useId();
  const { plot } = layout;
  const foot = plot.y + plot.height;
  const sheet = useMemo(
    () => bandMarks({ layout, quantity, text_px, band, bandLabel, design_MHz }),
    [layout, quantity, text_px, band, bandLabel, design_MHz],
  );
  const { drawn, notes } = useMemo(() => {
    const pointed = curves.map((c) => ({ ...c, points: c.curve.map((s) => layout.point(s.frequency_MHz, s.value)) }));
    const upright = (f: number) => ({ points: [[layout.x(f), plot.y] as const, [layout.x(f), foot] as const] });
    const level = (v: number) => ({
      points: [layout.point(layout.frequencyAt([0, 0]), v), layout.point(layout.frequencyAt([layout.width, 0]), v)],
    });
    const limits = layout.ticks.filter((v) => isLimit(quantity, v)).map(level);
    const edges = [...limits, ...[band.from_MHz, band.to_MHz, design_MHz].map(upright)];
    const lines = [...pointed.map((c) => ({ of: c.id, points: c.points })), ...edges];
    const notes = bandNotes({ layout, quantity, text_px, facts, lines, keepOut: sheet.keepOut });
    const drawn = drawTraces(pointed, {
      fixed: edges,
      text_px,
      keepOut: [
        ...sheet.keepOut,
        ...notes.flatMap((n) => (n.box ? [n.box] : [])),
        ...notes.map(({ at: [x, y] }) => ({ x: x - 7, y: y - 7, width: 14, height: 14 })),
      ],
      frame: { x: plot.x + 2, y: plot.y, width: plot.width - 4, height: plot.height },
      hub: [plot.x + plot.width / 2, foot + 4000],
      liveFirst,
      pinFirst,
    });
    return { drawn, notes };
  }, [curves, facts, layout, quantity, text_px, sheet, plot, foot, band, design_MHz]);
  const feedOf = new Map(curves.map((c) => [c.id, c.feed]));
  const marker_x = layout.x(p.marker_MHz);

  return (
    <>
      <BandGround
        layout={layout}
        clip={clip}
        band={band}
        design_MHz={design_MHz}
        limits={layout.ticks.filter((v) => isLimit(quantity, v))}
      />
      <MarkText marks={sheet.marks} />
      <g clipPath={`url(#${clip})`}>
        {drawn.map((t) => (
          <path key={t.id} className={`${traceClass(t)}${feedOf.get(t.id) ? " bc-feed" : ""}`} d={t.path} />
        ))}
      </g>
      <path className="tr-marker" d={`M${marker_x.toFixed(1)},${foot}V${plot.y}`} />
      {notes.map((n) => (
        <g key={n.id}>
          {n.leader && <path className="bc-leader" d={n.leader} />}
          {n.kind === "lowest" ? (
            <circle className="bc-lowest" cx={n.at[0].toFixed(1)} cy={n.at[1].toFixed(1)} r={5} />
          ) : (
            <path className="bc-lowest" d={`M${n.at[0].toFixed(1)},${n.at[1].toFixed(1)}m0,-6l5,6l-5,6l-5,-6Z`} />
          )}
          {n.box && (
            <text
              className="tr-label tr-label-live"
              x={(n.box.x + n.box.width / 2).toFixed(1)}
              y={(n.box.y + n.box.height / 2).toFixed(1)}
            >
              {n.text}
            </text>
          )}
        </g>
      ))}
      <TraceLabels drawn={drawn} />
      <g clipPath={`url(#${clip})`}>
        {curves.map((t) => {
          const value = readQuantity(t.sweep, quantity, p.marker_MHz);
          if (!Number.isFinite(value)) return null;
          return (
            <path
              key={t.id}
              className={`tr-mark tr-mark-${t.role}`}
              d={markPath(t, layout.point(p.marker_MHz, value))}
            />
          );
        })}
      </g>
      <circle className="tr-grip" cx={marker_x.toFixed(1)} cy={plot.y} r={6} />
    </>
  );
}

/** The lines people ask about: SWR 1.5 and 2, and no reactance. */
const isLimit = (quantity: BandQuantity, v: number) =>
  quantity === "swr" ? v === 1.5 || v === 2 : quantity === "reactance" && v === 0;
