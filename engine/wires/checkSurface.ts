import type { WireInput } from "../contract.ts";
import type { HalfSpace } from "../kernel/halfSpace/HalfSpace.ts";
import type { WireGraph } from "./WireGraph.ts";

/** Half the nearest distance to an image that the kernel tables resolve [m]. */
export const LOWEST_OVER_SOIL_M = 3e-3;
/** Deepest wire in soil that the kernels were tried for [m]. */
export const DEEPEST_IN_SOIL_M = 2;
/** Depth times |k1| to which kernels can be interpolated in soil of little loss, and what counts as little (see depthGrid). */
const DEEPEST_WAVES = 7;
const LITTLE_LOSS = 0.1;
/** Nearer than this an end lies in the surface [m]. */
const IN_SURFACE_M = 1e-6;
/** Least sine of the angle at which a wire passes the surface: flatter, it lies along it. */
const FLATTEST = 0.1;

/**
 * What is wrong with how a wire lies to the surface of soil in the full-wave model, in words; undefined when nothing is.
 * A wire may be in air, in soil, or pass from one to the other.
 *
 * @param soil undefined where it is not known well enough to tell how deep is too deep in it
 */
export function checkSurface(
  wire: WireInput,
  soil: HalfSpace | undefined,
): { readonly code: string; readonly message: string } | undefined {
  const { id, from_m, to_m, radius_m } = wire;
  const low = Math.min(from_m[2], to_m[2]);
  const high = Math.max(from_m[2], to_m[2]);
  if (low < -DEEPEST_IN_SOIL_M)
    return {
      code: "wire-too-deep",
      message: `Wire "${id}" goes down to z = ${low} m; the full-wave soil model takes wires in soil down to ${-DEEPEST_IN_SOIL_M} m.`,
    };
  const k1 = soil ? Math.hypot(soil.k1Re, soil.k1Im) : 0;
  if (soil && high > low && -low * k1 > DEEPEST_WAVES && -soil.k1Im < LITTLE_LOSS * soil.k1Re)
    return {
      code: "wire-too-deep",
      message: `Wire "${id}" goes down to z = ${low} m; in soil of so little loss the limit at this frequency is ${(-DEEPEST_WAVES / k1).toFixed(2)} m for wires that are not level.`,
    };
  const inAir = low >= LOWEST_OVER_SOIL_M;
  const inSoil = high <= -LOWEST_OVER_SOIL_M;
  if (inAir || inSoil) {
    const near = inAir ? low : -high;
    if (near < sagging(wire))
      return {
        code: "wire-on-ground",
        message: `Wire "${id}" comes to z = ${inAir ? low : high} m, closer to the surface than its radius of ${radius_m} m.`,
      };
    return undefined;
  }
  const near = [from_m[2], to_m[2]].filter((z) => Math.abs(z) < LOWEST_OVER_SOIL_M && Math.abs(z) > IN_SURFACE_M);
  const along = high - low < FLATTEST * Math.hypot(to_m[0] - from_m[0], to_m[1] - from_m[1], to_m[2] - from_m[2]);
  if (near.length > 0 || (along && high - low < LOWEST_OVER_SOIL_M))
    return {
      code: "wire-near-soil",
      message: `Wire "${id}" ${low === high ? "lies" : "has an end"} at z = ${near[0] ?? low} m; the full-wave soil model takes wires from ${LOWEST_OVER_SOIL_M} m above the surface or as far below it, and ends that join in it.`,
    };
  if (along)
    return {
      code: "wire-along-surface",
      message: `Wire "${id}" passes the surface so flatly that it rises ${high - low} m only; it must rise by a tenth of its length.`,
    };
  return undefined;
}

/**
 * Ends of wires in air that stand in the surface of soil with nothing in the soil to join: indices of wires.
 */
export function unsupportedEnds(wires: readonly WireInput[], graph: WireGraph): number[] {
  const goesDown = new Set<number>();
  const ends = (wire: WireInput, w: number) =>
    [
      [wire.from_m[2], wire.to_m[2], 2 * w],
      [wire.to_m[2], wire.from_m[2], 2 * w + 1],
    ] as const;
  wires.forEach((wire, w) => {
    for (const [z, other, end] of ends(wire, w))
      if (Math.abs(z) <= IN_SURFACE_M && other < 0) goesDown.add(graph.endNode[end]!);
  });
  return wires.flatMap((wire, w) =>
    ends(wire, w).some(([z, , end]) => Math.abs(z) <= IN_SURFACE_M && !goesDown.has(graph.endNode[end]!)) ? [w] : [],
  );
}

/**
 * How far a wire's skin hangs from its axis towards the surface: the whole radius where it is level, nothing where it is
 * upright. A tube on radials that lie on soil ends closer to the ground than its radius; the reflected field is taken
 * between axes and moves by less than 0.2 ohm for a 40 mm tube whose radials come down from 50 to 5 mm.
 */
function sagging({ from_m, to_m, radius_m }: WireInput): number {
  const level = Math.hypot(to_m[0] - from_m[0], to_m[1] - from_m[1]);
  return (radius_m * level) / Math.hypot(level, to_m[2] - from_m[2]);
}
