import type { Refit } from "../../engine/index.ts";
import { figure, signedFigure } from "../charts/figure.ts";

/** Fitted figures as the engine names them, in words. */
const names: Readonly<Record<string, string>> = {
  "driven length": "the driven’s length",
  "driven resistance": "R in the driven’s ground",
  "driven reactance": "X in the driven’s ground",
  "reflector length": "the reflector’s length",
  "reflector resistance": "R in the reflector’s ground",
  "reflector reactance": "X in the reflector’s ground",
  mutual: "the mutual impedance",
};
const soilNames = { planned: "the plan’s soil", drier: "a drier soil", wetter: "a wetter soil" } as const;

/** Shorter or longer by less than this is as it was cut: a tape is no better. */
const asCut = 0.0005;

/** What the readings say, the most telling first; sentences. */
export function refitWords(refit: Refit, nameOf: (elementId: string) => string): string[] {
  const said: string[] = [];
  for (const { elementId, lengthFactor, resistance_ohm } of refit.elements) {
    const off = lengthFactor.value - 1;
    const name = nameOf(elementId);
    const length =
      Math.abs(off) < asCut
        ? `The ${name} acts as long as it was cut`
        : `The ${name} acts ${figure(100 * Math.abs(off), 1)} % ${off > 0 ? "longer" : "shorter"} than it was cut`;
    const r = resistance_ohm.value;
    said.push(
      `${length}; its ground has ${Math.abs(r) < 0.05 ? "the R the model gave it" : `${figure(Math.abs(r), 1)} Ω ${r > 0 ? "more" : "less"} than the model gave it`}.`,
    );
  }
  const { forward_dBi, frontToBack_dB } = refit.measured;
  said.push(
    `With that, front-to-back is ${figure(frontToBack_dB, 1)} dB instead of ${figure(refit.planned.frontToBack_dB, 1)}, and ahead it is ${signedFigure(forward_dBi - refit.planned.forward_dBi, 1)} dB.`,
  );
  return said;
}

/** What the readings cannot tell; sentences. Empty where they tell everything. */
export function untoldWords(refit: Refit, nameOf: (elementId: string) => string): string[] {
  const said: string[] = [];
  for (const { first, second, correlation } of refit.alike)
    said.push(
      `The readings do not tell ${names[first] ?? first} from ${names[second] ?? second}: ${correlation > 0 ? "more of both" : "more of one and less of the other"} reads the same. Their sum is better known than either.`,
    );
  const assumed = refit.elements.flatMap(({ elementId, lengthFactor, resistance_ohm, reactance_ohm }) => {
    const of = nameOf(elementId);
    return [
      lengthFactor.from === "assumed" && `the ${of}’s length`,
      resistance_ohm.from === "assumed" && `R in the ${of}’s ground`,
      reactance_ohm.from === "assumed" && `X in the ${of}’s ground`,
    ].filter((one) => one !== false);
  });
  if (refit.mutualScale.from === "assumed") assumed.push("the mutual impedance");
  if (assumed.length > 0)
    said.push(`Hardly told by these readings, and so near what was assumed beforehand: ${assumed.join(", ")}.`);
  const { id, alike } = refit.soil;
  if (alike.length > 1)
    said.push(
      `Soil: ${alike.map((one) => soilNames[one]).join(" and ")} fit the readings about as well; ${soilNames[id]} fits best by a hair.`,
    );
  return said;
}

/** How well the fitted model meets the readings; one sentence. */
export function misfitWords(misfit: number): string {
  const times = figure(misfit, 1);
  if (misfit < 1.5) return `The corrected model meets the readings to within their own uncertainty (misfit ${times}).`;
  if (misfit < 4)
    return `The corrected model misses the readings by ${times} times their own uncertainty: usable, and the errors beside the figures have been widened by that.`;
  return `The corrected model misses the readings by ${times} times their own uncertainty: something is in them that no length, ground or coupling explains. Read again before you cut.`;
}
