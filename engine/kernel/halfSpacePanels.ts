import { expTable } from "../special/expTable.ts";
import type { Segments } from "../wires/Segments.ts";
import type { BuriedKernels } from "./halfSpace/BuriedKernels.ts";
import type { KernelTable } from "./halfSpace/KernelTable.ts";
import { readBetween } from "./halfSpace/readBetween.ts";
import { remaindersAcross } from "./halfSpace/remaindersAcross.ts";
import { remaindersInAir } from "./halfSpace/remaindersInAir.ts";
import { remaindersInSoil } from "./halfSpace/remaindersInSoil.ts";
import type { PanelKernel } from "./PanelKernel.ts";

const phase = new Float64Array(2);

/**
 * The kernels of `halfSpaceKernel` between points, and which panels they serve: those that keep to one side of the surface, but
 * for wires in soil that are not level against wires in air, which the spectrum's depth factor would ask more points of.
 *
 * @param buried absent: all wires are in air
 */
export function halfSpacePanels(table: KernelTable, buried?: BuriedKernels): PanelKernel {
  const { halfSpace } = table.place;
  const { k0, k1Re, k1Im, epsRe, epsIm } = halfSpace;
  const k1 = Math.sqrt(k1Re * k1Re + k1Im * k1Im);
  const size = epsRe * epsRe + epsIm * epsIm;
  const inAir = remaindersInAir(table);
  const inSoil = buried && remaindersInSoil(buried.soil);
  const across = buried && remaindersAcross(halfSpace, buried.across, buried.grid);
  const overSoil = { k: k0, k1, k1Im };
  const withinSoil = { k: k1, k1, k1Im };
  return {
    medium(segments, s, fromS, toS, t, fromT, toT) {
      const one = side(segments, s, fromS, toS);
      const other = side(segments, t, fromT, toT);
      if (one > 0 && other > 0) return overSoil;
      if (!buried || one === 0 || other === 0) return null;
      if (one < 0 && other < 0) return withinSoil;
      return segments.tangent[3 * (one < 0 ? s : t) + 2] === 0 ? overSoil : null;
    },
    read(out, segments, s, atS, t, atT) {
      const across4 = 4 * atT.length;
      const sBelow = side(segments, s, atS[0]!, atS.at(-1)!) < 0;
      const tBelow = side(segments, t, atT[0]!, atT.at(-1)!) < 0;
      if (sBelow && tBelow && inSoil) {
        readBetween(out, inSoil, -1, segments, s, atS, across4, t, atT, 4);
        addDirect(out, segments, s, atS, t, atT, k1Re, k1Im);
        for (let at = 2; at < across4 * atS.length; at += 4) {
          const re = out[at]!;
          const im = out[at + 1]!;
          out[at] = (re * epsRe + im * epsIm) / size;
          out[at + 1] = (im * epsRe - re * epsIm) / size;
        }
      } else if (tBelow && across) readBetween(out, across, 1, segments, s, atS, across4, t, atT, 4);
      else if (sBelow && across) readBetween(out, across, 1, segments, t, atT, 4, s, atS, across4);
      else {
        readBetween(out, inAir, 1, segments, s, atS, across4, t, atT, 4);
        addDirect(out, segments, s, atS, t, atT, k0, 0);
      }
    },
  };
}

/** 1 where a piece of a wire is in air, −1 where it is in soil, 0 where it is in both. */
function side({ start, tangent }: Segments, s: number, from: number, to: number): number {
  const a = start[3 * s + 2]! + from * tangent[3 * s + 2]!;
  const b = start[3 * s + 2]! + to * tangent[3 * s + 2]!;
  const rounding = 1e-9 * (to - from);
  if (Math.min(a, b) >= -rounding) return 1;
  return Math.max(a, b) <= rounding ? -1 : 0;
}

/** Adds e^{−jkR}/R from point to point, with the tangents' product for the currents. */
function addDirect(
  out: Float64Array,
  { start, tangent }: Segments,
  s: number,
  atS: Float64Array,
  t: number,
  atT: Float64Array,
  kRe: number,
  kIm: number,
): void {
  const sx = tangent[3 * s]!;
  const sy = tangent[3 * s + 1]!;
  const sz = tangent[3 * s + 2]!;
  const tx = tangent[3 * t]!;
  const ty = tangent[3 * t + 1]!;
  const tz = tangent[3 * t + 2]!;
  const dot = sx * tx + sy * ty + sz * tz;
  const x0 = start[3 * s]! - start[3 * t]!;
  const y0 = start[3 * s + 1]! - start[3 * t + 1]!;
  const z0 = start[3 * s + 2]! - start[3 * t + 2]!;
  for (let i = 0, at = 0; i < atS.length; i++) {
    const u = atS[i]!;
    for (let j = 0; j < atT.length; j++, at += 4) {
      const v = atT[j]!;
      const x = x0 + u * sx - v * tx;
      const y = y0 + u * sy - v * ty;
      const z = z0 + u * sz - v * tz;
      const R = Math.sqrt(x * x + y * y + z * z);
      expTable(phase, 0, kRe * R);
      const f = (kIm === 0 ? 1 : Math.exp(kIm * R)) / R;
      const re = f * phase[0]!;
      const im = -f * phase[1]!;
      out[at]! += dot * re;
      out[at + 1]! += dot * im;
      out[at + 2]! += re;
      out[at + 3]! += im;
    }
  }
}
