import type { BestRequest } from "../best/BestRequest.ts";
import type { RadialsRequest } from "../budget/RadialsRequest.ts";
import type { ToleranceRequest } from "../tolerance/ToleranceRequest.ts";
import type { BandTrialRequest } from "./BandTrial.ts";
import type { MapRequest } from "./MapTrial.ts";
import type { PaceRequest } from "./PaceTrial.ts";

/** Any trial's request: plain data, told apart by `kind`. */
export type TrialRequest =
  | PaceRequest
  | MapRequest
  | BandTrialRequest
  | BestRequest
  | RadialsRequest
  | ToleranceRequest;
