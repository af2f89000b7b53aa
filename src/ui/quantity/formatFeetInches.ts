import { toFeetInches } from "../../../engine/index.ts";

const fractions = ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"] as const;

/** "33 ft 6 1/2 in", to the eighth of an inch that a tape measure shows; under a foot "6 1/2 in". */
export function formatFeetInches(length_m: number): string {
  if (!Number.isFinite(length_m)) return "–";
  const { sign, feet, inches, eighths } = toFeetInches(length_m);
  const inchText = [inches > 0 || eighths === 0 ? String(inches) : "", fractions[eighths]].filter(Boolean).join(" ");
  const parts = [feet > 0 ? `${feet} ft` : "", feet > 0 && inchText === "0" ? "" : `${inchText} in`];
  return (sign < 0 ? "−" : "") + parts.filter(Boolean).join(" ");
}
