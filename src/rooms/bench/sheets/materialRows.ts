import { type BenchAllowance, reflectorOf, type SavedPlan } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import type { Units } from "../../../store/useSettings.ts";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";
import { cableName } from "../../feed/line/cableName.ts";
import { cutList, materials } from "./cutList.ts";
import { keptDistance, tallest_m } from "./tallest.ts";

export interface MaterialRow {
  readonly what: string;
  readonly amount: string;
  readonly remark: string;
}

/** Guys of one mast; three is the least that stands. */
const guysEach = 3;
/** From the anchor at three quarters of the height up to the same part of it, and a metre for knots. */
const guyPart = 0.75;

/** The wire of the cut list, summed, and what goes with it. */
export function materialRows(plan: SavedPlan, units: Units, allowance: BenchAllowance): readonly MaterialRow[] {
  const length = (m: number) => formatQuantity(m, "length_m", units);
  const masts = plan.elements.length;
  const radials = plan.elements.reduce((sum, one) => sum + one.radials.count, 0);
  const pieces = cutList(plan, allowance);
  const radialWire_m = pieces.filter((one) => one.isRadial).reduce((sum, one) => sum + one.count * one.cut_m, 0);
  const h = tallest_m(plan);
  const guy_m = Math.hypot(guyPart * h, guyPart * h) + 1;
  const { base } = reflectorOf(plan) ?? {};
  const row = (what: string, amount: string | number, remark = ""): MaterialRow => ({
    what,
    amount: String(amount),
    remark,
  });
  return [
    ...materials(pieces).map((one) =>
      row(
        `${one.conductor}, ${formatQuantity(one.diameter_mm, "diameter_mm", units)}`,
        length(one.total_m),
        `${one.pieces === 1 ? "1 piece" : `${one.pieces} pieces`} of the cut list, as cut at first; take a twentieth more`,
      ),
    ),
    row(
      "mast or pole that does not conduct",
      masts,
      `to hold a tip at ${keptDistance(h, units)}; the tube itself where it is the element`,
    ),
    row(
      "guys, non-conducting",
      guysEach * masts,
      `about ${keptDistance(guy_m, units)} each, together ${keptDistance(guysEach * masts * guy_m, units)}`,
    ),
    row("anchors for guys", guysEach * masts, "half to three quarters of the height out"),
    row("base insulators", masts, "stand the mast’s weight and high voltage when wet"),
    row("tip insulators and halyards", masts, "tips carry the highest voltage"),
    row("hub plates for radials", masts, "copper or stainless, with bolts and toothed washers"),
    ...(radials > 0
      ? [
          row("lugs for radials", radials, `${radials} radials`),
          row("pins for radials", Math.ceil(radialWire_m), "one a metre, where they lie on the turf"),
        ]
      : []),
    row("feed-line choke", 1, "at the fed base; the Feed room says how much"),
    ...(plan.feedline
      ? [
          row(
            cableName(plan.feedline.cable),
            length(plan.feedline.length_m),
            "line to the rig, with a connector at each end",
          ),
        ]
      : [row("coax to the rig", "–", "measure the way it runs; a connector at each end")]),
    ...(base?.kind === "loaded"
      ? [
          row(
            base.reactance_ohm >= 0 ? "coil in the reflector’s base" : "capacitor in the reflector’s base",
            loadText(base.reactance_ohm, plan.frequency_MHz),
            `${figure(base.reactance_ohm, 1)} Ω at ${figure(plan.frequency_MHz, 3)} MHz; the turns are the builder’s`,
          ),
        ]
      : []),
    ...(plan.feedline?.reversal && masts > 1
      ? [row("relays and their cable", masts, "to reverse the beam; contacts for the voltages in the Feed room")]
      : []),
    row("arrester, bonding wire, clamps", "as the code asks", "ask a licensed electrician where the law wants one"),
    row("guards round the bases", masts, "that do not conduct"),
    row("stakes and cord for staking out", 2 + 3 * masts, "with letters as on the stake-out sheet"),
    row("sealing tape, grease for joints", "some"),
    row(
      "tools",
      "",
      "tape measure, compass, meter and its calibration set, iron, cutters, spanners, spirit level, gloves",
    ),
  ];
}

/** A coil's or capacitor's value for a reactance at a frequency: L = X/ω, C = −1/(ωX). */
function loadText(reactance_ohm: number, frequency_MHz: number): string {
  const omega = 2 * Math.PI * frequency_MHz * 1e6;
  return reactance_ohm >= 0
    ? `${figure((reactance_ohm / omega) * 1e6, 2)} µH`
    : `${figure((-1 / (omega * reactance_ohm)) * 1e12, 0)} pF`;
}
