import type { PortInput, WireInput } from "../../engine/index.ts";
import { ONE_VOLT } from "./uprights.ts";

export interface BuriedVerticalInput {
  readonly id?: string;
  readonly x_m?: number;
  readonly y_m?: number;
  readonly depth_m: number;
  readonly upright_m: number;
  readonly radials: number;
  readonly radial_m: number;
  readonly radius_m?: number;
  /** Of radials and lead, where they are not of the upright's wire [m]. */
  readonly radialRadius_m?: number;
  /** Turn of the first radial from +x, in steps between radials. */
  readonly turn?: number;
  readonly uprightSegments?: number;
  readonly leadSegments?: number;
  readonly radialSegments?: number;
  /** Absent: 1 V. */
  readonly termination?: PortInput["termination"];
}

/** An upright on the surface, a lead straight down from it to buried level radials, and a port between upright and lead. */
export function buriedVertical(v: BuriedVerticalInput): { wires: WireInput[]; port: PortInput } {
  const { depth_m: d, radial_m: L, radius_m = 1e-3, x_m: x = 0, y_m: y = 0, id = "v", turn = 0 } = v;
  const radialRadius_m = v.radialRadius_m ?? radius_m;
  const hub = [x, y, -d] as const;
  const upright: WireInput = {
    id,
    from_m: [x, y, 0],
    to_m: [x, y, v.upright_m],
    radius_m,
    ...(v.uprightSegments !== undefined && { segments: v.uprightSegments }),
  };
  const lead: WireInput = {
    id: `${id} lead`,
    from_m: [x, y, 0],
    to_m: hub,
    radius_m: radialRadius_m,
    ...(v.leadSegments !== undefined && { segments: v.leadSegments }),
  };
  const radials = Array.from({ length: v.radials }, (_, i): WireInput => {
    const a = (2 * Math.PI * (i + turn)) / v.radials;
    return {
      id: `${id} radial ${i + 1}`,
      from_m: hub,
      to_m: [x + L * Math.cos(a), y + L * Math.sin(a), -d],
      radius_m: radialRadius_m,
      ...(v.radialSegments !== undefined && { segments: v.radialSegments }),
    };
  });
  return {
    wires: [upright, lead, ...radials],
    port: { id, wire: id, position: 0, termination: v.termination ?? ONE_VOLT },
  };
}
