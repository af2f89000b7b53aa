import type { BandLayout } from "./bandLayout.ts";
import type { FrequencySpan } from "./feedFacts.ts";

interface Props {
  readonly layout: BandLayout;
  readonly clip: string;
  readonly band: FrequencySpan;
  readonly design_MHz: number;
  /** Levels drawn strong, be they ticks or not. */
  readonly limits: readonly number[];
}

/** What every chart over a band stands on: the band, level rules, its edges, the design frequency, the axis. */
export function BandGround({ layout, clip, band, design_MHz, limits }: Props) {
  const { plot } = layout;
  const foot = plot.y + plot.height;
  const rule = (v: number) => `M${plot.x.toFixed(1)},${layout.y(v).toFixed(1)}h${plot.width.toFixed(1)}`;
  return (
    <>
      <clipPath id={clip}>
        <rect x={plot.x} y={plot.y - 2} width={plot.width} height={plot.height + 4} />
      </clipPath>
      <rect
        className="bc-band"
        x={layout.x(band.from_MHz)}
        y={plot.y}
        width={layout.x(band.to_MHz) - layout.x(band.from_MHz)}
        height={plot.height}
      />
      {layout.ticks.map((v) => (
        <path key={v} className={`tr-grid${limits.includes(v) ? " bc-limit" : ""}`} d={rule(v)} />
      ))}
      {limits
        .filter((v) => !layout.ticks.includes(v))
        .map((v) => (
          <path key={v} className="tr-grid bc-limit" d={rule(v)} clipPath={`url(#${clip})`} />
        ))}
      {[band.from_MHz, band.to_MHz].map((f) => (
        <path key={f} className="bc-edge" d={`M${layout.x(f).toFixed(1)},${plot.y}V${foot + 4}`} />
      ))}
      <path className="bc-design" d={`M${layout.x(design_MHz).toFixed(1)},${plot.y}V${foot + 4}`} />
      <path className="tr-axis" d={`M${plot.x},${foot}h${plot.width}`} />
    </>
  );
}
