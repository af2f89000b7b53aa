import type { Expected, ExpectedStep } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import type { ReadingFacts } from "./readingFacts.ts";

export interface ExpectedRow {
  readonly key: keyof ReadingFacts;
  readonly name: string;
  /** For paper, where there is little room. */
  readonly short: string;
  /** With its unit. */
  readonly expected: string;
  /** What the soil may make of it. */
  readonly range: string;
  /** The same in the unit of what is expected, without it. */
  readonly bareRange: string;
  /** How near is near enough. */
  readonly tolerance: string;
  /** Of a reading: as it is printed, and how far it lies outside range and tolerance; 0: inside. */
  judge(value: number): { readonly text: string; readonly beyond: number; readonly beyondText: string };
}

/** What the meter should show at a step, row by row. Empty for a step without a meter. */
export function expectedRows({ figures, tolerance }: ExpectedStep, frequency_MHz: number): readonly ExpectedRow[] {
  if (!figures) return [];
  const ohms = (v: number) => `${figure(v, 1)} Ω`;
  const mega = (v: number) => `${megahertz(v)} MHz`;
  const at = megahertz(frequency_MHz);
  const of = (
    key: keyof ReadingFacts,
    [name, short]: readonly [string, string],
    one: Expected | null,
    text: (v: number) => string,
    near: number | null,
    unit: (v: number) => string,
  ): ExpectedRow => ({
    key,
    name,
    short,
    expected: one ? text(one.value) : "none within the sweep",
    bareRange: one && one.high > one.low ? `${bare(text(one.low))} … ${bare(text(one.high))}` : "",
    range: one && one.high > one.low ? `${bare(text(one.low))} to ${text(one.high)}` : "",
    tolerance: near === null ? "" : `± ${unit(near)}`,
    judge(value) {
      const low = one ? one.low - (near ?? 0) : Number.NaN;
      const high = one ? one.high + (near ?? 0) : Number.NaN;
      const beyond = near === null || !one ? 0 : value > high ? value - high : value < low ? value - low : 0;
      return {
        text: text(value),
        beyond,
        beyondText: beyond === 0 ? "" : `${unit(Math.abs(beyond))} ${beyond > 0 ? "above" : "below"}`,
      };
    },
  });
  const kilo = (v: number) => `${figure(v * 1000, 0)} kHz`;
  const plain = (v: number) => figure(v, 2);
  const r = tolerance?.resistance_ohm ?? null;
  const x = tolerance?.reactance_ohm ?? null;
  const f = tolerance ? tolerance.resonance_kHz / 1000 : null;
  return [
    of("resonance_MHz", ["X passes through 0 at", "X = 0 at"], figures.resonance_MHz, mega, f, kilo),
    of("resonanceResistance_ohm", ["R there", "R there"], figures.resonanceResistance_ohm, ohms, r, ohms),
    of("resistance_ohm", [`R at ${at} MHz`, `R at ${at}`], figures.resistance_ohm, ohms, r, ohms),
    of("reactance_ohm", [`X at ${at} MHz`, `X at ${at}`], figures.reactance_ohm, ohms, x, ohms),
    of("swr", [`SWR at ${at} MHz`, `SWR at ${at}`], figures.swr, plain, null, plain),
    of("leastSwr", ["least SWR", "least SWR"], figures.leastSwr, plain, null, plain),
    of("leastSwr_MHz", ["least SWR at", "least SWR at"], figures.leastSwr_MHz, mega, null, kilo),
  ];
}

/** A figure without its unit. */
const bare = (text: string) => text.replace(/\s\S+$/, "");
