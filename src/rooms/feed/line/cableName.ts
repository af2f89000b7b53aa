import { lineTypes, type PlanCable } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";

/** A cable as the page calls it. */
export function cableName(cable: PlanCable): string {
  if (cable.kind === "own") return `own cable, ${figure(cable.impedance_ohm, 0)} Ω`;
  return lineTypes.find((type) => type.id === cable.id)?.name ?? cable.id;
}

/** Before the first comma: RG-213/U. */
export const shortCable = (name: string) => name.split(",")[0]!;
