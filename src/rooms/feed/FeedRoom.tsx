import { type ReactNode, useDeferredValue, useMemo, useState } from "react";
import { feedlineOf, type Ladder, lineOfCable, type Problem } from "../../../engine/index.ts";
import { usePlan } from "../../store/usePlan.ts";
import { SideRoom } from "../../ui/SideRoom.tsx";
import type { MakeWorker } from "../../worker/EngineWorker.ts";
import { LineFields } from "./line/LineFields.tsx";
import { LineSection } from "./line/LineSection.tsx";
import { MatchSection } from "./match/MatchSection.tsx";
import { matchNamed, roomMatches } from "./match/roomMatches.ts";
import { PairSection } from "./pair/PairSection.tsx";
import { ReversalSection } from "./reversal/ReversalSection.tsx";
import { SourceWords } from "./SourceWords.tsx";
import { SmithSection } from "./smith/SmithSection.tsx";
import { StressSection } from "./stress/StressSection.tsx";
import { useBandFeed } from "./useBandFeed.ts";
import { useFeedlineEdit } from "./useFeedlineEdit.ts";
import "./FeedRoom.css";

type Part = "line" | "match" | "pair" | "reversal" | "smith" | "stress";

const partNames: readonly { readonly value: Part; readonly label: string }[] = [
  { value: "line", label: "Line" },
  { value: "match", label: "Matches" },
  { value: "pair", label: "Fed pair" },
  { value: "reversal", label: "Reversal" },
  { value: "smith", label: "Impedance" },
  { value: "stress", label: "Volts and choke" },
];
const noLadder: Ladder = [];

interface Props {
  readonly makeWorker: MakeWorker;
  onClose(): void;
}

/** Everything between the rig and the antenna, in parts of which one stands open. */
export function FeedRoom({ makeWorker, onClose }: Props) {
  const [part, setPart] = useState<Part>("line");
  const feedline = usePlan((s) => feedlineOf(s.plan));
  const edit = useFeedlineEdit();
  const { feed, model, stale, isOneOfSeveral } = useDeferredValue(useBandFeed());

  const line = useMemo(() => lineOfCable(feedline.cable), [feedline.cable]);
  const section = useMemo(
    () => lineOfCable({ kind: "listed", id: feedline.sectionId }, "feedline.sectionId"),
    [feedline.sectionId],
  );
  const matches = useMemo(
    () => (feed && line.ok && section.ok ? roomMatches(feed, feedline, line.value, section.value) : null),
    [feed, feedline, line, section],
  );
  const chosen = matches?.ok ? matchNamed(matches.value, feedline.match) : undefined;

  const body = (): ReactNode => {
    if (!line.ok) return <Problems problems={line.problems} />;
    if (!section.ok) return <Problems problems={section.problems} />;
    if (part === "pair")
      return (
        <PairSection feedline={feedline} line={line.value} cable={section.value} edit={edit} makeWorker={makeWorker} />
      );
    if (part === "reversal")
      return <ReversalSection feedline={feedline} cable={section.value} edit={edit} makeWorker={makeWorker} />;
    if (!feed || !matches) return <p className="fr-waiting">The sweep across the band is on its way.</p>;
    if (!matches.ok) return <Problems problems={matches.problems} />;
    const common = {
      feed,
      feedline,
      line: line.value,
      ladder: chosen?.readout.match.ladder ?? noLadder,
      matchName: chosen && chosen.readout.match.ladder.length > 0 ? chosen.readout.match.name : null,
    };
    switch (part) {
      case "line":
        return <LineSection {...common} stale={stale} />;
      case "match":
        return (
          <MatchSection
            feed={feed}
            feedline={feedline}
            line={line.value}
            matches={matches.value}
            edit={edit}
            stale={stale}
          />
        );
      case "smith":
        return <SmithSection {...common} stale={stale} />;
      case "stress":
        return <StressSection {...common} makeWorker={makeWorker} />;
    }
  };

  return (
    <SideRoom<Part>
      name="From rig to antenna"
      place="feedroom"
      parts={partNames}
      part={part}
      onPart={setPart}
      onClose={onClose}
    >
      <LineFields feedline={feedline} edit={edit} />
      {body()}
      {feed && part !== "pair" && part !== "reversal" && (
        <>
          <SourceWords model={model} what="Feed impedance over the band" />
          {isOneOfSeveral && (
            <p className="fr-note">This plan feeds several elements; the line here is the first one’s.</p>
          )}
        </>
      )}
    </SideRoom>
  );
}

function Problems({ problems }: { readonly problems: readonly Problem[] }) {
  return (
    <ul className="fr-problem">
      {problems.map((one) => (
        <li key={`${one.where} ${one.message}`}>{one.message}</li>
      ))}
    </ul>
  );
}
