import type { Segments } from "../wires/Segments.ts";

/** Segments that follow one another in one straight line, as [first, past] pairs. `chosen` ascends. */
export function straightRuns({ start, tangent, length }: Segments, chosen: readonly number[]): [number, number][] {
  const runs: [number, number][] = [];
  for (const s of chosen) {
    const run = runs.at(-1);
    const goesOn =
      run !== undefined &&
      run[1] === s &&
      [0, 1, 2].every((c) => {
        const before = 3 * (s - 1) + c;
        const joint = start[before]! + length[s - 1]! * tangent[before]! - start[3 * s + c]!;
        return Math.abs(joint) < 1e-9 && Math.abs(tangent[before]! - tangent[3 * s + c]!) < 1e-12;
      });
    if (goesOn) run[1] = s + 1;
    else runs.push([s, s + 1]);
  }
  return runs;
}
