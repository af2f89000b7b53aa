import type { PlanReadout } from "../../engine/index.ts";
import { readCut } from "./readCut.ts";

/** What a plan is worth beside the ladder: figures off the main direction, and where the power goes. */
export interface SideFigures {
  /** The azimuth cut's gain ahead, straight behind and at 90 degrees (the louder side), in dBi. */
  readonly ahead_dBi: number;
  readonly behind_dBi: number;
  readonly abeam_dBi: number;
  readonly halfPowerWidth_deg: number | null;
  /** Share of the input that leaves as sky wave, 0..1. */
  readonly efficiency: number;
  /** Base currents of the elements other than the first fed one, against its. */
  readonly currents: readonly {
    readonly elementId: string;
    readonly magnitude: number;
    /** −180..180; above zero leads the first fed element. */
    readonly phase_deg: number;
  }[];
}

/** Reads the side figures of one plan; all directions are at the elevation of its azimuth cut. */
export function sideFigures(readout: PlanReadout): SideFigures {
  const at = (azimuth: number) => readCut(readout.azimuthCut, azimuth);
  const reference = readout.feeds[0]?.elementId;
  return {
    ahead_dBi: at(0),
    behind_dBi: at(180),
    abeam_dBi: louder(at(90), at(-90)),
    halfPowerWidth_deg: readout.halfPowerWidth_deg,
    efficiency: readout.efficiency,
    currents: readout.baseCurrents
      .filter((c) => c.elementId !== reference)
      .map(({ elementId, current: { re, im } }) => ({
        elementId,
        magnitude: Math.sqrt(re * re + im * im),
        phase_deg: (Math.atan2(im, re) * 180) / Math.PI,
      })),
  };
}

const louder = (a: number, b: number) => (Number.isNaN(a) ? b : Number.isNaN(b) ? a : Math.max(a, b));
