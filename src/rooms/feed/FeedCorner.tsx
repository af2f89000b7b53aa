import { useMemo, useState } from "react";
import { BandChart } from "../../charts/BandChart.tsx";
import { useAnswer } from "../../store/useAnswer.ts";
import { usePlan } from "../../store/usePlan.ts";
import { bandSpan } from "./bandSpan.ts";
import { useBandTraces } from "./useBandTraces.ts";

/** The SWR chart alone, for a corner of another room. */
export function FeedCorner() {
  const plan = usePlan((s) => s.plan);
  const shown = useAnswer((s) => s.readoutPlan);
  const stale = useAnswer((s) => s.state === "old");
  const traces = useBandTraces();
  const [marker_MHz, setMarker] = useState<number | null>(null);
  const span = useMemo(() => bandSpan(plan), [plan]);
  const { frequency_MHz } = shown ?? plan;
  return (
    <BandChart
      traces={traces}
      quantity="swr"
      band={span}
      bandLabel={span.label}
      design_MHz={frequency_MHz}
      top={3}
      marker_MHz={marker_MHz ?? frequency_MHz}
      stale={stale}
      onMarker={setMarker}
    />
  );
}
