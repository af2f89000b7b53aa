import type { FrequencyUnit } from "./Touchstone.ts";

/** Divided rather than multiplied where the factor is below 1: 7100 kHz is then 7.1 MHz to the last figure. */
const unitsInMHz: Readonly<Record<FrequencyUnit, number>> = { Hz: 1e6, kHz: 1e3, MHz: 1, GHz: 1e-3 };

export const toMHz = (value: number, unit: FrequencyUnit): number =>
  unit === "GHz" ? value * 1e3 : value / unitsInMHz[unit];

export const fromMHz = (frequency_MHz: number, unit: FrequencyUnit): number =>
  unit === "GHz" ? frequency_MHz / 1e3 : frequency_MHz * unitsInMHz[unit];
