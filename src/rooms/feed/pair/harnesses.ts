import {
  type Complex,
  delayHarness,
  equalVoltageHarness,
  type HarnessDesign,
  type Line,
  lineWavelength_m,
  oddQuarters_m,
  phasedHarness,
  type Result,
} from "../../../../engine/index.ts";

export interface HarnessAsk {
  readonly impedance_ohm: readonly (readonly Complex[])[];
  readonly frequency_MHz: number;
  readonly ratio: Complex;
  /** All lines of the harness are cut from this. */
  readonly cable: Line;
  readonly spacing_m: number;
  readonly coilQ: number;
  readonly capacitorQ: number;
}

export interface NamedHarness {
  readonly id: "delay" | "equal-voltage" | "forcing" | "lumped" | "line-and-part";
  readonly name: string;
  readonly design: Result<HarnessDesign>;
}

/** For the way down a mast and into a box, beyond the straight distance. */
const slack_m = 0.3;

/**
 * The harnesses people build for two fed elements, each designed for the same wanted currents, with lines long enough to
 * meet between the elements:
 *  - equal lines and a delay line as long in degrees as the phase wanted, which leaves the currents to chance;
 *  - two lines joined where their voltages agree (half a wave is added to both where they would not meet);
 *  - lines of odd quarter waves, which force the currents, with an L network to turn one of them;
 *  - equal lines just long enough, with an L network;
 *  - odd quarter waves with a delay line and one part.
 */
export function harnesses(ask: HarnessAsk): readonly NamedHarness[] {
  const { impedance_ohm, frequency_MHz, ratio, cable, spacing_m, coilQ, capacitorQ } = ask;
  const feeder_m = Math.ceil((spacing_m / 2 + slack_m) * 10) / 10;
  const quarters = [1, 3, 5, 7, 9].find((n) => oddQuarters_m(cable, frequency_MHz, n) >= spacing_m / 2 + slack_m) ?? 11;
  const quarter_m = oddQuarters_m(cable, frequency_MHz, quarters);
  const common = { impedance_ohm, frequency_MHz, ratio };
  const phased = (length_m: number, phasing: "l-network" | "line-and-part") =>
    phasedHarness({
      ...common,
      lengths_m: [length_m, length_m],
      line: cable,
      phasing,
      delay: cable,
      coilQ,
      capacitorQ,
    });
  const wave = quarters === 1 ? "quarter-wave" : `${quarters}/4-wave`;
  return [
    {
      id: "delay",
      name: "delay line by length alone",
      design: delayHarness({ ...common, feeder: cable, feeder_m, delay: cable }),
    },
    { id: "equal-voltage", name: "lines joined where their voltages agree", design: meeting(ask) },
    { id: "forcing", name: `${wave} lines that force the currents, L network`, design: phased(quarter_m, "l-network") },
    { id: "lumped", name: "equal lines, L network", design: phased(feeder_m, "l-network") },
    {
      id: "line-and-part",
      name: `${wave} lines, delay line and one part`,
      design: phased(quarter_m, "line-and-part"),
    },
  ];
}

/** Of the two pairs of lengths the one with less cable that reaches; half a wave more on both turns both voltages over. */
function meeting({ impedance_ohm, frequency_MHz, ratio, cable, spacing_m }: HarnessAsk): Result<HarnessDesign> {
  const found = equalVoltageHarness(impedance_ohm, frequency_MHz, ratio, cable);
  if (!found.ok) return found;
  const half_m = lineWavelength_m(cable, frequency_MHz) / 2;
  const reaching = found.value.map((design) => {
    const cable_m = design.network.parts.reduce((sum, part) => sum + (part.kind === "line" ? part.length_m : 0), 0);
    const more = Math.max(0, Math.ceil((spacing_m + 2 * slack_m - cable_m) / (2 * half_m)));
    return { cable_m: cable_m + 2 * more * half_m, design: more === 0 ? design : longer(design, more * half_m, cable) };
  });
  reaching.sort((a, b) => a.cable_m - b.cable_m);
  return { ok: true, value: reaching[0]!.design };
}

/** Every line longer; a link becomes a line of that length. */
const longer = (design: HarnessDesign, by_m: number, line: Line): HarnessDesign => ({
  ...design,
  network: {
    ...design.network,
    parts: design.network.parts.map((part) =>
      part.kind === "line"
        ? { ...part, length_m: part.length_m + by_m }
        : { id: part.id, from: part.from, to: part.to, kind: "line", line, length_m: by_m },
    ),
  },
});
