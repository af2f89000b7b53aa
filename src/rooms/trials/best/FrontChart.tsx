import { memo, useMemo } from "react";
import type { BestPicture } from "../../../../engine/index.ts";
import { ChartFrame } from "../../../charts/ChartFrame.tsx";
import { figure } from "../../../charts/figure.ts";
import { fitMarks } from "../../../charts/fitMarks.ts";
import type { Mark } from "../../../charts/Mark.ts";
import { MarkText } from "../../../charts/MarkText.tsx";
import { placeLabels } from "../../../charts/placeLabels.ts";
import { textWidth_px } from "../../../charts/textWidth.ts";
import { useChartSize } from "../../../charts/useChartSize.ts";
import { lineLayout } from "../chart/lineLayout.ts";
import "./FrontChart.css";

/** The trade: front to back against gain ahead, each design with its number and SWR. */
export const FrontChart = memo(function FrontChart({
  picture,
  stale,
}: {
  readonly picture: BestPicture;
  readonly stale: boolean;
}) {
  const { ref, width_px, text_px } = useChartSize();
  const { front, dots, start, pick } = picture;
  const layout = useMemo(() => {
    const all = [start.figures, ...front.map((one) => one.figures), ...dots];
    const across = all.map((one) => one.frontToBack_dB).filter(Number.isFinite);
    const [low, high] = [Math.min(...across), Math.max(...across)];
    const edge = Math.max(0.5, 0.06 * (high - low));
    return lineLayout({
      width_px,
      text_px,
      from: low - edge,
      to: high + edge,
      values: all.map((one) => one.forward_dBi),
      tall_px: 260,
    });
  }, [front, dots, start, width_px, text_px]);
  const { plot } = layout;
  const foot = plot.y + plot.height;
  const spots = useMemo(
    () =>
      [
        { id: "now", text: "now", figures: start.figures, role: "now" },
        ...front.map((one, i) => ({
          id: `${i + 1}`,
          text: `${i + 1}`,
          figures: one.figures,
          role: one === pick ? "pick" : "front",
        })),
      ].map((one) => ({ ...one, at: layout.point(one.figures.frontToBack_dB, one.figures.forward_dBi) })),
    [front, start, pick, layout],
  );
  const sheet = useMemo(() => {
    const marks: Mark[] = [
      ...layout.xTicks.map(
        (v): Mark => ({
          id: `x${v}`,
          text: figure(v, Number.isInteger(v) ? 0 : 1),
          x: layout.x(v),
          y: foot + 0.95 * text_px,
          side: "middle",
          kind: "number",
        }),
      ),
      ...layout.yTicks.map(
        (v): Mark => ({
          id: `y${v}`,
          text: figure(v, Number.isInteger(v) ? 0 : 1),
          x: plot.x - 0.5 * text_px,
          y: layout.y(v),
          side: "end",
          kind: "number",
        }),
      ),
      {
        id: "x",
        text: "front to back, dB",
        x: plot.x + plot.width,
        y: foot + 2.3 * text_px,
        side: "end",
        kind: "word",
      },
      { id: "y", text: "gain ahead, dBi, upward", x: 2, y: foot + 2.3 * text_px, side: "start", kind: "word" },
    ];
    return fitMarks(marks, text_px, layout.width).marks;
  }, [layout, plot, foot, text_px]);
  const labels = useMemo(
    () =>
      placeLabels({
        labels: spots.map(({ id, figures, at }) => ({
          id,
          width: textWidth_px(labelOf(id, figures.swr), text_px),
          height: 1.2 * text_px,
          anchors: (
            [
              [1, 0],
              [-1, 0],
              [0, -1],
              [0, 1],
              [0.7, 0.7],
              [-0.7, -0.7],
              [0.7, -0.7],
              [-0.7, 0.7],
            ] as const
          ).map((away) => ({ at: [at[0] + 8 * away[0], at[1] + 8 * away[1]] as const, away })),
        })),
        lines: [],
        keepOut: spots.map(({ at: [x, y] }) => ({ x: x - 10, y: y - 10, width: 20, height: 20 })),
        frame: { x: plot.x, y: plot.y - 4, width: plot.width, height: plot.height + 4 },
      }),
    [spots, text_px, plot],
  );
  const dotted = useMemo(
    () =>
      dots
        .map((one) => layout.point(one.frontToBack_dB, one.forward_dBi))
        .map(([x, y]) => `M${x.toFixed(1)},${y.toFixed(1)}h0`)
        .join(""),
    [dots, layout],
  );
  const best = pick.figures;
  return (
    <ChartFrame
      title="What can be had together"
      note="numbers as in the table; dots: all designs of the front"
      summary={`Gain ahead against front to back. The pick: ${figure(best.forward_dBi, 1)} dBi, ${figure(best.frontToBack_dB, 1)} dB, SWR ${figure(best.swr, 2)}.`}
      width_px={layout.width}
      height_px={layout.height}
      plotRef={ref}
      stale={stale}
      waiting={front.length > 0 ? null : "The front is on its way."}
      below={<p className="fc-below">full: best by your weights; black: the plan as it is</p>}
      table={{
        caption: "Designs of the front: front to back, gain ahead, SWR",
        heads: ["design", "front to back, dB", "gain ahead, dBi", "SWR"],
        rows: () =>
          spots.map(({ text, figures: f }) => [
            text,
            figure(f.frontToBack_dB, 1),
            figure(f.forward_dBi, 2),
            figure(f.swr, 2),
          ]),
      }}
    >
      {layout.yTicks.map((v) => (
        <path key={v} className="tr-grid" d={`M${plot.x},${layout.y(v).toFixed(1)}h${plot.width}`} />
      ))}
      {layout.xTicks.map((v) => (
        <path key={v} className="tr-grid" d={`M${layout.x(v).toFixed(1)},${plot.y}V${foot}`} />
      ))}
      <path className="tr-axis" d={`M${plot.x},${foot}h${plot.width}`} />
      <MarkText marks={sheet} />
      <path className="fc-dots" d={dotted} />
      {spots.toReversed().map(({ id, text, role, at: [x, y] }) => (
        <g key={id} className={`fc-spot fc-${role}`}>
          <circle cx={x.toFixed(1)} cy={y.toFixed(1)} r={role === "now" ? 6 : 9} />
          {role !== "now" && (
            <text x={x.toFixed(1)} y={y.toFixed(1)}>
              {text}
            </text>
          )}
        </g>
      ))}
      {spots.map(({ id, figures }) => {
        const box = labels.get(id);
        return (
          box && (
            <text key={id} className="tr-number tr-middle" x={box.x + box.width / 2} y={box.y + box.height / 2}>
              {labelOf(id, figures.swr)}
            </text>
          )
        );
      })}
    </ChartFrame>
  );
});

const labelOf = (id: string, swr: number) => `${id === "now" ? "now, " : ""}SWR ${figure(swr, swr < 10 ? 1 : 0)}`;
