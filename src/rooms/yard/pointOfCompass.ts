const points = [
  "north",
  "north-north-east",
  "north-east",
  "east-north-east",
  "east",
  "east-south-east",
  "south-east",
  "south-south-east",
  "south",
  "south-south-west",
  "south-west",
  "west-south-west",
  "west",
  "west-north-west",
  "north-west",
  "north-north-west",
] as const;

/** The nearest of the sixteen points of the compass, in words. */
export function pointOfCompass(bearing_deg: number): string {
  return points[Math.round((((bearing_deg % 360) + 360) % 360) / 22.5) % 16]!;
}
