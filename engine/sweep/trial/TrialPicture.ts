import type { BestPicture } from "../best/BestPicture.ts";
import type { RadialsPicture } from "../budget/RadialsPicture.ts";
import type { TolerancePicture } from "../tolerance/TolerancePicture.ts";
import type { BandTrialPicture } from "./BandTrialPicture.ts";
import type { MapPicture } from "./MapPicture.ts";
import type { PacePicture } from "./PacePicture.ts";

/** What any trial shows: plain data, told apart by the `kind` of its request. */
export type TrialPicture =
  | PacePicture
  | MapPicture
  | BandTrialPicture
  | BestPicture
  | RadialsPicture
  | TolerancePicture;
