import type { BandReadout, PlanReadout, SavedPlan } from "../../../../engine/index.ts";
import { interestOf } from "../../../../engine/index.ts";
import { bearing_deg } from "../../../charts/bearing.ts";
import type { AnswerModel } from "../../../store/answerModels.ts";
import { groundName } from "../../../text/groundName.ts";
import { csvText } from "../../trials/save/csvText.ts";
import { elementName } from "../../yard/elementName.ts";
import { headingOf } from "../../yard/heading.ts";

const about = (plan: SavedPlan, model: AnswerModel, what: string, date: string) => [
  `${what}: ${plan.title}`,
  `${plan.frequency_MHz} MHz over ${groundName(plan.ground)}; ${plan.ground.kind !== "soil" ? "solved" : model === "preview" ? "quick preview of this soil" : "full-wave"}; a calculation, not a measurement; ${date}`,
];

/** Both cuts of the pattern as rows of one table. */
export function patternCsv(plan: SavedPlan, readout: PlanReadout, model: AnswerModel, date: string): string {
  const cut_deg = interestOf(plan).azimuthCutElevation_deg;
  const heading = headingOf(plan);
  const most = Math.max(...readout.azimuthCut.gain_dBi, ...readout.elevationCut.gain_dBi);
  const rows = [
    ...readout.azimuthCut.angle_deg.map((azimuth, i) => {
      const gain = readout.azimuthCut.gain_dBi[i]!;
      return ["azimuth", cut_deg, azimuth, bearing_deg(azimuth, heading), gain, gain - most];
    }),
    ...readout.elevationCut.angle_deg.map((angle, i) => {
      const gain = readout.elevationCut.gain_dBi[i]!;
      const isBehind = angle > 90;
      return [
        "elevation",
        isBehind ? 180 - angle : angle,
        isBehind ? 180 : 0,
        bearing_deg(isBehind ? 180 : 0, heading),
        gain,
        gain - most,
      ];
    }),
  ];
  return csvText(
    [
      ...about(plan, model, "Pattern", date),
      "gain in dBi, that of an isotropic radiator; relative gain in dB below the most of both cuts",
      "azimuth counter-clockwise from the beam; bearing clockwise from true north; elevation over the horizon",
    ],
    ["cut", "elevation [deg]", "azimuth [deg]", "true bearing [deg]", "gain [dBi]", "relative [dB]"],
    rows,
  );
}

/** Feed impedance over the band as a table. */
export function sweepCsv(plan: SavedPlan, band: BandReadout, model: AnswerModel, date: string): string {
  const names = band.feeds.map(({ elementId }) => {
    const element = plan.elements.find((one) => one.id === elementId);
    return element ? elementName(plan, element) : elementId;
  });
  return csvText(
    [...about(plan, model, "Sweep at the feedpoint", date), "R and X in ohm; SWR against 50 ohm"],
    ["frequency [MHz]", ...names.flatMap((name) => [`${name} R [ohm]`, `${name} X [ohm]`, `${name} SWR [to 50 ohm]`])],
    band.frequency_MHz.map((f, i) => [
      f,
      ...band.feeds.flatMap((feed) => [feed.resistance_ohm[i]!, feed.reactance_ohm[i]!, feed.swr50[i]!]),
    ]),
  );
}
