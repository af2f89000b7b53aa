import type { WireProblem } from "../contract.ts";
import type { ScreenInput, SlopingPieces, VerticalLine } from "../screen/ScreenInput.ts";
import type { Segments } from "../wires/Segments.ts";

/**
 * Wires and their currents as the preview's ground integral wants them: upright wires as lines, all else as pieces.
 *
 * @param currents one array per state, 4·S each (see segmentCurrents), for 1 A into that state's port
 */
export function screenInput(
  problem: WireProblem,
  segments: Segments,
  k: number,
  currents: readonly Float64Array[],
): ScreenInput {
  const { start, tangent, length, radius, firstOfWire } = segments;
  const states = currents.length;
  const lines: VerticalLine[] = [];
  const leaning: number[] = [];
  for (let w = 0; w + 1 < firstOfWire.length; w++) {
    const first = firstOfWire[w]!;
    const past = firstOfWire[w + 1]!;
    if (Math.abs(tangent[3 * first]!) > 1e-12 || Math.abs(tangent[3 * first + 1]!) > 1e-12) {
      for (let s = first; s < past; s++) leaning.push(s);
      continue;
    }
    const nodes = past - first + 1;
    const rising = tangent[3 * first + 2]! > 0;
    const z_m = new Float64Array(nodes);
    const current = new Float64Array(2 * states * nodes);
    for (let n = 0; n < nodes; n++) {
      // Node n counted along the wire: the start of its segment, or the end of the last one.
      const s = first + Math.min(n, nodes - 2);
      const end = n === nodes - 1 ? 1 : 0;
      const at = rising ? n : nodes - 1 - n;
      z_m[at] = start[3 * s + 2]! + end * length[s]! * tangent[3 * s + 2]!;
      for (let m = 0; m < states; m++)
        for (let part = 0; part < 2; part++)
          current[2 * (m * nodes + at) + part] = (rising ? 1 : -1) * currents[m]![4 * s + 2 * end + part]!;
    }
    lines.push({ x_m: start[3 * first]!, y_m: start[3 * first + 1]!, radius_m: radius[first]!, z_m, current });
  }
  const { ground } = problem;
  return {
    k_radPerM: k,
    omega_radPerS: 2 * Math.PI * problem.frequency_Hz,
    ground:
      ground.kind === "soil"
        ? { relativePermittivity: ground.relativePermittivity, conductivity_SPerM: ground.conductivity_SPerM }
        : { relativePermittivity: 1, conductivity_SPerM: 0 },
    screens: problem.screens ?? [],
    lines,
    ...(leaning.length > 0 && { sloping: pieces(segments, leaning, currents) }),
    states,
  };
}

function pieces(segments: Segments, chosen: readonly number[], currents: readonly Float64Array[]): SlopingPieces {
  const n = chosen.length;
  const from_m = new Float64Array(3 * n);
  const to_m = new Float64Array(3 * n);
  const radius_m = new Float64Array(n);
  const current = new Float64Array(4 * n * currents.length);
  chosen.forEach((s, i) => {
    radius_m[i] = segments.radius[s]!;
    for (let c = 0; c < 3; c++) {
      from_m[3 * i + c] = segments.start[3 * s + c]!;
      to_m[3 * i + c] = segments.start[3 * s + c]! + segments.length[s]! * segments.tangent[3 * s + c]!;
    }
    currents.forEach((state, m) => {
      for (let part = 0; part < 4; part++) current[4 * (m * n + i) + part] = state[4 * s + part]!;
    });
  });
  return { from_m, to_m, radius_m, current };
}
