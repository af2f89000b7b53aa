import type { BestDesign, BestPicture } from "../../../../engine/index.ts";
import type { SavedTable } from "../save/SaveMenu.tsx";

export function bestTable({ start, front, pick }: BestPicture): SavedTable {
  const row = (design: BestDesign, name: string) => [
    name,
    design.driven_m,
    design.reflector_m,
    design.spacing_m,
    design.coil_ohm,
    design.figures.forward_dBi,
    design.figures.frontToBack_dB,
    design.figures.frontToRear_dB,
    design.figures.swr,
    design.impedance_ohm.re,
    design.impedance_ohm.im,
    design.wire_m,
    design.score,
    design.isSolved ? "solved" : "interpolated",
  ];
  return {
    heads: [
      "design",
      "driven length [m]",
      "reflector length [m]",
      "spacing [m]",
      "reactance under the reflector [ohm]",
      "gain ahead [dBi]",
      "front to back [dB]",
      "front to loudest behind [dB]",
      "worst SWR over the band",
      "R [ohm]",
      "X [ohm]",
      "wire in all [m]",
      "score",
      "figures",
    ],
    rows: [row(start, "now"), ...front.map((one, i) => row(one, one === pick ? `${i + 1} (the pick)` : `${i + 1}`))],
  };
}
