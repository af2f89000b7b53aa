import { useId, useMemo, useState } from "react";
import { type Complex, type FeedPoint, type Ladder, matchPath, toReflection } from "../../../../engine/index.ts";
import { ChartFrame } from "../../../charts/ChartFrame.tsx";
import { figure, signedFigure } from "../../../charts/figure.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import { TraceKey } from "../../../charts/TraceKey.tsx";
import { tracePath } from "../../../charts/tracePath.ts";
import { useChartSize } from "../../../charts/useChartSize.ts";
import { useSettings } from "../../../store/useSettings.ts";
import { Switch } from "../../../ui/Switch.tsx";
import type { BandFeed } from "../bandFeed.ts";
import type { LinePoint } from "../line/lineOver.ts";
import { sectionWords } from "../match/sectionWords.ts";
import { smithLayout } from "./smithLayout.ts";

interface Props {
  readonly feed: BandFeed;
  readonly ladder: Ladder;
  /** Across what is drawn, the match in front. */
  readonly over: readonly LinePoint[];
  readonly reference_ohm: number;
  readonly swrLimit: number;
  readonly stale: boolean;
}

/** The feedpoint over the band on the reflection chart, the way a match takes from it, and where that ends. */
export function SmithChart({ feed, ladder, over, reference_ohm, swrLimit, stale }: Props) {
  const { ref, width_px, text_px } = useChartSize();
  const id = useId();
  const units = useSettings((s) => s.units);
  const [view, setView] = useState<View>("whole");
  const layout = useMemo(
    () => smithLayout(width_px, text_px, reference_ohm, view === "whole" ? 1 : 4),
    [width_px, text_px, reference_ohm, view],
  );
  const { point, hub, reach, window, size_px } = layout;
  const { design_MHz } = feed;
  const antenna = feed.at(design_MHz);
  const at = (z: Complex) => point(toReflection(z, reference_ohm));
  const trace = (points: readonly FeedPoint[]) => tracePath(points.map((p) => at(p.impedance_ohm)));
  const steps = useMemo(
    () => matchPath(ladder, design_MHz, antenna, reference_ohm),
    [ladder, design_MHz, antenna, reference_ohm],
  );
  const ends = over.map((p) => ({ frequency_MHz: p.frequency_MHz, impedance_ohm: p.lineEnd }));
  const last = steps.at(-1)?.points.at(-1);
  const hasMatch = ladder.length > 0;
  const edges = [feed.span.from_MHz, feed.span.to_MHz];
  const step = Math.max(1, Math.floor((over.length - 1) / 16));
  return (
    <div className="fr-part">
      <Switch<View>
        label="how much of the chart"
        isLabelShown={false}
        choices={views}
        value={view}
        onChange={setView}
      />
      <ChartFrame
        title={`Reflection chart, ${figure(reference_ohm, 0)} Ω in the middle`}
        note={`ring: SWR ${figure(swrLimit, 2)}`}
        summary={`The feedpoint from ${impedanceText(feed.at(edges[0]!).re, feed.at(edges[0]!).im)} at ${megahertz(edges[0]!)} MHz to ${impedanceText(feed.at(edges[1]!).re, feed.at(edges[1]!).im)} at ${megahertz(edges[1]!)} MHz on the reflection chart.${hasMatch ? ` The match leads from there by ${ladder.map((one) => sectionWords(one, units)).join(", then ")}.` : ""} The figures below say the same.`}
        width_px={width_px}
        height_px={size_px}
        plotRef={ref}
        stale={stale}
        waiting={null}
        below={
          <TraceKey
            where={`marks at ${megahertz(design_MHz)} MHz`}
            entries={[
              {
                id: "a",
                name: "feedpoint",
                role: hasMatch ? "pin" : "live",
                style: 0,
                value: impedanceText(antenna.re, antenna.im),
              },
              ...(hasMatch
                ? [
                    {
                      id: "m",
                      name: "after the match",
                      role: "live" as const,
                      style: 0,
                      value: endText(over, design_MHz),
                    },
                  ]
                : []),
            ]}
          />
        }
        table={{
          caption: "Across the band",
          heads: ["MHz", "R + jX", "|Γ|", "angle of Γ", ...(hasMatch ? ["after the match", "|Γ| after"] : [])],
          rows: () =>
            over
              .filter((_, i) => i % step === 0)
              .map((p) => {
                const g = toReflection(p.antenna, reference_ohm);
                const e = toReflection(p.lineEnd, reference_ohm);
                return [
                  megahertz(p.frequency_MHz),
                  impedanceText(p.antenna.re, p.antenna.im),
                  figure(Math.hypot(g.re, g.im), 3),
                  `${signedFigure((Math.atan2(g.im, g.re) * 180) / Math.PI, 0)}°`,
                  ...(hasMatch ? [impedanceText(p.lineEnd.re, p.lineEnd.im), figure(Math.hypot(e.re, e.im), 3)] : []),
                ];
              }),
        }}
      >
        <g transform={`translate(${((width_px - size_px) / 2).toFixed(1)},0)`}>
          <clipPath id={id}>
            <circle cx={hub[0]} cy={hub[1]} r={window + 1} />
          </clipPath>
          <g clipPath={`url(#${id})`}>
            {" "}
            <circle className="sm-inside" cx={hub[0]} cy={hub[1]} r={layout.swrRadius(swrLimit)} />
            <path className="tr-grid" d={`M${hub[0] - reach},${hub[1]}h${2 * reach}`} />
            {layout.rules.map((rule) => (
              <path key={rule.id} className="tr-grid" d={rule.path} />
            ))}
          </g>{" "}
          <circle className="sm-rim" cx={hub[0]} cy={hub[1]} r={window} />
          <circle
            className="sm-limit"
            clipPath={`url(#${id})`}
            cx={hub[0]}
            cy={hub[1]}
            r={layout.swrRadius(swrLimit)}
          />
          <g clipPath={`url(#${id})`}>
            <path className={hasMatch ? "tr-line tr-pin tr-dash-0" : "tr-line tr-live"} d={trace(feed.drawn)} />
            {hasMatch && <path className="tr-line tr-live" d={trace(ends)} />}
            {steps.map(({ section, points }, i) => (
              <path
                // biome-ignore lint/suspicious/noArrayIndexKey: the steps of a match have an order and no other name
                key={`${section.kind}${i}`}
                className="sm-step"
                d={tracePath(points.map(point))}
              />
            ))}
          </g>
          {layout.rules.map(
            ({ id: of, mark }) =>
              mark && (
                <text key={of} className="tr-number" textAnchor={mark.side} x={mark.at[0]} y={mark.at[1]}>
                  {mark.text}
                </text>
              ),
          )}
          <path
            className={`tr-mark tr-mark-${hasMatch ? "pin" : "live"}`}
            d={hasMatch ? box(at(antenna)) : disc(at(antenna))}
          />
          {steps.slice(0, -1).map(({ section, points }, i) => {
            const [x, y] = point(points.at(-1)!);
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: the steps of a match have an order and no other name
              <circle key={`${section.kind}${i}`} className="sm-joint" cx={x} cy={y} r="3.5" />
            );
          })}
          {last && <path className="tr-mark tr-mark-live" d={disc(point(last))} />}
        </g>
      </ChartFrame>
    </div>
  );
}

type View = "whole" | "middle";
const views = [
  { value: "whole", label: "whole chart" },
  { value: "middle", label: "its middle, enlarged" },
] as const;

const disc = ([x, y]: readonly [number, number]) =>
  `M${x.toFixed(1)},${y.toFixed(1)}m-5,0a5,5,0,1,0,10,0a5,5,0,1,0,-10,0Z`;
const box = ([x, y]: readonly [number, number]) => `M${x.toFixed(1)},${y.toFixed(1)}m-4,-4h8v8h-8Z`;

function endText(over: readonly LinePoint[], design_MHz: number): string {
  let nearest = over[0]!;
  for (const one of over)
    if (Math.abs(one.frequency_MHz - design_MHz) < Math.abs(nearest.frequency_MHz - design_MHz)) nearest = one;
  return impedanceText(nearest.lineEnd.re, nearest.lineEnd.im);
}
