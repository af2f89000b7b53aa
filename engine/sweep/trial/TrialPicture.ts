import type { BestPicture } from "../best/BestPicture.ts";
import type { RadialsPicture } from "../budget/RadialsPicture.ts";
import type { TolerancePicture } from "../tolerance/TolerancePicture.ts";
import type { BandTrialPicture } from "./BandTrial.ts";
import type { MapPicture } from "./MapTrial.ts";
import type { PacePicture } from "./PaceTrial.ts";

/** What any trial shows: plain data, told apart by the `kind` of its request. */
export type TrialPicture =
  | PacePicture
  | MapPicture
  | BandTrialPicture
  | BestPicture
  | RadialsPicture
  | TolerancePicture;
