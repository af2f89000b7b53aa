import { useMemo } from "react";
import { baselineOf, interestOf } from "../../../engine/index.ts";
import { Ladder } from "../../charts/Ladder.tsx";
import { rungsFor } from "../../store/readoutRequest.ts";
import { usePlan } from "../../store/usePlan.ts";
import { pathBand } from "./pathBand.ts";
import { useLadderAnswer } from "./useLadderAnswer.ts";

/** The ladder of the live design against the plan's baseline: figures, and marks that follow together with them. */
export function LadderPanel() {
  const live = useLadderAnswer((s) => s.readout);
  const pinReadouts = useLadderAnswer((s) => s.pinReadouts);
  const stale = useLadderAnswer((s) => s.state === "old");
  const pin = usePlan((s) => baselineOf(s.plan));
  const { elevation_deg, rearSector_deg } = usePlan((s) => interestOf(s.plan));
  const path = useMemo(() => pathBand(elevation_deg), [elevation_deg]);
  const rungs_deg = useMemo(() => rungsFor(elevation_deg), [elevation_deg]);
  return (
    <Ladder
      live={live}
      baseline={(pin && pinReadouts[pin.id]) ?? null}
      baselineName={pin?.name ?? null}
      path={path}
      rungs_deg={rungs_deg}
      rearSector_deg={rearSector_deg}
      stale={stale}
    />
  );
}
