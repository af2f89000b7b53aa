/** True bearing of what lies `direction_deg` counter-clockwise from a beam that looks towards `heading_deg`. */
export function bearingOf(direction_deg: number, heading_deg: number): number {
  return Math.round(10 * ((((heading_deg - direction_deg) % 360) + 360) % 360)) / 10;
}

/** The other way round: from a true bearing, 0 to 360 counter-clockwise from the beam. */
export function directionOf(bearing_deg: number, heading_deg: number): number {
  return (((heading_deg - bearing_deg) % 360) + 360) % 360;
}
