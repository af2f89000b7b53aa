import type { Plan } from "../../contract.ts";
import { corePlan } from "../../plan/edits/corePlan.ts";
import { failed, type Note, ok, type Result } from "../../result.ts";
import { answersTo } from "../best/answersTo.ts";
import type { ArraySample } from "../trial/arraySample.ts";
import { isPreview } from "../trial/isPreview.ts";
import type { Trial, TrialAsk } from "../trial/Trial.ts";
import { bandOf } from "./bandOf.ts";
import { checkToleranceRequest } from "./checkToleranceRequest.ts";
import { type Draw, drawErrors } from "./drawErrors.ts";
import { type LooseAxis, looseAxes } from "./looseAxes.ts";
import { looseResponse } from "./looseResponse.ts";
import { type Pattern, patternReader } from "./patternReader.ts";
import { headingSensitivity, LOST, sensitivityOf } from "./sensitivityOf.ts";
import type { ToleranceCut, ToleranceFigures, TolerancePicture } from "./TolerancePicture.ts";
import type { ToleranceRequest } from "./ToleranceRequest.ts";

/** Drawn designs that are solved to see how far the response is off. */
const CHECKED = 6;
/** A response off by more than this is called rough. */
const ROUGH_dB = 0.1;

/**
 * How far off a plan may be built. Around it port matrix and fields are a response from a few dozen solves; what all else
 * follows from: the change of every figure by each error alone, how much of it may be lost before 1 dB of front-to-back or 0.3 dB
 * of gain is, and, over designs drawn at random, each error within its limits with equal chance, the bands that 90 of 100
 * lie in. Then some of those drawn are solved, and the largest difference is stated.
 *
 * The same request gives the same answer. Problems: see `checkToleranceRequest`; those of the solves.
 */
export function toleranceTrial(candidate: ToleranceRequest): Result<Trial<TolerancePicture>> {
  const checked = checkToleranceRequest(candidate);
  if (!checked.ok) return checked;
  const request = checked.value;
  const plan = corePlan(request.plan);
  const axes = looseAxes(request);
  const reader = patternReader(request);
  const response = looseResponse(plan, axes);
  const askOf = (shifted: Plan): TrialAsk => ({
    plan: shifted,
    frequency_MHz: plan.frequency_MHz,
    directions: reader.directions,
  });
  const asks = response.points.map(askOf);
  const draws = drawErrors(request, axes);
  const checks = draws.slice(0, CHECKED).map(({ x }) => askOf(shiftedBy(plan, axes, x)));
  let picture: TolerancePicture | undefined;

  return ok((known) => {
    const answers = answersTo(asks, known);
    if (answers.refused.length > 0) return failed(...answers.refused);
    const total = asks.length + checks.length;
    if (answers.missing.length > 0)
      return ok({ asks: answers.missing, picture: null, part: answers.solved.length / total });
    const samples = answers.solved.map(({ sample }) => sample);
    // The response does not change any more: what is read off it is read once.
    picture ??= pictureOf(request, axes, reader, response, samples, draws);
    const tried = answersTo(checks, known);
    if (tried.missing.length > 0)
      return ok({ asks: tried.missing, picture, part: (asks.length + tried.solved.length) / total });
    const bases = plan.elements;
    const off = tried.solved.map(({ ask, sample }) => {
      const { x } = draws[checks.indexOf(ask)]!;
      const solved = reader.figures(bases, sample, 0);
      const found = reader.figures(bases, response.at(x, samples), 0);
      return differences(solved, found);
    });
    const worst = (key: keyof (typeof off)[number]) => Math.max(...off.map((one) => one[key]));
    const error = {
      solved: off.length,
      forward_dB: worst("forward_dB"),
      frontToBack_dB: worst("frontToBack_dB"),
      impedance_ohm: worst("impedance_ohm"),
    };
    const notes: Note[] = [...picture.notes];
    if (Math.max(error.forward_dB, error.frontToBack_dB) > ROUGH_dB)
      notes.push({
        code: "rough-response",
        message: `Between its solves the response is off by up to ${Math.max(error.forward_dB, error.frontToBack_dB).toPrecision(2)} dB; smaller errors are told more exactly.`,
        measured: Math.max(error.forward_dB, error.frontToBack_dB),
      });
    const solves = picture.solves + off.length;
    return ok({ asks: [], picture: { ...picture, ...(off.length > 0 && { error }), solves, notes }, part: 1 });
  });
}

