import { type AmateurBand, amateurBands } from "./bands.ts";

/** The band that a frequency lies in, edges included, in one ITU region. */
export function bandAt(frequency_MHz: number, ituRegion: 1 | 2 | 3): AmateurBand | undefined {
  return amateurBands.find(
    (band) => band.ituRegion === ituRegion && frequency_MHz >= band.from_MHz && frequency_MHz <= band.to_MHz,
  );
}
