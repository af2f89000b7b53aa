/** Step of the search for the loudest direction behind [degrees]. */
const STEP_DEG = 2;

/** Azimuths [degrees] in which the rear sector is searched: every two degrees or closer, both edges and straight back among them. */
export function rearAzimuths(rearSector_deg: number): readonly number[] {
  const steps = Math.max(1, Math.ceil(rearSector_deg / 2 / STEP_DEG));
  return Array.from({ length: 2 * steps + 1 }, (_, j) => 180 + ((j - steps) / steps) * (rearSector_deg / 2));
}
