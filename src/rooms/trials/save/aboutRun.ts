import { interestOf } from "../../../../engine/index.ts";
import type { TrialRun } from "../../../store/trials/TrialRun.ts";
import { groundName } from "../../../text/groundName.ts";
import { errorWords } from "../errorWords.ts";
import { modelWords } from "../modelWords.ts";

/** What a saved result says of itself: whose it is, by which model, how exact, when, in what units. */
export function aboutRun(run: TrialRun, name: string): string[] {
  const { plan, picture, pictureModel } = run;
  const exact = picture && errorWords(picture);
  return [
    `${name}: ${plan.title}`,
    `plan's frequency ${plan.frequency_MHz} MHz, over ${groundName(plan.ground)}; path at ${interestOf(plan).elevation_deg} degrees`,
    `${modelWords(plan, pictureModel)}${run.isWhole ? "" : "; not finished"}`,
    ...(exact ? [exact] : []),
    `${new Date(run.pictured_ms).toISOString().slice(0, 16).replace("T", " ")} UTC`,
    "gain in dBi, that of an isotropic radiator; dB is a ratio of two gains; SWR against 50 ohm; lengths in metres",
  ];
}
