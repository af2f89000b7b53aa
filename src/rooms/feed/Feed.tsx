import { useMemo, useState } from "react";
import { BandChart } from "../../charts/BandChart.tsx";
import type { SwrTop } from "../../charts/bandLayout.ts";
import { feedFacts } from "../../charts/feedFacts.ts";
import { feedWords } from "../../charts/feedWords.ts";
import { megahertz } from "../../charts/megahertz.ts";
import { bandSpan } from "../../store/bandSpan.ts";
import { useCalmAnswer } from "../../store/useCalmAnswer.ts";
import { usePlan } from "../../store/usePlan.ts";
import { elementName } from "../yard/elementName.ts";
import { FeedPoints } from "./FeedPoints.tsx";
import { FeedTools, type FeedView } from "./FeedTools.tsx";
import { useBandTraces } from "./useBandTraces.ts";
import "./Feed.css";

/** What the line sees: at the design frequency, and across the band. */
export function Feed() {
  const band = usePlan((s) => s.plan.band);
  const frequency_MHz = usePlan((s) => s.plan.frequency_MHz);
  const readout = useCalmAnswer((s) => s.readout);
  const shown = useCalmAnswer((s) => s.readoutPlan);
  const stale = useCalmAnswer((s) => s.state === "old");
  const traces = useBandTraces();
  const [view, setView] = useState<FeedView>("swr");
  const [top, setTop] = useState<`${SwrTop}`>("3");
  const [marker_MHz, setMarker] = useState<number | null>(null);

  // The plan on screen stands in until there is an answer to draw.
  const waiting = usePlan((s) => (shown ? null : s.plan));
  const drawn = shown ?? waiting!;
  const fed = drawn.elements
    .filter((e) => e.base.kind === "fed")
    .map((e) => ({ id: e.id, name: elementName(drawn, e) }));
  const span = useMemo(() => bandSpan(band, frequency_MHz), [band, frequency_MHz]);
  const words = useMemo(
    () =>
      traces
        .filter((t) => t.role === "live")
        .map((t) => ({ id: t.id, name: t.name, said: feedWords(feedFacts(t.sweep, span), span).join(" ") })),
    [traces, span],
  );
  const common = {
    traces,
    band: span,
    bandLabel: span.label,
    design_MHz: drawn.frequency_MHz,
    top: Number(top) as SwrTop,
    marker_MHz: marker_MHz ?? drawn.frequency_MHz,
    stale,
    onMarker: setMarker,
  };

  return (
    <div className="feed">
      <FeedPoints fed={fed} readout={readout} frequency={`${megahertz(drawn.frequency_MHz)} MHz`} stale={stale} />
      <FeedTools view={view} onView={setView} top={top} onTop={setTop} />
      {view === "swr" ? (
        <BandChart {...common} quantity="swr" />
      ) : (
        <div className="feed-ohms">
          <BandChart {...common} quantity="resistance" />
          <BandChart {...common} quantity="reactance" />
        </div>
      )}
      <ul className="feed-words">
        {words.map((w) => (
          <li key={w.id}>{words.length > 1 ? `${w.name}: ${w.said}` : w.said}</li>
        ))}
      </ul>
    </div>
  );
}
