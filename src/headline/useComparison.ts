import { useMemo } from "react";
import { baselineOf, interestOf } from "../../engine/index.ts";
import { useAnswer } from "../store/useAnswer.ts";
import { usePlan } from "../store/usePlan.ts";
import { groundName } from "../text/groundName.ts";
import { headlineSentence } from "../text/headlineSentence.ts";
import { headlineFigures } from "./headlineFigures.ts";

/**
 * What the headline says about the plan the shown answer belongs to; null until there is an answer. Angles and the
 * baseline are taken from that plan too, so that no label ever sits on another plan's figure.
 */
export function useComparison() {
  const readout = useAnswer((s) => s.readout);
  const shown = useAnswer((s) => s.readoutPlan);
  const pinReadouts = useAnswer((s) => s.pinReadouts);
  const plan = usePlan((s) => s.plan);

  return useMemo(() => {
    if (!readout || !shown) return null;
    const pin = baselineOf(plan);
    const pinned = pin && pinReadouts[pin.id];
    const baseline = pin && pinned ? { name: pin.name, readout: pinned } : null;
    const { rearSector_deg } = interestOf(plan);
    return {
      figures: headlineFigures({ readout, baseline, rearSector_deg, groundName: groundName(shown.ground) }),
      sentence: headlineSentence({
        now: readout.path,
        before: baseline?.readout.path ?? null,
        heading_deg: plan.site?.heading_deg,
      }),
      notes: readout.notes,
      /** The comparison crosses designs that do not share frequency or ground: said beside the figure. */
      mismatch: pin && baseline ? mismatchOf(shown, pin.plan) : null,
    };
  }, [readout, shown, pinReadouts, plan]);
}

function mismatchOf(shown: { frequency_MHz: number; ground: unknown }, pinned: typeof shown): string | null {
  const differences = [
    shown.frequency_MHz !== pinned.frequency_MHz && `at ${pinned.frequency_MHz} MHz`,
    JSON.stringify(shown.ground) !== JSON.stringify(pinned.ground) && "over other ground",
  ].filter(Boolean);
  return differences.length > 0 ? `The design compared with is ${differences.join(" and ")}.` : null;
}
