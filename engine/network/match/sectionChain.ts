import type { Complex } from "../../contract.ts";
import type { Chain } from "../Chain.ts";
import { capacitorAdmittance } from "../capacitorAdmittance.ts";
import { coilImpedance } from "../coilImpedance.ts";
import { cx } from "../cx.ts";
import { lineChain } from "../line/lineChain.ts";
import { seriesChain } from "../seriesChain.ts";
import { shuntChain } from "../shuntChain.ts";
import type { Section } from "./Ladder.ts";

/**
 * Chain matrix of a part, or of the fraction `t` of it that has been put in: of its reactance in series, of its
 * susceptance across, of its length along a line. t = 1 is the part itself. Every analysis of a match goes through here.
 */
export function sectionChain(section: Section, frequency_MHz: number, t = 1): Chain {
  const series = (z: Complex) => seriesChain(cx.scale(z, t));
  const shunt = (y: Complex) => shuntChain(cx.scale(y, t));
  switch (section.kind) {
    case "series-coil":
      return series(coilImpedance(section.inductance_uH, frequency_MHz, section.q));
    case "shunt-coil":
      return shunt(cx.inv(coilImpedance(section.inductance_uH, frequency_MHz, section.q)));
    case "series-capacitor":
      return series(cx.inv(capacitorAdmittance(section.capacitance_pF, frequency_MHz, section.q)));
    case "shunt-capacitor":
      return shunt(capacitorAdmittance(section.capacitance_pF, frequency_MHz, section.q));
    case "line":
      return lineChain(section.line, section.length_m * t, frequency_MHz, section.parallel);
    case "stub": {
      const { a, b, c, d } = lineChain(section.line, section.length_m, frequency_MHz);
      return shunt(section.end === "open" ? cx.div(c, a) : cx.div(d, b));
    }
    case "retrim":
      return series({ re: 0, im: section.reactance_ohm });
  }
}
