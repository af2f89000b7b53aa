import { useCallback, useEffect, useRef, useState } from "react";
import { Cautions } from "./Cautions.tsx";
import { Headline } from "./headline/Headline.tsx";
import { OpenByDrop } from "./OpenByDrop.tsx";
import { BenchRoom } from "./rooms/bench/BenchRoom.tsx";
import { Feed } from "./rooms/feed/Feed.tsx";
import { FeedRoom } from "./rooms/feed/FeedRoom.tsx";
import { LadderPanel } from "./rooms/sky/LadderPanel.tsx";
import { Sky } from "./rooms/sky/Sky.tsx";
import { TrialsRoom } from "./rooms/trials/TrialsRoom.tsx";
import { Yard } from "./rooms/yard/Yard.tsx";
import type { Follower } from "./store/Follower.ts";
import { followPlan } from "./store/followPlan.ts";
import { answerStore } from "./store/useAnswer.ts";
import { planStore } from "./store/usePlan.ts";
import { openPlanFile } from "./topbar/planActions.ts";
import { TopBar } from "./topbar/TopBar.tsx";
import { usePageKeys } from "./topbar/usePageKeys.ts";
import { Button } from "./ui/Button.tsx";
import { Room } from "./ui/Room.tsx";
import { Toasts } from "./ui/Toasts.tsx";
import type { MakeWorker } from "./worker/EngineWorker.ts";

/** The rooms that are opened beside the workbench, one at a time. */
type OpenRoom = "feed" | "bench" | "trials";

interface Props {
  /** Starts the engine's workers: tests pass one that runs beside them. */
  readonly makeWorker: MakeWorker;
}

/** The whole page: what holds for the plan, what it buys, and the rooms to work in. */
export function App({ makeWorker }: Props) {
  const follower = useRef<Follower>(null);
  useEffect(() => {
    const started = followPlan(planStore, answerStore, makeWorker);
    follower.current = started;
    return () => started.stop();
  }, [makeWorker]);

  const retry = useCallback(() => follower.current?.retry(), []);
  const stopFull = useCallback(() => follower.current?.stopFull(), []);
  const goOn = useCallback(() => follower.current?.goOn(), []);
  const chooser = useRef<HTMLInputElement>(null);
  const chooseFile = useCallback(() => chooser.current?.click(), []);
  usePageKeys(chooseFile);
  const [openRoom, setOpenRoom] = useState<OpenRoom | null>(null);
  const toggle = (room: OpenRoom) => setOpenRoom(openRoom === room ? null : room);
  const feedOpener = useRef<HTMLButtonElement>(null);
  const benchOpener = useRef<HTMLButtonElement>(null);
  const trialsOpener = useRef<HTMLButtonElement>(null);
  const closeRoom = useCallback(() => {
    const opener = openRoom === "bench" ? benchOpener : openRoom === "trials" ? trialsOpener : feedOpener;
    setOpenRoom(null);
    // The opener comes back to the page with this change; the focus goes to it afterwards.
    requestAnimationFrame(() => opener.current?.focus());
  }, [openRoom]);

  return (
    <>
      <TopBar onOpenFile={chooseFile} />
      <main className="page">
        <Headline onRetry={retry} onStop={stopFull} onGoOn={goOn} />
        <div className="rooms" data-open={openRoom ?? undefined}>
          <Room
            name="Yard"
            place="yard"
            aside={
              <>
                drag the masts, tips and arrow{" "}
                <Button
                  ref={benchOpener}
                  className="room__open"
                  aria-expanded={openRoom === "bench"}
                  onClick={() => toggle("bench")}
                >
                  Paper and readings
                </Button>
              </>
            }
          >
            <Yard />
          </Room>
          <Room name="Sky" place="sky">
            <Sky />
          </Room>
          <Room
            name="Ladder"
            place="ladder"
            aside={
              <>
                low angles, dBi{" "}
                <Button
                  ref={trialsOpener}
                  className="room__open"
                  aria-expanded={openRoom === "trials"}
                  onClick={() => toggle("trials")}
                >
                  Walk, map, find best
                </Button>
              </>
            }
          >
            <LadderPanel />
          </Room>
          <Room
            name="Feed"
            place="feed"
            aside={
              <Button
                ref={feedOpener}
                className="room__open"
                aria-expanded={openRoom === "feed"}
                onClick={() => toggle("feed")}
              >
                Line, matches, fed pair
              </Button>
            }
          >
            <Feed />
          </Room>
          {openRoom === "feed" && <FeedRoom makeWorker={makeWorker} onClose={closeRoom} />}
          {openRoom === "bench" && <BenchRoom makeWorker={makeWorker} onClose={closeRoom} />}
          {openRoom === "trials" && <TrialsRoom onClose={closeRoom} />}
        </div>
      </main>
      <footer className="page__foot">
        <Cautions />
      </footer>
      <input
        ref={chooser}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label="Plan file to open"
        onChange={(event) => {
          const input = event.currentTarget;
          const file = input.files?.[0];
          if (file) void openPlanFile(file).finally(() => (input.value = ""));
        }}
      />
      <OpenByDrop />
      <Toasts />
    </>
  );
}
