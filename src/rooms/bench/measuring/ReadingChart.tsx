import { useMemo, useState } from "react";
import {
  type BenchLead,
  type BenchReading,
  type ExpectedSheet,
  type ExpectedStep,
  swr,
} from "../../../../engine/index.ts";
import type { SwrTop } from "../../../charts/bandLayout.ts";
import type { Curve } from "../../../charts/Curve.ts";
import { CurveChart } from "../../../charts/CurveChart.tsx";
import type { BandQuantity } from "../../../charts/readSweep.ts";
import { bandSpan } from "../../../store/bandSpan.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { Switch } from "../../../ui/Switch.tsx";
import { readingAtBase } from "./readingAtBase.ts";
import { sweepOf } from "./readingFacts.ts";

interface Props {
  readonly step: ExpectedStep;
  readonly sheet: ExpectedSheet;
  readonly readings: readonly BenchReading[];
  readonly lead: BenchLead | undefined;
  readonly stale: boolean;
}

const quantities: readonly { readonly value: BandQuantity; readonly label: string }[] = [
  { value: "resistance", label: "R" },
  { value: "reactance", label: "X" },
  { value: "swr", label: "SWR" },
];
const titles: Readonly<Record<BandQuantity, string>> = {
  resistance: "R expected and read, Ω",
  reactance: "X expected and read, Ω",
  swr: "SWR expected and read, against 50 Ω",
};
/** Dashes and markers there are. */
const styles = 4;

/** What was read, laid over what is expected, over frequency. */
export function ReadingChart({ step, sheet, readings, lead, stale }: Props) {
  const [quantity, setQuantity] = useState<BandQuantity>("reactance");
  const [marker_MHz, setMarker] = useState<number | null>(null);
  const curves = useMemo((): Curve[] => {
    const expected = step.figures?.curve ?? [];
    const of = (r: number, x: number) => (quantity === "resistance" ? r : quantity === "reactance" ? x : swr(r, x, 50));
    const read = readings.slice(-styles).flatMap((reading, i): Curve[] => {
      const points = readingAtBase(reading, lead);
      if (!points) return [];
      const sweep = sweepOf({ points });
      return [
        {
          id: reading.id,
          name: `read ${reading.date.slice(5)}`,
          role: "pin",
          style: i,
          // A sweep from a file has a mark at so many places that they would hide it.
          isRead: sweep.frequency_MHz.length <= 24,
          frequency_MHz: sweep.frequency_MHz,
          value: sweep.resistance_ohm.map((r, k) => of(r, sweep.reactance_ohm[k]!)),
        },
      ];
    });
    return [
      {
        id: "expected",
        name: "expected",
        role: "live",
        style: 0,
        frequency_MHz: expected.map((p) => p.frequency_MHz),
        value: expected.map((p) => of(p.impedance_ohm.re, p.impedance_ohm.im)),
      },
      ...read,
    ];
  }, [step, readings, lead, quantity]);
  const stated = usePlan((s) => s.plan.band);
  const band = useMemo(() => bandSpan(stated, sheet.frequency_MHz), [stated, sheet]);
  const top: SwrTop = curves.some((c) => c.value.some((v) => v > 3)) ? 10 : 3;
  return (
    <div className="bn-chart">
      <Switch<BandQuantity>
        label="what is drawn"
        isLabelShown={false}
        choices={quantities}
        value={quantity}
        onChange={setQuantity}
      />
      <CurveChart
        title={titles[quantity]}
        note={readings.length > 0 ? "readings dashed, each marked" : "the plan’s own soil"}
        said={
          readings.length > 0
            ? `Readings of ${readings.map((one) => one.date).join(", ")} lie over what is expected.`
            : "No reading yet: what is expected alone."
        }
        quantity={quantity}
        curves={curves}
        band={band}
        bandLabel={band.label}
        design_MHz={sheet.frequency_MHz}
        top={top}
        marker_MHz={marker_MHz ?? sheet.frequency_MHz}
        stale={stale}
        onMarker={setMarker}
      />
    </div>
  );
}
