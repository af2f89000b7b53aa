import { useDeferredValue, useEffect, useMemo, useRef, useState } from "react";
import { feedlineOf, type Ladder, lineOfCable } from "../../../engine/index.ts";
import { usePlan } from "../../store/usePlan.ts";
import { Button } from "../../ui/Button.tsx";
import { Icon } from "../../ui/Icon.tsx";
import { Switch } from "../../ui/Switch.tsx";
import type { MakeWorker } from "../../worker/EngineWorker.ts";
import { LineFields } from "./line/LineFields.tsx";
import { LineSection } from "./line/LineSection.tsx";
import { SourceWords } from "./SourceWords.tsx";
import { useBandFeed } from "./useBandFeed.ts";
import { useFeedlineEdit } from "./useFeedlineEdit.ts";
import "./FeedRoom.css";

type Part = "line";

const partNames: readonly { readonly value: Part; readonly label: string }[] = [{ value: "line", label: "Line" }];
const noLadder: Ladder = [];

interface Props {
  readonly makeWorker: MakeWorker;
  onClose(): void;
}

/** Everything between the rig and the antenna, in parts of which one stands open. */
export function FeedRoom({ onClose }: Props) {
  const room = useRef<HTMLElement>(null);
  const [part, setPart] = useState<Part>("line");
  const feedline = usePlan((s) => feedlineOf(s.plan));
  const edit = useFeedlineEdit();
  const shown = useDeferredValue(useBandFeed());
  const line = useMemo(() => lineOfCable(feedline.cable), [feedline.cable]);

  useEffect(() => {
    room.current?.focus({ preventScroll: true });
    room.current?.scrollIntoView?.({ block: "start" });
  }, []);

  return (
    <section
      className="sheet room room--feedroom"
      aria-labelledby="feedroom-name"
      ref={room}
      tabIndex={-1}
      onKeyDown={(event) => event.key === "Escape" && !event.defaultPrevented && onClose()}
    >
      <header className="fr-head">
        <h2 className="room__name" id="feedroom-name">
          From rig to antenna
        </h2>
        <Switch<Part>
          label="Part of this room"
          isLabelShown={false}
          choices={partNames}
          value={part}
          onChange={setPart}
        />
        <Button look="quiet" icon={<Icon name="cross" />} onClick={onClose}>
          Close
        </Button>
      </header>
      <LineFields feedline={feedline} edit={edit} />
      {shown.feed && line.ok ? (
        <>
          {part === "line" && (
            <LineSection
              feed={shown.feed}
              feedline={feedline}
              line={line.value}
              ladder={noLadder}
              matchName={null}
              stale={shown.stale}
            />
          )}
          <SourceWords model={shown.model} what="Feed impedance over the band" />
        </>
      ) : (
        <p className="fr-waiting">{line.ok ? "The sweep across the band is on its way." : line.problems[0]!.message}</p>
      )}
    </section>
  );
}
