import { useMemo, useState } from "react";
import { BandChart } from "../../charts/BandChart.tsx";
import type { SwrTop } from "../../charts/bandLayout.ts";
import { feedFacts } from "../../charts/feedFacts.ts";
import { feedWords } from "../../charts/feedWords.ts";
import { megahertz } from "../../charts/megahertz.ts";
import { useAnswer } from "../../store/useAnswer.ts";
import { usePlan } from "../../store/usePlan.ts";
import { Switch } from "../../ui/Switch.tsx";
import { elementName } from "../yard/elementName.ts";
import { bandSpan } from "./bandSpan.ts";
import { FeedPoints } from "./FeedPoints.tsx";
import { useBandTraces } from "./useBandTraces.ts";
import "./Feed.css";

type View = "swr" | "ohms";

/** What the line sees: at the design frequency, and across the band. */
export function Feed() {
  const plan = usePlan((s) => s.plan);
  const readout = useAnswer((s) => s.readout);
  const shown = useAnswer((s) => s.readoutPlan);
  const stale = useAnswer((s) => s.state === "old");
  const traces = useBandTraces();
  const [view, setView] = useState<View>("swr");
  const [top, setTop] = useState<`${SwrTop}`>("3");
  const [marker_MHz, setMarker] = useState<number | null>(null);

  const drawn = shown ?? plan;
  const fed = useMemo(
    () => drawn.elements.filter((e) => e.base.kind === "fed").map((e) => ({ id: e.id, name: elementName(drawn, e) })),
    [drawn],
  );
  const span = useMemo(() => bandSpan(plan), [plan]);
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
      <div className="feed-tools">
        <Switch<View>
          label="view"
          isLabelShown={false}
          choices={[
            { value: "swr", label: "SWR" },
            { value: "ohms", label: "R and X" },
          ]}
          value={view}
          onChange={setView}
        />
        {view === "swr" && (
          <Switch<`${SwrTop}`>
            label="SWR up to"
            isLabelShown={false}
            choices={[
              { value: "3", label: "to 3" },
              { value: "5", label: "to 5" },
              { value: "10", label: "to 10" },
            ]}
            value={top}
            onChange={setTop}
          />
        )}
      </div>
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
