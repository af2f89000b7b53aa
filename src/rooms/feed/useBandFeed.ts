import { useMemo } from "react";
import { drivenOf } from "../../../engine/index.ts";
import type { AnswerModel } from "../../store/answerModels.ts";
import { bandSpan } from "../../store/bandSpan.ts";
import { useCalmAnswer } from "../../store/useCalmAnswer.ts";
import { usePlan } from "../../store/usePlan.ts";
import { type BandFeed, bandFeed } from "./bandFeed.ts";

export interface ShownFeed {
  readonly feed: BandFeed | null;
  readonly model: AnswerModel;
  /** The sweep is of an earlier plan than the one on screen. */
  readonly stale: boolean;
  /** More than one element is fed: the room then speaks of the first. */
  readonly isOneOfSeveral: boolean;
}

/** The driven's feedpoint over the band, from the sweep that is shown. */
export function useBandFeed(): ShownFeed {
  const band = useCalmAnswer((s) => s.band);
  const bandPlan = useCalmAnswer((s) => s.bandPlan);
  const model = useCalmAnswer((s) => s.bandModel);
  const isOld = useCalmAnswer((s) => s.state === "old");
  const planBand = usePlan((s) => s.plan.band);
  const frequency_MHz = usePlan((s) => s.plan.frequency_MHz);
  const elementId = bandPlan ? drivenOf(bandPlan)?.id : undefined;
  const feed = useMemo(
    () => bandFeed(band, elementId, bandSpan(planBand, frequency_MHz), frequency_MHz),
    [band, elementId, planBand, frequency_MHz],
  );
  return { feed, model, stale: isOld, isOneOfSeveral: (band?.feeds.length ?? 0) > 1 };
}