/** The spacing is set last: the driven element and the reflector are found by where they stand. */
function shiftedBy(plan: Plan, axes: readonly LooseAxis[], x: readonly number[]): Plan {
  return axes.reduce(
    (shifted, axis, i) => (axis.what === "soil" || x[i] !== 0 ? axis.shifted(shifted, x[i]!) : shifted),
    plan,
  );
}

function differences(one: ToleranceFigures, other: ToleranceFigures) {
  return {
    forward_dB: Math.abs(one.forward_dBi - other.forward_dBi),
    frontToBack_dB: Math.abs(one.frontToBack_dB - other.frontToBack_dB),
    impedance_ohm: Math.hypot(one.resistance_ohm - other.resistance_ohm, one.reactance_ohm - other.reactance_ohm),
  };
}

function pictureOf(
  request: ToleranceRequest,
  axes: readonly LooseAxis[],
  reader: ReturnType<typeof patternReader>,
  response: ReturnType<typeof looseResponse>,
  samples: readonly ArraySample[],
  draws: readonly Draw[],
): TolerancePicture {
  const { plan, rungs_deg, errors } = request;
  const bases = plan.elements;
  const own = samples[0]!;
  const exact = reader.figures(bases, own, 0);
  // Each axis by itself, the others where the plan stands: the line through its own solves.
  const alone = axes.map((axis) => {
    const single = looseResponse(plan, [axis]);
    const used = single.points.map((_, i) => samples[i === 0 ? 0 : indexOf(axis, i)]!);
    return (x: number) => reader.figures(bases, single.at([x], used), 0);
  });
  function indexOf(axis: LooseAxis, i: number): number {
    const before = axes.slice(0, axes.indexOf(axis));
    return i + before.reduce((sum, one) => sum + looseResponse(plan, [one]).points.length - 1, 0);
  }
  const sensitivities = [
    ...axes.map((axis, i) => sensitivityOf(axis, exact, alone[i]!)),
    headingSensitivity(errors.heading_deg, exact, (off_deg) => reader.figures(bases, own, off_deg)),
  ];
  const patterns = draws.map(({ x, off_deg }) => reader.whole(bases, response.at(x, samples), off_deg));
  return {
    kind: "tolerance",
    isPreview: isPreview(plan),
    exact,
    sensitivities,
    lost: LOST,
    bands: {
      draws: draws.length,
      ...bandsOf(patterns),
      ladder: rungs_deg.map((elevation_deg, r) => ({
        elevation_deg,
        forward_dBi: bandOf(patterns.map(({ ladder }) => ladder[r]!.forward_dBi)),
        back_dBi: bandOf(patterns.map(({ ladder }) => ladder[r]!.back_dBi)),
      })),
      elevationCut: cutOf(
        reader.elevationCut_deg,
        patterns.map((pattern) => pattern.elevationCut_dBi),
      ),
      azimuthCut: cutOf(
        reader.azimuthCut_deg,
        patterns.map((pattern) => pattern.azimuthCut_dBi),
      ),
    },
    solves: samples.length,
    notes: [],
  };
}

function bandsOf(patterns: readonly Pattern[]) {
  const band = (key: keyof ToleranceFigures) => bandOf(patterns.map(({ figures }) => figures[key]));
  return {
    forward_dBi: band("forward_dBi"),
    frontToBack_dB: band("frontToBack_dB"),
    frontToRear_dB: band("frontToRear_dB"),
    resistance_ohm: band("resistance_ohm"),
    reactance_ohm: band("reactance_ohm"),
    swr50: band("swr50"),
  };
}

function cutOf(angle_deg: readonly number[], cuts: readonly (readonly number[])[]): ToleranceCut {
  const bands = angle_deg.map((_, i) => bandOf(cuts.map((cut) => cut[i]!)));
  return {
    angle_deg,
    low_dBi: bands.map(({ low }) => low),
    middle_dBi: bands.map(({ middle }) => middle),
    high_dBi: bands.map(({ high }) => high),
  };
}
