import type { RadialLaying, RadialsPicture } from "../../../../engine/index.ts";
import type { SavedTable } from "../save/SaveMenu.tsx";

export function radialsTable({ own, heights }: RadialsPicture): SavedTable {
  const row = (what: string, one: RadialLaying) => [
    what,
    one.height_m,
    one.fields.map((field) => `${field.count} x ${field.length_m}`).join(" and "),
    one.wire_m,
    one.forward_dBi,
    one.frontToBack_dB ?? null,
    one.frontToRear_dB ?? null,
    one.loss_dB,
    one.resistance_ohm,
    one.reactance_ohm,
    one.swr50,
  ];
  return {
    heads: [
      "what",
      "height [m]",
      "number x length [m] under each element",
      "wire laid [m]",
      "gain ahead [dBi]",
      "front to back [dB]",
      "front to loudest behind [dB]",
      "not radiated [dB]",
      "R [ohm]",
      "X [ohm]",
      "SWR to 50 ohm",
    ],
    rows: [
      ...(own ? [row("the plan's own", own)] : []),
      ...heights.flatMap((height) => [
        ...height.curve.map((point) => row(`best of ${point.wire_m} m`, point.best)),
        ...height.counts.map((one) => row("a count tried", one)),
        ...height.splits.map((one) => row(`split ${Math.round(100 * one.firstPart)} percent first`, one.best)),
      ]),
    ],
  };
}
