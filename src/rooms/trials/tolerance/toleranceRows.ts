import type {
  Loose,
  Sensitivity,
  ToleranceBand,
  ToleranceFigures,
  TolerancePicture,
} from "../../../../engine/index.ts";
import { figure, noFigure, signedFigure } from "../../../charts/figure.ts";

export const looseNames: Readonly<Record<Loose, string>> = {
  driven: "driven length",
  reflector: "reflector length",
  spacing: "spacing",
  thickness: "thickness",
  soil: "soil",
  heading: "heading",
};

const units: Readonly<Record<Sensitivity["per"], string>> = {
  cm: "cm",
  percent: "%",
  degree: "°",
  span: "of dry to wet",
};

/** An allowance in its unit; "more than 40 cm" where nothing is lost within what was looked at. */
export function allowance(value: number | null, lookedAt: number, per: Sensitivity["per"]): string {
  const text = (amount: number) =>
    per === "span"
      ? `${figure(100 * amount, 0)} % ${units.span}`
      : `${figure(amount, amount < 10 ? 1 : 0)} ${units[per]}`;
  if (value !== null) return text(value);
  return lookedAt > 0 ? `over ${text(lookedAt)}` : noFigure;
}

export function holdRows({ sensitivities }: TolerancePicture): string[][] {
  const held = sensitivities.filter(({ lookedAt }) => lookedAt.less > 0 || lookedAt.more > 0);
  return held.map(({ what, per, allowed, lookedAt }) => [
    looseNames[what],
    allowance(allowed.frontToBack.less, lookedAt.less, per),
    allowance(allowed.frontToBack.more, lookedAt.more, per),
    allowance(allowed.forward.less, lookedAt.less, per),
    allowance(allowed.forward.more, lookedAt.more, per),
  ]);
}

export function slopeRows({ sensitivities }: TolerancePicture): string[][] {
  return sensitivities.map(({ what, per, slope }) => [
    per === "span" ? "from dry to wet" : `${per === "degree" ? "degree" : units[per]} of ${looseNames[what]}`,
    signedFigure(slope.forward_dBi, 2),
    signedFigure(slope.frontToBack_dB, 2),
    signedFigure(slope.frontToRear_dB, 2),
    signedFigure(slope.resistance_ohm, 2),
    signedFigure(slope.reactance_ohm, 2),
    signedFigure(slope.swr50, 3),
  ]);
}

export function bandRowsOf({ bands, exact }: TolerancePicture): string[][] {
  if (!bands) return [];
  const row = (name: string, band: ToleranceBand, own: number, decimals: number) => [
    name,
    figure(own, decimals),
    figure(band.low, decimals),
    figure(band.middle, decimals),
    figure(band.high, decimals),
  ];
  const of = (name: string, key: keyof ToleranceFigures, decimals: number) =>
    row(name, bands[key], exact[key], decimals);
  return [
    of("gain ahead, dBi", "forward_dBi", 2),
    of("front to back, dB", "frontToBack_dB", 1),
    of("front to worst behind, dB", "frontToRear_dB", 1),
    of("R, Ω", "resistance_ohm", 1),
    of("X, Ω", "reactance_ohm", 1),
    of("SWR", "swr50", 2),
  ];
}
