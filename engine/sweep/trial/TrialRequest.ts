import type { BestRequest } from "../best/BestRequest.ts";
import type { RadialsRequest } from "../budget/RadialsRequest.ts";
import type { ToleranceRequest } from "../tolerance/ToleranceRequest.ts";
import type { BandTrialRequest } from "./BandTrialRequest.ts";
import type { MapRequest } from "./MapRequest.ts";
import type { PaceRequest } from "./PaceRequest.ts";

/** Any trial's request: plain data, told apart by `kind`. */
export type TrialRequest =
  | PaceRequest
  | MapRequest
  | BandTrialRequest
  | BestRequest
  | RadialsRequest
  | ToleranceRequest;
