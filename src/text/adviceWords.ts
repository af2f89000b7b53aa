import type { AdviceRule } from "../../engine/index.ts";
import { figure } from "../charts/figure.ts";
import { megahertz } from "../charts/megahertz.ts";

const ohms = (limit: number | null) => (limit === null ? "so" : `${figure(limit, 1)} Ω`);
const mega = (limit: number | null) => (limit === null ? "there" : `${megahertz(limit)} MHz`);
const kilo = (limit: number | null) => (limit === null ? "some" : `${figure(limit * 1000, 0)} kHz`);

const written: Readonly<Record<string, (limit: number | null) => string>> = {
  "loss-in-ground": (limit) =>
    `R where X is 0 above ${ohms(limit)}: the ground takes much. Look at the joint of the radials and lay more of them; a match only hides it.`,
  "reading-suspect": (limit) =>
    `R where X is 0 below ${ohms(limit)}: doubt the reading. Calibrate anew; look for a base that is not open, a wire that slopes, other metal close by.`,
  "elements-differ-R": (limit) =>
    `R of the two elements more than ${ohms(limit)} apart: their radials differ, or metal near one of them is coupled to it.`,
  "elements-differ-f": (limit) =>
    `Resonances more than ${kilo(limit)} further apart than expected: measure both wires again, then look for metal near one of them.`,
  "steep-side": (limit) =>
    `X passes through 0 above ${mega(limit)}: the reflector is on its steep side, where a little dry weather may turn the beam. Lengthen it.`,
  "points-backwards": (limit) =>
    `X passes through 0 above ${mega(limit)}: the wire is short enough to pull the beam its own way. Lengthen it before you go on.`,
  "not-where-swr-is-least": (limit) =>
    `The least SWR lies more than ${kilo(limit)} from where X is 0. That is as it should be where R is not 50 Ω: trim by X, not by SWR.`,
  "other-base-not-open": () =>
    "Far off in R and X both: is the other base open, with a gap at the base itself? Else both elements are read together.",
  "read-through-lead": () =>
    "R and X far from here and turning quickly with frequency: the reading is taken through a cable. State the cable, or measure at the base.",
  "still-long": (limit) => `X above ${ohms(limit)} at the plan’s frequency: still long. Cut again by your own slope.`,
  "mutual-off": (limit) =>
    `More than ${ohms(limit)} from what is expected: one of the three readings is of another state, length or day. Repeat the one you trust least.`,
};

/** What to think of when a reading is not as expected; null for a code that has no words here. */
export function adviceWords({ code, limit }: AdviceRule): string | null {
  return written[code]?.(limit) ?? null;
}
