import { type Line, type LineType, makeLine } from "../../engine/index.ts";
import { okValue } from "./okValue.ts";

/** A cable by free entry; without loss and with a real impedance unless said otherwise. */
export function aLine(impedance_ohm: number, velocityFactor = 0.66, rest: Partial<LineType> = {}): Line {
  const loss = { root_dBPer100m: 0, linear_dBPer100m: 0 };
  return okValue(makeLine({ id: "free", name: `${impedance_ohm} ohm`, impedance_ohm, velocityFactor, loss, ...rest }));
}
