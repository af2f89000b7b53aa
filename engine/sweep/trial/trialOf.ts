import type { Result } from "../../result.ts";
import { bestTrial } from "../best/bestTrial.ts";
import { radialsTrial } from "../budget/radialsTrial.ts";
import { toleranceTrial } from "../tolerance/toleranceTrial.ts";
import { bandTrial } from "./bandTrial.ts";
import { mapTrial } from "./mapTrial.ts";
import { paceTrial } from "./paceTrial.ts";
import type { Trial } from "./Trial.ts";
import type { TrialPicture } from "./TrialPicture.ts";
import type { TrialRequest } from "./TrialRequest.ts";

/** The trial that a request asks for, or what is wrong with the request. */
export function trialOf(request: TrialRequest): Result<Trial<TrialPicture>> {
  switch (request.kind) {
    case "pace":
      return paceTrial(request);
    case "map":
      return mapTrial(request);
    case "band":
      return bandTrial(request);
    case "best":
      return bestTrial(request);
    case "radials":
      return radialsTrial(request);
    case "tolerance":
      return toleranceTrial(request);
  }
}
