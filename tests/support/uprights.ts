import type { Ground, PortInput, WireInput, WireProblem } from "../../engine/index.ts";

export interface UprightInput {
  /** Full height of a monopole on the ground; full length of a dipole centred on z = 0 in free space. */
  readonly length_m: number;
  readonly radius_m: number;
  readonly x_m?: number;
  readonly y_m?: number;
  readonly conductivity_SPerM?: number;
  readonly segments?: number;
  /** Absent: 1 V. */
  readonly termination?: PortInput["termination"];
}

export const ONE_VOLT: PortInput["termination"] = { kind: "voltage", volts: { re: 1, im: 0 } };
export const SHORT: PortInput["termination"] = { kind: "short" };

/** Monopoles over ground, or centre-fed dipoles in free space, each with one port, named w0, w1 … and p0, p1 … */
export function uprights(frequency_Hz: number, ground: Ground, elements: readonly UprightInput[]): WireProblem {
  const free = ground.kind === "free-space";
  const wires = elements.map((e, i): WireInput => {
    const at = [e.x_m ?? 0, e.y_m ?? 0] as const;
    return {
      id: `w${i}`,
      from_m: [...at, free ? -e.length_m / 2 : 0],
      to_m: [...at, free ? e.length_m / 2 : e.length_m],
      radius_m: e.radius_m,
      ...(e.conductivity_SPerM !== undefined && { conductivity_SPerM: e.conductivity_SPerM }),
      ...(e.segments !== undefined && { segments: e.segments }),
    };
  });
  const ports = elements.map(
    (e, i): PortInput => ({
      id: `p${i}`,
      wire: `w${i}`,
      position: free ? 0.5 : 0,
      termination: e.termination ?? ONE_VOLT,
    }),
  );
  return { frequency_Hz, ground, wires, ports };
}
