import type { Basis } from "../../engine/basis/Basis.ts";
import { buildBasis } from "../../engine/basis/buildBasis.ts";
import { segmentCurrents } from "../../engine/basis/segmentCurrents.ts";
import { C0_mPerS } from "../../engine/constants.ts";
import type { WireProblem } from "../../engine/index.ts";
import { surroundings } from "../../engine/kernel/surroundings.ts";
import { fillMatrix } from "../../engine/matrix/fillMatrix.ts";
import { imagesCurrents } from "../../engine/wires/imagesCurrents.ts";
import { joinWires } from "../../engine/wires/joinWires.ts";
import type { Segments } from "../../engine/wires/Segments.ts";
import { segmentWires } from "../../engine/wires/segmentWires.ts";

/** Tables of soil kernels are to reach this far, in wavelengths. */
const REACH_WAVELENGTHS = 2;

export interface SinusoidalStates {
  readonly segments: Segments;
  readonly k: number;
  /** Per wire, 4·S: sin k(tip − |z|) on that wire and nothing on the others. */
  readonly currents: readonly Float64Array[];
  /** Reaction of wire i's current with wire j's, fᵢᵀ Z fⱼ [ohm·A²]. */
  reaction(i: number, j: number): { re: number; im: number };
}

/**
 * The engine's own segments and matrix under currents laid down by hand: on every upright wire the sinusoid
 * sin k(h − |z|) that vanishes at its tips, z from its foot where that stands on a ground plane, else from its middle,
 * and h the same to its top. This is the current of the classical induced-EMF formulas, so fᵢᵀ Z fⱼ answers to them
 * without any equations solved.
 */
export function sinusoidalStates(problem: WireProblem): SinusoidalStates {
  const plane = imagesCurrents(problem);
  const k = (2 * Math.PI * problem.frequency_Hz) / C0_mPerS;
  const graph = joinWires(problem.wires, plane);
  const { segments } = segmentWires(problem.wires, problem.ports, graph, problem.frequency_Hz, (2 * Math.PI) / k);
  const basis = buildBasis(segments);
  const { kernel, store } = surroundings(problem, REACH_WAVELENGTHS * ((2 * Math.PI) / k));
  const Z = fillMatrix(segments, basis, problem.frequency_Hz, kernel, { store });
  const f = problem.wires.map((wire, w) => {
    const middle = plane && wire.from_m[2] === 0 ? 0 : 0.5 * (wire.from_m[2] + wire.to_m[2]);
    return coefficients(segments, basis, w, (z) => Math.sin(k * (wire.to_m[2] - middle - Math.abs(z - middle))));
  });
  const N = basis.count;
  return {
    segments,
    k,
    currents: f.map((x) => segmentCurrents(segments, basis, x)),
    reaction(i, j) {
      let re = 0;
      let im = 0;
      for (let m = 0; m < N; m++)
        for (let n = 0; n < N; n++) {
          const w = f[i]![2 * m]! * f[j]![2 * n]!;
          re += w * Z[2 * (m * N + n)]!;
          im += w * Z[2 * (m * N + n) + 1]!;
        }
      return { re, im };
    },
  };
}

function coefficients(segments: Segments, basis: Basis, wire: number, current: (z: number) => number): Float64Array {
  const x = new Float64Array(2 * basis.count);
  for (let h = 0; h < basis.halfCount; h++) {
    const s = basis.halfSegment[h]!;
    if (segments.wire[s] !== wire) continue;
    const z = segments.start[3 * s + 2]! + basis.halfEnd[h]! * segments.length[s]! * segments.tangent[3 * s + 2]!;
    x[2 * basis.halfBasis[h]!] = basis.halfSign[h]! * current(z);
  }
  return x;
}
