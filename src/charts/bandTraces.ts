import type { BandReadout } from "../../engine/index.ts";
import type { BandTrace } from "./BandTrace.ts";

interface Design {
  readonly id: string;
  readonly name: string;
  readonly role: "live" | "pin";
  readonly style: number;
  readonly band: BandReadout | null;
  /** What the page calls an element of this design. */
  nameOf(elementId: string): string;
}

/** One trace for each feedpoint of each design; where a design has several, each is named after its element. */
export function bandTraces(designs: readonly Design[]): BandTrace[] {
  return designs.flatMap(({ id, name, role, style, band, nameOf }) =>
    (band?.feeds ?? []).map((f, feed, all) => ({
      id: `${id}/${f.elementId}`,
      name: all.length > 1 ? `${name}, ${nameOf(f.elementId)}` : name,
      role,
      style,
      feed,
      sweep: {
        frequency_MHz: band!.frequency_MHz,
        resistance_ohm: f.resistance_ohm,
        reactance_ohm: f.reactance_ohm,
      },
    })),
  );
}
