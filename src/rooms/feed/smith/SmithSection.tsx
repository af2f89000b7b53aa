import { useMemo, useState } from "react";
import type { Ladder, Line, PlanFeedline } from "../../../../engine/index.ts";
import type { Curve } from "../../../charts/Curve.ts";
import { CurveChart } from "../../../charts/CurveChart.tsx";
import { figure } from "../../../charts/figure.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import { useSettings } from "../../../store/useSettings.ts";
import type { BandFeed } from "../bandFeed.ts";
import { type LinePoint, lineOver } from "../line/lineOver.ts";
import { RoomTable } from "../RoomTable.tsx";
import { matchSteps } from "./matchSteps.ts";
import { SmithChart } from "./SmithChart.tsx";

interface Props {
  readonly feed: BandFeed;
  readonly feedline: PlanFeedline;
  readonly line: Line;
  readonly ladder: Ladder;
  readonly matchName: string | null;
  readonly stale: boolean;
}

/** Impedance across the band on the reflection chart and as R and X, with the steps of the chosen match. */
export function SmithSection({ feed, feedline, line, ladder, matchName, stale }: Props) {
  const [marker_MHz, setMarker] = useState<number | null>(null);
  const units = useSettings((s) => s.units);
  const { span, design_MHz } = feed;
  const over = useMemo(() => lineOver(line, feedline.length_m, feed.drawn, ladder), [line, feedline, feed, ladder]);
  const curves = useMemo(() => {
    const of = (pick: (p: LinePoint) => number, bare: (p: LinePoint) => number): readonly Curve[] => {
      if (!over.ok) return [];
      const frequency_MHz = over.value.map((p) => p.frequency_MHz);
      const antenna = { id: "a", name: "feedpoint", style: 0, frequency_MHz, value: over.value.map(bare) };
      if (!matchName) return [{ ...antenna, role: "live" }];
      return [
        { id: "m", name: "after the match", role: "live", style: 0, frequency_MHz, value: over.value.map(pick) },
        { ...antenna, role: "pin" },
      ];
    };
    return {
      resistance: of(
        (p) => p.lineEnd.re,
        (p) => p.antenna.re,
      ),
      reactance: of(
        (p) => p.lineEnd.im,
        (p) => p.antenna.im,
      ),
    };
  }, [over, matchName]);
  if (!over.ok) return <p className="fr-problem">{over.problems[0]!.message}</p>;
  const common = {
    band: span,
    bandLabel: span.label,
    design_MHz,
    marker_MHz: marker_MHz ?? design_MHz,
    stale,
    note: "band shaded",
    onMarker: setMarker,
  };
  return (
    <div className="fr-two">
      <SmithChart
        feed={feed}
        ladder={ladder}
        over={over.value}
        reference_ohm={line.impedance_ohm}
        swrLimit={feedline.swrLimit}
        stale={stale}
      />
      <div className="fr-part">
        <CurveChart
          {...common}
          title="Resistance R"
          said={`Resistance over frequency${matchName ? ", at the feedpoint and after the match" : ""}.`}
          quantity="resistance"
          curves={curves.resistance}
        />
        <CurveChart
          {...common}
          title="Reactance X"
          said={`Reactance over frequency${matchName ? ", at the feedpoint and after the match" : ""}.`}
          quantity="reactance"
          curves={curves.reactance}
        />
      </div>
      <div className="fr-wide">
        {matchName ? (
          <RoomTable
            caption={`Steps of the match (${matchName}) at ${megahertz(design_MHz)} MHz, from antenna to rig; ${figure(line.impedance_ohm, 0)} Ω is wanted`}
            heads={["after", "impedance"]}
            rows={matchSteps(ladder, design_MHz, feed.at(design_MHz), line.impedance_ohm, units)}
          />
        ) : (
          <p className="fr-small">No match is chosen: choose one under Matches, and its steps are drawn here.</p>
        )}
      </div>
    </div>
  );
}
