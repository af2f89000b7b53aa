/** Field names in the order a reader of the file wants them. */
const known = [
  "format version title kind id name label remark frequency_MHz band site interest ground soilModel elements baseline pins",
  "heading_deg ituRegion from_MHz to_MHz elevation_deg rearSector_deg azimuthCutElevation_deg",
  "relativePermittivity conductivity_SPerM forward_m left_m count length_m height_m diameter_mm conductor",
  "base current magnitude phase_deg resistance_ohm reactance_ohm radials insulation plan",
].flatMap((line) => line.split(" "));
const rank = new Map(known.map((key, index) => [key, index]));

/**
 * The names of the fields that hold something, in an order that does not depend on how the object was made: known ones
 * as above, the rest after them by code unit.
 */
export function orderedKeys(fields: { readonly [key: string]: unknown }): string[] {
  const place = (key: string): number => rank.get(key) ?? known.length;
  return Object.keys(fields)
    .filter((key) => fields[key] !== undefined)
    .sort((a, b) => place(a) - place(b) || (a < b ? -1 : 1));
}
