import type { Complex } from "../../contract.ts";

/** What a plan comes to at one frequency: feed, base currents, and the beam at the path's elevation. */
export interface Figures {
  /** One per fed element, in plan order. */
  readonly feeds: readonly { readonly elementId: string; readonly impedance_ohm: Complex; readonly swr50: number }[];
  /** One per element, over the first fed element's. */
  readonly baseCurrents: readonly { readonly elementId: string; readonly current: Complex }[];
  readonly forward_dBi: number;
  readonly back_dBi: number;
  readonly worstRear_dBi: number;
  /** Azimuth at which the rear sector is loudest. */
  readonly worstRearAzimuth_deg: number;
  /** forward − back. */
  readonly frontToBack_dB: number;
  /** forward − worst in the rear sector. */
  readonly frontToRear_dB: number;
  /** Power gain ahead averaged over the arrival angles, each weighing the same; null where none were given. */
  readonly pathGain_dBi: number | null;
}
