/** Compass bearing 0..360, clockwise from true north, of an azimuth counted counter-clockwise from the beam. */
export function bearing_deg(azimuth_deg: number, heading_deg: number): number {
  return turn(heading_deg - azimuth_deg);
}

/** The azimuth −180..180, counter-clockwise from the beam, that lies toward a compass bearing. */
export function azimuth_deg(bearing: number, heading_deg: number): number {
  const a = turn(heading_deg - bearing);
  return a > 180 ? a - 360 : a;
}

/** Three digits, as bearings are spoken and written: 062°. */
export function bearingText(bearing: number): string {
  return `${String(Math.round(turn(bearing)) % 360).padStart(3, "0")}°`;
}

/** Into 0..360, 360 itself excluded: what rounds up to it is taken off by the last remainder. */
function turn(angle: number): number {
  return ((angle % 360) + 360) % 360;
}
