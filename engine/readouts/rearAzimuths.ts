/** Step of the search for the loudest direction behind [degrees]. */
const STEP_DEG = 2;

let last: { readonly sector_deg: number; readonly azimuths_deg: readonly number[] } | undefined;

/**
 * Azimuths [degrees] in which the rear sector is searched: every two degrees or closer, both edges and straight back among
 * them, ascending. Those of the last sector are kept, which every rung of a ladder asks for.
 */
export function rearAzimuths(rearSector_deg: number): readonly number[] {
  if (last?.sector_deg === rearSector_deg) return last.azimuths_deg;
  const steps = Math.max(1, Math.ceil(rearSector_deg / 2 / STEP_DEG));
  const azimuths_deg = Array.from(
    { length: 2 * steps + 1 },
    (_, j) => 180 + ((j - steps) / steps) * (rearSector_deg / 2),
  );
  last = { sector_deg: rearSector_deg, azimuths_deg };
  return azimuths_deg;
}
