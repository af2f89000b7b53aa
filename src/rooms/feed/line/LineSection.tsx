import { useMemo, useState } from "react";
import type { Ladder, Line, PlanFeedline } from "../../../../engine/index.ts";
import type { SwrTop } from "../../../charts/bandLayout.ts";
import { CurveChart } from "../../../charts/CurveChart.tsx";
import { figure } from "../../../charts/figure.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import type { BandFeed } from "../bandFeed.ts";
import { RoomTable } from "../RoomTable.tsx";
import { topFor } from "../topFor.ts";
import { lineOver } from "./lineOver.ts";
import { lineWords } from "./lineWords.ts";

interface Props {
  readonly feed: BandFeed;
  readonly feedline: PlanFeedline;
  readonly line: Line;
  /** The match that stands at the feedpoint. */
  readonly ladder: Ladder;
  readonly matchName: string | null;
  readonly stale: boolean;
}

/** What the rig sees through the line, beside what there is at the antenna. */
export function LineSection({ feed, feedline, line, ladder, matchName, stale }: Props) {
  const [marker_MHz, setMarker] = useState<number | null>(null);
  const { length_m, swrLimit, power_W } = feedline;
  const { span, design_MHz } = feed;
  const over = useMemo(() => lineOver(line, length_m, feed.drawn, ladder), [line, length_m, feed, ladder]);
  const bare = useMemo(() => lineOver(line, length_m, feed.drawn), [line, length_m, feed]);
  const spots = useMemo(() => {
    const frequencies = [...new Set([span.from_MHz, design_MHz, span.to_MHz])].sort((a, b) => a - b);
    return lineOver(
      line,
      length_m,
      frequencies.map((f) => ({ frequency_MHz: f, impedance_ohm: feed.at(f) })),
      ladder,
    );
  }, [line, length_m, feed, ladder, span, design_MHz]);
  const marker = marker_MHz ?? design_MHz;
  const read = useMemo(
    () => lineOver(line, length_m, [{ frequency_MHz: marker, impedance_ohm: feed.at(marker) }], ladder),
    [line, length_m, feed, ladder, marker],
  );
  const curves = useMemo(() => {
    if (!over.ok || !bare.ok) return [];
    const frequency_MHz = feed.drawn.map((p) => p.frequency_MHz);
    return [
      {
        id: "rig",
        name: "at the rig",
        role: "live" as const,
        style: 0,
        frequency_MHz,
        value: over.value.map((p) => p.swrAtRig),
      },
      ...(matchName
        ? [
            {
              id: "line",
              name: "at the match",
              role: "pin" as const,
              style: 1,
              frequency_MHz,
              value: over.value.map((p) => p.swrOnLine),
            },
          ]
        : []),
      {
        id: "antenna",
        name: "at the feedpoint",
        role: "pin" as const,
        style: 0,
        frequency_MHz,
        value: bare.value.map((p) => p.swrOnLine),
      },
    ];
  }, [over, bare, feed, matchName]);
  if (!over.ok || !spots.ok || !read.ok) {
    const problems = [over, spots, read].flatMap((one) => (one.ok ? [] : one.problems));
    return <p className="fr-problem">{problems[0]!.message}</p>;
  }
  const top: SwrTop = topFor(curves, span);
  const words = lineWords(read.value[0]!, line.impedance_ohm);
  const rows = spots.value.map((p) => [
    `${megahertz(p.frequency_MHz)} MHz`,
    impedanceText(p.antenna.re, p.antenna.im),
    figure(p.swrOnLine, 2),
    figure(p.swrAtRig, 2),
    figure(p.matchedLoss_dB, 2),
    figure(p.lineLoss_dB, 2),
    ...(matchName ? [figure(p.matchLoss_dB, 2)] : []),
    `${figure(p.efficiency * power_W, power_W < 20 ? 1 : 0)} W`,
  ]);
  return (
    <div className="fr-two">
      <CurveChart
        title={matchName ? `SWR through the line, with ${matchName}` : "SWR at the feedpoint and at the rig"}
        note={`limit ${figure(swrLimit, 2)} drawn strong, band shaded`}
        said={words.join(" ")}
        quantity="swr"
        curves={curves}
        band={span}
        bandLabel={span.label}
        design_MHz={design_MHz}
        top={top}
        limit={swrLimit}
        marker_MHz={marker}
        stale={stale}
        onMarker={setMarker}
      />
      <div className="fr-said">
        {words.map((w) => (
          <p key={w}>{w}</p>
        ))}
        {ladder.some((one) => one.kind === "retrim") && (
          <p className="fr-note">
            The match counts on the element being recut; until the plan has it so, these curves take that as done.
          </p>
        )}
      </div>
      <div className="fr-wide">
        <RoomTable
          caption="At the band’s edges and the plan’s frequency"
          heads={[
            "",
            "R + jX at the feedpoint",
            matchName ? "SWR on the line" : `SWR at the feedpoint (${figure(line.impedance_ohm, 0)} Ω)`,
            "SWR at the rig (50 Ω)",
            "matched loss, dB",
            "line’s loss in all, dB",
            ...(matchName ? ["match, dB"] : []),
            `of ${figure(power_W, 0)} W arrive`,
          ]}
          rows={rows}
        />
      </div>
    </div>
  );
}
