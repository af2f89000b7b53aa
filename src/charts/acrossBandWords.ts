import type { BandReadout } from "../../engine/index.ts";
import { figure } from "./figure.ts";

/** What becomes of the beam from one edge of the band to the other, and how firm that is; null where no beam was swept. */
export function acrossBandWords(band: BandReadout, from_MHz: number, to_MHz: number): string | null {
  const { beam, frequency_MHz, interpolated } = band;
  if (!beam) return null;
  const slack = 1e-9 * to_MHz;
  const within = frequency_MHz.flatMap((f, i) => (f >= from_MHz - slack && f <= to_MHz + slack ? [i] : []));
  if (within.length === 0) return null;
  const range = (of: readonly number[]) => {
    const values = within.map((i) => of[i]!);
    return `${figure(Math.min(...values), 1)} to ${figure(Math.max(...values), 1)}`;
  };
  const said = `Across the band, at ${beam.elevation_deg}°: forward ${range(beam.forward_dBi)} dBi, front-to-back ${range(beam.frontToBack_dB)} dB`;
  if (!interpolated?.error_dB) return `${said}.`;
  const solves = interpolated.solved_MHz.length;
  return `${said}, by a curve through ${solves} frequencies, checked to ${figure(Math.max(0.01, interpolated.error_dB), 2)} dB.`;
}
