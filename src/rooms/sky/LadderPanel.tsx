import { useMemo } from "react";
import { baselineOf, interestOf } from "../../../engine/index.ts";
import { Ladder } from "../../charts/Ladder.tsx";
import { rungsFor } from "../../store/readoutRequest.ts";
import { useAnswer } from "../../store/useAnswer.ts";
import { usePlan } from "../../store/usePlan.ts";
import { pathBand } from "./pathBand.ts";
import { useLadderAnswer } from "./useLadderAnswer.ts";

/** The ladder of the live design against the plan's baseline. */
export function LadderPanel() {
  const live = useAnswer((s) => s.readout);
  const pinReadouts = useAnswer((s) => s.pinReadouts);
  const printedLive = useLadderAnswer((s) => s.readout);
  const printedPins = useLadderAnswer((s) => s.pinReadouts);
  const stale = useAnswer((s) => s.state === "old");
  const pin = usePlan((s) => baselineOf(s.plan));
  const { elevation_deg, rearSector_deg } = usePlan((s) => interestOf(s.plan));
  const path = useMemo(() => pathBand(elevation_deg), [elevation_deg]);
  const rungs_deg = useMemo(() => rungsFor(elevation_deg), [elevation_deg]);
  return (
    <Ladder
      live={live}
      baseline={(pin && pinReadouts[pin.id]) ?? null}
      printed={{ live: printedLive, baseline: (pin && printedPins[pin.id]) ?? null }}
      baselineName={pin?.name ?? null}
      path={path}
      rungs_deg={rungs_deg}
      rearSector_deg={rearSector_deg}
      stale={stale}
    />
  );
}
