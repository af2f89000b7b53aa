import type { PortInput, WireInput } from "../../engine/index.ts";
import { ONE_VOLT } from "./uprights.ts";

export interface RadialVerticalInput {
  readonly id?: string;
  readonly x_m?: number;
  /** Height of the hub, where the radials and the upright begin [m]. */
  readonly hub_m: number;
  readonly upright_m: number;
  readonly radials: number;
  readonly radial_m: number;
  readonly radius_m?: number;
  /** Turn of the first radial from +x, in steps between radials. */
  readonly turn?: number;
  readonly uprightSegments?: number;
  readonly radialSegments?: number;
  /** Absent: 1 V. */
  readonly termination?: PortInput["termination"];
}

/** An upright on level radials, all wires of one radius, with one port between the upright and the hub. */
export function radialVertical(v: RadialVerticalInput): { wires: WireInput[]; port: PortInput } {
  const { hub_m: h, radial_m: L, radius_m = 1e-3, x_m: x = 0, id = "v", turn = 0 } = v;
  const hub = [x, 0, h] as const;
  const upright: WireInput = {
    id,
    from_m: hub,
    to_m: [x, 0, h + v.upright_m],
    radius_m,
    ...(v.uprightSegments !== undefined && { segments: v.uprightSegments }),
  };
  const radials = Array.from({ length: v.radials }, (_, i): WireInput => {
    const a = (2 * Math.PI * (i + turn)) / v.radials;
    return {
      id: `${id} radial ${i + 1}`,
      from_m: hub,
      to_m: [x + L * Math.cos(a), L * Math.sin(a), h],
      radius_m,
      ...(v.radialSegments !== undefined && { segments: v.radialSegments }),
    };
  });
  return {
    wires: [upright, ...radials],
    port: { id, wire: id, position: 0, termination: v.termination ?? ONE_VOLT },
  };
}
