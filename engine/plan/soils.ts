/**
 * A kind of ground with the two constants commonly used for it. Real soil changes with rain, frost and frequency and is
 * seldom known within a factor of two; compare the classes on either side.
 */
export interface SoilClass {
  readonly id: string;
  readonly name: string;
  readonly relativePermittivity: number;
  readonly conductivity_SPerM: number;
  readonly source: string;
  /** Whether the figures were read at the source or remembered. */
  readonly provenance: "read" | "memory";
}

const common = 'Table "Conductivity and Dielectric Constants for Common Types of Earth", an amateur\'s web page';
const itu = "Ground classes used with ITU-R P.368 and P.527, from memory";

const soil = (
  id: string,
  name: string,
  relativePermittivity: number,
  conductivity_SPerM: number,
  source: string,
): SoilClass => {
  const provenance = source === common ? "read" : "memory";
  return { id, name, relativePermittivity, conductivity_SPerM, source, provenance };
};

/** From best to worst for a low signal. */
export const soils: readonly SoilClass[] = [
  soil("sea", "Sea water", 81, 5, common),
  soil("very-good", "Very good: rich pasture, low hills", 20, 0.0303, common),
  soil("wet", "Wet ground", 30, 0.01, itu),
  soil("good", "Good: rich farmland, low hills", 14, 0.01, common),
  soil("marsh", "Flat and marshy, dense woods", 12, 0.0075, common),
  soil("average", "Average: medium hills, heavy clay", 13, 0.005, common),
  soil("rocky", "Rocky, steep hills", 13, 0.002, common),
  soil("dry-sand", "Dry sand, coastal", 10, 0.002, common),
  soil("fresh-water", "Fresh water: lake or river", 80, 0.001, common),
  soil("medium-dry", "Medium dry ground", 15, 0.001, itu),
  soil("poor", "Poor: towns, dry ground", 5, 0.001, common),
  soil("very-poor", "Very poor: heavy industry", 3, 0.001, common),
  soil("very-dry", "Very dry ground, desert", 3, 0.0001, itu),
];
