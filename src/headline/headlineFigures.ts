import type { PlanReadout } from "../../engine/index.ts";
import { figure, noFigure, signedFigure } from "../charts/figure.ts";
import { impedanceText } from "../charts/impedanceText.ts";

export interface HeadlineFigure {
  readonly id: "forward" | "back" | "rear" | "feed";
  readonly value: string;
  readonly unit: string;
  readonly label: string;
  /** In the live colour: the one figure the eye should land on. */
  readonly isHot?: boolean;
  /** Stands beside the label, marked as a caution. */
  readonly caution?: string | null;
  /** Numbers of the answer's notes that weaken this figure, counted from 1. */
  readonly notes?: readonly number[];
}

interface Facts {
  readonly readout: PlanReadout;
  /** The baseline's answer to the same questions; null when none is pinned. */
  readonly baseline: {
    readonly name: string;
    readonly readout: PlanReadout;
    /** How the baseline's circumstances differ, when they do: "at 7.1 MHz". */
    readonly caution: string | null;
  } | null;
  /** Why there is no baseline though one is named; null when nothing is amiss. */
  readonly withoutBaseline?: string | null;
  readonly rearSector_deg: number;
  /** "average soil", "perfect ground": what an absolute figure stands over. */
  readonly groundName: string;
}

/** The four figures at the top of the page: each with what it is measured at and against. */
export function headlineFigures(facts: Facts): readonly HeadlineFigure[] {
  return figuresOf(facts).map((one) => ({ ...one, notes: notesOf(one.id, facts.readout) }));
}

/** Which figures a note weakens. One that is not listed is about the powers, and so about the gain. */
const weakened: Readonly<Record<string, readonly HeadlineFigure["id"][]>> = {
  "radials-lifted": ["feed"],
  "thin-wire-limit": ["feed"],
  residual: ["forward", "back", "rear", "feed"],
  "no-screen": ["forward", "feed"],
  "soil-without-radials": ["forward", "feed"],
};

function notesOf(id: HeadlineFigure["id"], { notes }: PlanReadout): readonly number[] {
  return notes.flatMap((note, i) => ((weakened[note.code] ?? ["forward"]).includes(id) ? [i + 1] : []));
}

function figuresOf({
  readout,
  baseline,
  withoutBaseline,
  rearSector_deg,
  groundName,
}: Facts): readonly HeadlineFigure[] {
  const { path, feeds } = readout;
  const angle = `${figure(path.elevation_deg, Number.isInteger(path.elevation_deg) ? 0 : 1)}°`;
  const forward: HeadlineFigure = baseline
    ? {
        id: "forward",
        value: signedFigure(path.forward_dBi - baseline.readout.path.forward_dBi, 1),
        unit: "dB",
        label: `forward at ${angle}, against ${baseline.name}`,
        caution: baseline.caution,
        isHot: true,
      }
    : {
        id: "forward",
        value: figure(path.forward_dBi, 1),
        unit: "dBi",
        label: `forward at ${angle}, over ${groundName}`,
        caution: withoutBaseline ?? null,
        isHot: true,
      };
  return [
    forward,
    { id: "back", value: figure(path.frontToBack_dB, 1), unit: "dB", label: `front-to-back at ${angle}` },
    {
      id: "rear",
      value: figure(path.frontToRear_dB, 1),
      unit: "dB",
      label: `front to worst within ±${figure(rearSector_deg / 2, 0)}° of straight back`,
    },
    feedFigure(feeds),
  ];
}

function feedFigure(feeds: PlanReadout["feeds"]): HeadlineFigure {
  const first = feeds[0];
  if (!first) return { id: "feed", value: figure(Number.NaN, 1), unit: "", label: "no fed element" };
  const { re, im } = first.impedance_ohm;
  const more = feeds.length > 1 ? ` (${first.elementId}, the first of ${feeds.length})` : "";
  return {
    id: "feed",
    // An element that hands power back has no SWR; past a hundred the digits mean nothing.
    value: re < 0 ? noFigure : first.swr50 > 100 ? "> 100" : figure(first.swr50, first.swr50 < 10 ? 2 : 0),
    unit: ": 1",
    // No-break spaces: an impedance is read in one piece.
    label: `SWR at the feedpoint${more}, ${impedanceText(re, im).replaceAll(" ", "\u00a0")}`,
  };
}
