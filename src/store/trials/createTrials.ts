import { createStore, type StoreApi } from "zustand/vanilla";
import type { Problem, SavedPlan } from "../../../engine/index.ts";
import type { TrialReport } from "../../worker/trial/TrialMessage.ts";
import type { MakeTrialWorker } from "../../worker/trial/TrialWorker.ts";
import { handsFor, type TrialPool, trialPool } from "../../worker/trial/trialPool.ts";
import type { TrialKind, TrialRun, TrialRuns, TrialStage } from "./TrialRun.ts";

export interface Trials {
  readonly store: StoreApi<TrialRuns>;
  /** Says how workers are started, and ends those there are. */
  connect(makeWorker: MakeTrialWorker): void;
  /** Begins a trial; one that is going is stopped first and can go on later. */
  start(kind: TrialKind, plan: SavedPlan, key: string, stages: readonly TrialStage[]): void;
  stop(): void;
  /** A trial like this one may be begun soon: its workers are started and come up to speed. */
  expect(stages: readonly TrialStage[]): void;
  /** Takes a stopped or failed trial up again: what was solved is not solved again while the workers that know it live. */
  goOn(kind: TrialKind): void;
}

const none: readonly Problem[] = [];

/**
 * Trials outlive the room that shows them: they run, and their results stay, whatever is open. One goes at a time, its
 * stages one after the other; the picture of a better model takes the place of the quick one's as soon as it has any.
 */
export function createTrials(now_ms: () => number = () => Date.now()): Trials {
  const store = createStore<TrialRuns>(() => ({ runs: {}, going: null, busy: 0 }));
  let makeWorker: MakeTrialWorker | null = null;
  let pool: TrialPool | null = null;
  /** Reports of others are of the past. */
  let current = 0;

  const change = (kind: TrialKind, part: Partial<TrialRun>) => {
    const { runs } = store.getState();
    const run = runs[kind];
    if (run) store.setState({ runs: { ...runs, [kind]: { ...run, ...part } } });
  };
  const finish = (kind: TrialKind, part: Partial<TrialRun>) => {
    change(kind, { progress: null, ...part });
    store.setState({ going: null });
  };

  const hear = (report: TrialReport) => {
    store.setState({ busy: report.busy });
    const { going, runs } = store.getState();
    const run = going && runs[going];
    if (!run || report.run !== current) return;
    const shown = "picture" in report && report.picture;
    const isBetter = shown && run.stage >= run.stages.findIndex((one) => one.model === run.pictureModel);
    const picture = isBetter
      ? {
          picture: shown,
          pictureModel: run.stages[run.stage]!.model,
          isWhole: report.kind === "done",
          pictured_ms: now_ms(),
        }
      : {};
    switch (report.kind) {
      case "going":
        return change(going, { ...picture, progress: report.progress });
      case "done":
        change(going, picture);
        if (run.stage + 1 < run.stages.length) return begin(going, run.stage + 1);
        return finish(going, { state: "done" });
      case "failed":
        // What one model cannot do the next may; and a preview that is there stays.
        if (run.stage + 1 < run.stages.length) return begin(going, run.stage + 1);
        return finish(going, { state: "failed", problems: report.problems });
      case "thrown":
        return finish(going, { state: "failed", fault: report.message });
      case "stopped":
        return;
    }
  };
  const onFault = (message: string) => {
    store.setState({ busy: 0 });
    const { going } = store.getState();
    if (going) finish(going, { state: "failed", fault: message });
  };

  const begin = (kind: TrialKind, stage: number) => {
    const run = store.getState().runs[kind];
    const asked = run?.stages[stage];
    if (!run || !asked) return;
    change(kind, { stage, state: "going", progress: null, problems: none, fault: null });
    store.setState({ going: kind });
    if (!makeWorker) return onFault("no workers have been given to this page");
    poolOf(makeWorker).run(++current, asked.request);
  };
  const poolOf = (make: MakeTrialWorker): TrialPool => {
    const processors = typeof navigator === "undefined" ? undefined : navigator.hardwareConcurrency;
    pool ??= trialPool(make, handsFor(processors), hear, onFault);
    return pool;
  };
  const halt = () => {
    const { going } = store.getState();
    if (!going) return;
    current++;
    finish(going, { state: "stopped" });
  };

  return {
    store,
    connect(make) {
      halt();
      pool?.end();
      pool = null;
      makeWorker = make;
    },
    start(kind, plan, key, stages) {
      halt();
      const blank = { picture: null, pictureModel: null, isWhole: false, pictured_ms: 0, progress: null, fault: null };
      const run: TrialRun = { kind, plan, key, stages, stage: 0, state: "going", problems: none, ...blank };
      store.setState(({ runs }) => ({ runs: { ...runs, [kind]: run } }));
      begin(kind, 0);
    },
    stop() {
      halt();
      pool?.stop();
    },
    expect(stages) {
      if (makeWorker) poolOf(makeWorker).warm(stages.map((stage) => stage.request));
    },
    goOn(kind) {
      const run = store.getState().runs[kind];
      if (!run || run.state === "going" || run.state === "done") return;
      halt();
      begin(kind, run.state === "failed" ? 0 : run.stage);
    },
  };
}
