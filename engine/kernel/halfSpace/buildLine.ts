import { expTable } from "../../special/expTable.ts";
import type { KernelLine } from "./KernelLine.ts";
import type { KernelPatches } from "./KernelPatches.ts";
import type { KernelTable } from "./KernelTable.ts";
import { readPatchKernels } from "./readPatchKernels.ts";
import { readTable } from "./readTable.ts";
import { splineCoefficients } from "./splineCoefficients.ts";
import { staticPart } from "./staticPart.ts";

/** Added error aimed at, relative to 1/R. */
export const LINE_TOLERANCE = 1e-5;
const MOST_CELLS = 4000;

/**
 * Cuts a line out of a table or of patches: ζ = value against ρ from..to, or ρ = value against ζ from..to.
 *
 * The number of cells is raised until the error in the middle of the cells is below 1e-5/R; reported as `error` with the
 * source's own. Cost: about a millisecond.
 * @throws RangeError when the line is empty or starts below 0
 */
export function buildLine(
  source: KernelTable | KernelPatches,
  fixed: KernelLine["fixed"],
  value: number,
  from: number,
  to: number,
): KernelLine {
  if (!(from >= 0 && to > from && value >= 0)) throw new RangeError(`buildLine: ${from} to ${to} m at ${value} m`);
  const { k0, k1Re, k1Im } = source.place.halfSpace;
  const out = new Float64Array(10);
  const phase = new Float64Array(2);
  const read = (x: number) => {
    const rho = fixed === "zeta" ? x : value;
    const zeta = fixed === "zeta" ? value : x;
    if ("coefficients" in source) readTable(out, source, rho, zeta);
    else readPatchKernels(out, source, rho, zeta);
    const R = Math.sqrt(rho * rho + zeta * zeta);
    expTable(phase, 0, k0 * R);
    for (let c = 0; c < 8; c += 2) {
      const re = out[c]! * phase[0]! - out[c + 1]! * phase[1]!;
      out[c + 1] = out[c]! * phase[1]! + out[c + 1]! * phase[0]!;
      out[c] = re;
    }
    return R;
  };
  const x0 = Math.max(0.05 / Math.sqrt(k1Re * k1Re + k1Im * k1Im), 0.5 * value);
  const xb = 3 / k0;
  const s0 = Math.log(1 + from / x0) + from / xb;
  const s1 = Math.log(1 + to / x0) + to / xb;
  const xAt = (s: number) => {
    let x = from;
    for (let i = 0; i < 60; i++) {
      const step = (s - Math.log(1 + x / x0) - x / xb) / (1 / (x0 + x) + 1 / xb);
      x += step;
      if (Math.abs(step) < 1e-14 * x) break;
    }
    return x;
  };

  for (let cells = 32; ; ) {
    const n = cells + 1;
    const values = new Float64Array(8 * n);
    for (let i = 0; i < n; i++) {
      read(xAt(s0 + ((s1 - s0) * i) / cells));
      values.set(out.subarray(0, 8), 8 * i);
    }
    const C = new Float64Array(8 * (n + 2));
    const work = new Float64Array(2 * n);
    for (let c = 0; c < 8; c++) splineCoefficients(C, c, 8, values, c, 8, n, work);
    let worst = 0;
    for (let i = 0; i < cells; i++) {
      const R = read(xAt(s0 + ((s1 - s0) * (i + 0.5)) / cells));
      for (let c = 0; c < 8; c++) {
        const a = 8 * i + c;
        const spline = (C[a]! + 23 * (C[a + 8]! + C[a + 16]!) + C[a + 24]!) / 48;
        worst = Math.max(worst, Math.abs(spline - out[c]!) * R);
      }
    }
    if (worst <= LINE_TOLERANCE || cells >= MOST_CELLS) {
      return {
        place: source.place,
        fixed,
        value,
        staticPart: staticPart(source.place),
        from,
        to,
        x0,
        xb,
        perS: cells / (s1 - s0),
        s0,
        coefficients: C,
        error: worst + source.error,
      };
    }
    // Fourth order, but never less than half as many again: the first try may be too coarse to tell.
    cells = Math.min(MOST_CELLS, Math.ceil(cells * Math.min(3, Math.max(1.4, 1.1 * (worst / LINE_TOLERANCE) ** 0.25))));
  }
}
