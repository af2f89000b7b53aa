import { useEffect, useState } from "react";
import { limits, reflectorOf } from "../../../engine/index.ts";
import type { TrialKind } from "../../store/trials/TrialRun.ts";
import { arrivalOf } from "../../store/trials/trialRequests.ts";
import { trialStages } from "../../store/trials/trialStages.ts";
import { trialChoicesStore, useTrialChoices } from "../../store/trials/useTrialChoices.ts";
import { trials, useTrials } from "../../store/trials/useTrials.ts";
import { planStore, usePlan } from "../../store/usePlan.ts";
import { Button } from "../../ui/Button.tsx";
import { SideRoom } from "../../ui/SideRoom.tsx";
import { BandSection } from "./band/BandSection.tsx";
import { BestSection } from "./best/BestSection.tsx";
import { ChoiceField } from "./ChoiceField.tsx";
import { MapSection } from "./map/MapSection.tsx";
import { PaceSection } from "./pace/PaceSection.tsx";
import { RadialsSection } from "./radials/RadialsSection.tsx";
import { ToleranceSection } from "./tolerance/ToleranceSection.tsx";
import "../feed/FeedRoom.css";
import "./TrialsRoom.css";

const parts: readonly { readonly value: TrialKind; readonly label: string }[] = [
  { value: "pace", label: "Walk" },
  { value: "map", label: "Map" },
  { value: "best", label: "Find best" },
  { value: "radials", label: "Radial wire" },
  { value: "band", label: "Band" },
  { value: "tolerance", label: "Tolerance" },
];
const sections = {
  pace: PaceSection,
  map: MapSection,
  best: BestSection,
  radials: RadialsSection,
  band: BandSection,
  tolerance: ToleranceSection,
} as const;

/** The part that stood open last: the room comes back as it was left. */
let lastPart: TrialKind = "pace";

/** Where many designs are tried at once: walks, maps, a search, wire, the band, errors in building. */
export function TrialsRoom({ onClose }: { onClose(): void }) {
  const [part, setPart] = useState(lastPart);
  const busy = useTrials((s) => s.busy);
  const going = useTrials((s) => s.going);
  const obstacle = useObstacle(part);
  const Section = sections[part];
  useEffect(() => {
    const { plan } = planStore.getState();
    trials.expect(trialStages("map", plan, trialChoicesStore.getState()));
  }, []);

  return (
    <SideRoom<TrialKind>
      name="Trials"
      place="trials"
      parts={parts}
      part={part}
      onPart={(value) => {
        lastPart = value;
        setPart(value);
      }}
      onClose={onClose}
      busy={busy}
    >
      {going && going !== part && (
        <p className="fr-note">
          {`“${parts.find((one) => one.value === going)?.label}” is still being worked out; starting another here stops it, and it can go on later.`}
        </p>
      )}
      <Section obstacle={obstacle} />
      <Arrival />
    </SideRoom>
  );
}

/** What keeps a part from being started with the plan as it is. */
function useObstacle(part: TrialKind): string | null {
  return usePlan(({ plan, verdict }) => {
    if (!verdict.ok) return "First put right what is listed at the top of the page.";
    if ((part === "pace" || part === "map" || part === "best") && !reflectorOf(plan))
      return "This plan has no reflector; add one in the Yard.";
    if (part === "radials" && plan.ground.kind !== "soil")
      return "Without soil there is nothing that radials could save.";
    return null;
  });
}

/** The angles that the gain over the path is averaged over. */
function Arrival() {
  const arrival = useTrialChoices((s) => s.arrival);
  const from_deg = usePlan((s) => arrivalOf(s.plan, { arrival }).from_deg);
  const to_deg = usePlan((s) => arrivalOf(s.plan, { arrival }).to_deg);
  const set = (next: { readonly from_deg: number; readonly to_deg: number }) =>
    trialChoicesStore.setState({ arrival: next });
  return (
    <details className="fr-small fr-fold">
      <summary>{`Gain over the arrival angles: averaged from ${from_deg}° to ${to_deg}°`}</summary>
      <div className="tl-fields">
        <ChoiceField
          label="arrives from"
          kind="angle_deg"
          value={from_deg}
          least={limits.elevation_deg.least}
          most={to_deg - 0.5}
          hint={arrival ? "" : "some degrees below the path’s"}
          onChange={(value) => set({ from_deg: value, to_deg })}
        />
        <ChoiceField
          label="to"
          kind="angle_deg"
          value={to_deg}
          least={from_deg + 0.5}
          most={limits.elevation_deg.most}
          hint={arrival ? "" : "some degrees above it"}
          onChange={(value) => set({ from_deg, to_deg: value })}
        />
        {arrival && (
          <Button onClick={() => trialChoicesStore.setState({ arrival: null })}>
            About the path’s elevation again
          </Button>
        )}
      </div>
    </details>
  );
}
