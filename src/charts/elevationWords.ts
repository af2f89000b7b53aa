/** An elevation of a cut through the beam (0 ahead .. 180 behind), as people say it. */
export function elevationWords(elevation_deg: number): string {
  const e = Math.round(elevation_deg * 10) / 10;
  if (e === 90) return "straight up";
  return e < 90 ? `${e}° ahead` : `${Math.round((180 - e) * 10) / 10}° behind`;
}
