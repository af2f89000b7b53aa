import { memo } from "react";
import { interestOf } from "../../../engine/index.ts";
import { acrossBandWords } from "../../charts/acrossBandWords.ts";
import { bandSpan } from "../../store/bandSpan.ts";
import { useCalmAnswer } from "../../store/useCalmAnswer.ts";
import { usePlan } from "../../store/usePlan.ts";
import { othersOf } from "./othersOf.ts";
import { SideReadouts } from "./SideReadouts.tsx";

/** The side readouts of the live design. */
export const BesideBeam = memo(function BesideBeam() {
  const readout = useCalmAnswer((s) => s.readout);
  const shown = useCalmAnswer((s) => s.readoutPlan);
  const stale = useCalmAnswer((s) => s.state === "old");
  const elevation_deg = usePlan((s) => interestOf(s.plan).azimuthCutElevation_deg);
  // The plan on screen stands in until there is an answer.
  const waiting = usePlan((s) => (shown ? null : s.plan));
  const band = useCalmAnswer((s) => s.band);
  const bandPlan = useCalmAnswer((s) => s.bandPlan);
  const edges = usePlan((s) => s.plan.band);
  const frequency_MHz = usePlan((s) => s.plan.frequency_MHz);
  const { from_MHz, to_MHz } = bandSpan(edges, frequency_MHz);
  return (
    <SideReadouts
      readout={readout}
      elevation_deg={elevation_deg}
      stale={stale}
      others={othersOf(shown ?? waiting!)}
      across={band && bandPlan === shown ? acrossBandWords(band, from_MHz, to_MHz) : null}
    />
  );
});
