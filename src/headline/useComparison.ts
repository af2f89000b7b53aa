import { useMemo } from "react";
import { baselineOf, interestOf, type Plan } from "../../engine/index.ts";
import { usePlan } from "../store/usePlan.ts";
import { groundName } from "../text/groundName.ts";
import { headlineSentence } from "../text/headlineSentence.ts";
import { formatQuantity } from "../ui/quantity/formatQuantity.ts";
import { headlineFigures } from "./headlineFigures.ts";
import { useHeadlineAnswer } from "./useHeadlineAnswer.ts";

/**
 * What the headline says about the plan the shown answer belongs to; null until there is an answer. Angles and the
 * baseline are taken from that plan too, so that no label ever sits on another plan's figure.
 */
export function useComparison() {
  const readout = useHeadlineAnswer((s) => s.readout);
  const shown = useHeadlineAnswer((s) => s.readoutPlan);
  const pinReadouts = useHeadlineAnswer((s) => s.pinReadouts);
  const model = useHeadlineAnswer((s) => s.model);
  const isFresh = useHeadlineAnswer((s) => s.state === "fresh");
  const pin = usePlan((s) => baselineOf(s.plan));
  const rearSector_deg = usePlan((s) => interestOf(s.plan).rearSector_deg);
  const heading_deg = usePlan((s) => s.plan.site?.heading_deg);

  return useMemo(() => {
    if (!readout || !shown) return null;
    const pinned = pin && pinReadouts[pin.id];
    const baseline = pin && pinned ? { name: pin.name, readout: pinned, caution: mismatchOf(shown, pin.plan) } : null;
    // A named baseline whose answer is not there although its turn has come: the model cannot take it.
    const withoutBaseline =
      pin && !pinned && isFresh ? `no ${model === "full-wave" ? "full-wave answer" : "preview"} of ${pin.name}` : null;
    return {
      figures: headlineFigures({
        readout,
        baseline,
        withoutBaseline,
        rearSector_deg,
        groundName: groundName(shown.ground),
      }),
      sentence: headlineSentence({
        now: readout.path,
        before: baseline?.readout.path ?? null,
        heading_deg,
      }),
      notes: readout.notes,
    };
  }, [readout, shown, pinReadouts, model, isFresh, pin, rearSector_deg, heading_deg]);
}

/** A comparison across frequencies or grounds is not wrong, but nobody should make it unawares. */
function mismatchOf(shown: Plan, pinned: Plan): string | null {
  const differences = [
    shown.frequency_MHz !== pinned.frequency_MHz &&
      `at ${formatQuantity(pinned.frequency_MHz, "frequency_MHz", "metric")}`,
    JSON.stringify(shown.ground) !== JSON.stringify(pinned.ground) && "on other ground",
  ].filter(Boolean);
  return differences.length > 0 ? differences.join(", ") : null;
}
