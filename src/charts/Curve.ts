/** A named line over frequency: arrays of equal length, frequencies rising. */
export interface Curve {
  readonly id: string;
  readonly name: string;
  readonly role: "live" | "pin";
  /** Dash and marker of a pin, 0..3. */
  readonly style: number;
  readonly frequency_MHz: readonly number[];
  readonly value: readonly number[];
  /** Its points are readings: each is marked, and straight lines between them are only a help to the eye. */
  readonly isRead?: boolean;
}

/** A curve's value at a frequency, straight between its points; NaN outside them. */
export function readCurve({ frequency_MHz: f, value }: Curve, at_MHz: number): number {
  const i = f.findIndex((one) => one >= at_MHz);
  if (i < 0 || !(at_MHz >= f[0]!)) return Number.NaN;
  if (f[i] === at_MHz) return value[i]!;
  const t = (at_MHz - f[i - 1]!) / (f[i]! - f[i - 1]!);
  return value[i - 1]! + t * (value[i]! - value[i - 1]!);
}
