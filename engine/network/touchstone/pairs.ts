import type { Complex } from "../../contract.ts";
import { cx } from "../cx.ts";
import { fromReflection } from "../smith/fromReflection.ts";
import { toReflection } from "../smith/toReflection.ts";
import type { OnePortParameter, PairFormat } from "./Touchstone.ts";

/** Stands for the logarithm of nothing: far below anything measured, and read back as 1e-50. */
const SILENT_dB = -1000;
const RAD = Math.PI / 180;

/**
 * A pair of numbers of a file as an impedance [ohm]. `reference_ohm` is what S is relative to; Z and Y are taken as
 * normalised to `normal_ohm` (version 1: the reference; version 2: 1). Not finite for an open end.
 */
export function impedanceOfPair(
  pair: readonly [number, number],
  { parameter, format }: { readonly parameter: OnePortParameter; readonly format: PairFormat },
  reference_ohm: number,
  normal_ohm: number,
): Complex {
  const value = complexOf(pair, format);
  if (parameter === "S") return fromReflection(value, reference_ohm);
  return parameter === "Z" ? cx.scale(value, normal_ohm) : cx.scale(cx.inv(value), normal_ohm);
}

/** The way back: what a file holds of an impedance. */
export function pairOfImpedance(
  impedance_ohm: Complex,
  { parameter, format }: { readonly parameter: OnePortParameter; readonly format: PairFormat },
  reference_ohm: number,
  normal_ohm: number,
): [number, number] {
  const value =
    parameter === "S"
      ? toReflection(impedance_ohm, reference_ohm)
      : parameter === "Z"
        ? cx.scale(impedance_ohm, 1 / normal_ohm)
        : cx.scale(cx.inv(impedance_ohm), normal_ohm);
  if (format === "RI") return [value.re, value.im];
  const size = cx.abs(value);
  const angle_deg = cx.arg(value) / RAD;
  return [format === "MA" ? size : size === 0 ? SILENT_dB : 20 * Math.log10(size), angle_deg];
}

function complexOf([first, second]: readonly [number, number], format: PairFormat): Complex {
  if (format === "RI") return { re: first, im: second };
  return cx.polar(format === "MA" ? first : 10 ** (first / 20), second * RAD);
}
