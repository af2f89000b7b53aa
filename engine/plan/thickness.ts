import { type Findings, type NumberRule, plain } from "./Findings.ts";
import { limits } from "./limits.ts";

/** Thickness of any conductor against the wavelength. */
export function diameterRule(wavelength: number | undefined): NumberRule {
  if (wavelength === undefined) return { above: 0, unit: "mm" };
  const { least, most } = limits.diameter_wl;
  return {
    least: least * wavelength * 1000,
    most: most * wavelength * 1000,
    unit: "mm",
    because: `${least} to ${most} wavelengths, where the thin-wire sums hold`,
  };
}

/** Thickness of a conductor against its own length. */
export function checkSlimness(
  findings: Findings,
  path: string,
  name: string,
  diameter_mm: number | undefined,
  length_m: number | undefined,
  lengthWord: string,
): void {
  if (diameter_mm === undefined || length_m === undefined) return;
  const most_mm = (length_m * 1000) / limits.lengthOverDiameter;
  if (diameter_mm <= most_mm) return;
  findings.add(
    "too-thick",
    path,
    `${name} is ${plain(diameter_mm)} mm; with a ${lengthWord} of ${plain(length_m)} m it must be at most ` +
      `${plain(most_mm)} mm (a ${limits.lengthOverDiameter}th, where the thin-wire sums hold).`,
  );
}
