import { ORDER, toSeries, zeros } from "./chebyshevGrid.ts";
import type { KernelPatches } from "./KernelPatches.ts";
import type { Placement } from "./Placement.ts";
import { readSeries } from "./readSeries.ts";
import { removeStatic } from "./removeStatic.ts";
import { spectralPath } from "./spectralPath.ts";
import { staticPart } from "./staticPart.ts";
import { sumSpectrum } from "./sumSpectrum.ts";

/** Points per panel of the path. */
const PANEL = 10;
/** Where T_ORDER, the first term left out, peaks: the values there tell the error. */
const PEAKS = [0, Math.cos(Math.PI / ORDER)] as const;
/** How many times a rectangle may be cut. */
const DEEPEST = 8;

/**
 * Computes the remainders over all distances from rMin to rMax and height sums up to zetaMax.
 *
 * Octave by octave inwards, three rectangles each: beside, diagonally above and above the next smaller square.
 *
 *    ζ  ____________      A rectangle costs one path, and ORDER Bessel functions and exponentials per node of it: its
 *      |  C  |  B   |     ORDER² points share them. It is cut in two where its series, or the values at four spots,
 *      |_____|______|     shows that the tolerance is not met.
 *      |     |  A   |
 *      |_____|______| ρ
 *
 * @param tolerance  wanted error of S relative to 1/R; the last series coefficients may be four times that
 * @throws RangeError unless 0 < rMin < rMax and zetaMax > 0
 */
export function buildPatches(
  place: Placement,
  rMin: number,
  rMax: number,
  zetaMax: number,
  tolerance: number,
): KernelPatches {
  if (!(rMin > 0 && rMax > rMin && zetaMax > 0))
    throw new RangeError(`buildPatches: distances from ${rMin} to ${rMax} m, heights to ${zetaMax} m`);
  const octaves = Math.ceil(Math.log2(rMax / rMin) + 1e-9);
  const bounds: number[] = [];
  const halves: number[] = [];
  const series: (Float64Array | null)[] = [];
  const A = staticPart(place);
  const rho = new Float64Array(ORDER);
  const zeta = new Float64Array(ORDER);
  const spotRho = new Float64Array(2);
  const spotZeta = new Float64Array(2);
  const spots = new Float64Array(32);
  const read = new Float64Array(8);
  let error = 0;
  let nodes = 0;

  const add = (rho0: number, rho1: number, zeta0: number, zeta1: number): number => {
    bounds.push(rho0, rho1, zeta0, zeta1);
    halves.push(0, 0);
    series.push(null);
    return series.length - 1;
  };

  const refine = (r: number, depth: number): void => {
    const rho0 = bounds[4 * r]!;
    const rho1 = bounds[4 * r + 1]!;
    const zeta0 = bounds[4 * r + 2]!;
    const zeta1 = bounds[4 * r + 3]!;
    const midRho = 0.5 * (rho0 + rho1);
    const midZeta = 0.5 * (zeta0 + zeta1);
    for (let i = 0; i < ORDER; i++) {
      rho[i] = midRho + 0.5 * (rho1 - rho0) * zeros[i]!;
      zeta[i] = midZeta + 0.5 * (zeta1 - zeta0) * zeros[i]!;
    }
    const path = spectralPath(place, { rho0, rho1, zeta0, zeta1 }, PANEL);
    nodes += path.count;
    const values = sumSpectrum(new Float64Array(8 * ORDER * ORDER), place, path, rho, zeta);
    for (let i = 0; i < ORDER; i++)
      for (let j = 0; j < ORDER; j++) removeStatic(values, 8 * (i * ORDER + j), place, A, rho[i]!, zeta[j]!);
    toSeries(values);

    // The last two coefficients in each direction (two, because every other one may vanish).
    const R = Math.sqrt(rho1 * rho1 + zeta1 * zeta1);
    let tailRho = 0;
    let tailZeta = 0;
    for (let l = ORDER - 2; l < ORDER; l++) {
      for (let m = 0; m < 8 * ORDER; m++) {
        const i = m >> 3;
        const c = m & 7;
        tailRho = Math.max(tailRho, Math.abs(values[8 * (l * ORDER + i) + c]!) * R);
        tailZeta = Math.max(tailZeta, Math.abs(values[8 * (i * ORDER + l) + c]!) * R);
      }
    }
    let off = 0;
    for (let i = 0; i < 2; i++) {
      spotRho[i] = midRho + 0.5 * (rho1 - rho0) * PEAKS[i]!;
      spotZeta[i] = midZeta + 0.5 * (zeta1 - zeta0) * PEAKS[i]!;
    }
    sumSpectrum(spots, place, path, spotRho, spotZeta);
    for (let i = 0; i < 4; i++) {
      const x = spotRho[i >> 1]!;
      const y = spotZeta[i & 1]!;
      removeStatic(spots, 8 * i, place, A, x, y);
      readSeries(read, values, 0, PEAKS[i >> 1]!, PEAKS[i & 1]!);
      const spotR = Math.sqrt(x * x + y * y);
      for (let c = 0; c < 8; c++) off = Math.max(off, Math.abs(read[c]! - spots[8 * i + c]!) * spotR);
    }

    if ((off <= tolerance && Math.max(tailRho, tailZeta) <= 4 * tolerance) || depth === DEEPEST) {
      series[r] = values;
      // Four spots can all lie well; a quarter of the last coefficients is what usually follows them.
      error = Math.max(error, off, 0.25 * Math.max(tailRho, tailZeta));
      return;
    }
    const inZeta = tailZeta > tailRho;
    const first = inZeta ? add(rho0, rho1, zeta0, midZeta) : add(rho0, midRho, zeta0, zeta1);
    if (inZeta) add(rho0, rho1, midZeta, zeta1);
    else add(midRho, rho1, zeta0, zeta1);
    // The second half is the very next rectangle.
    halves[2 * r] = first;
    halves[2 * r + 1] = inZeta ? 1 : 0;
    refine(first, depth + 1);
    refine(first + 1, depth + 1);
  };

  for (let o = 0; o < octaves; o++) {
    const far = rMax * 2 ** -o;
    const mid = 0.5 * far;
    const top = Math.min(far, zetaMax);
    add(mid, far, 0, Math.min(mid, zetaMax));
    add(mid, far, mid, top);
    add(0, mid, mid, top);
  }
  for (let r = 0; r < 3 * octaves; r++) if (bounds[4 * r + 3]! > bounds[4 * r + 2]!) refine(r, 0);

  const filled = series.filter((s) => s !== null);
  const all = new Float64Array(8 * ORDER * ORDER * filled.length);
  const begin = new Int32Array(series.length).fill(-1);
  let at = 0;
  for (const [r, s] of series.entries()) {
    if (!s) continue;
    begin[r] = at;
    all.set(s, at);
    at += s.length;
  }
  return {
    place,
    rMin,
    rMax,
    zetaMax,
    octaves,
    order: ORDER,
    bounds: Float64Array.from(bounds),
    halves: Int32Array.from(halves),
    begin,
    series: all,
    error,
    nodes,
  };
}
