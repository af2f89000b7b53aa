import { useCallback, useMemo, useState } from "react";
import { interestOf } from "../../../engine/index.ts";
import { AzimuthCut } from "../../charts/AzimuthCut.tsx";
import { ElevationCut } from "../../charts/ElevationCut.tsx";
import type { CutForm } from "../../charts/elevationLayout.ts";
import { useAnswer } from "../../store/useAnswer.ts";
import { useCalmAnswer } from "../../store/useCalmAnswer.ts";
import { usePlan } from "../../store/usePlan.ts";
import { headingOf } from "../yard/heading.ts";
import { BesideBeam } from "./BesideBeam.tsx";
import { CutElevation } from "./CutElevation.tsx";
import { mastsOf } from "./mastsOf.ts";
import { pathBand } from "./pathBand.ts";
import { type CutAngles, SkyTools } from "./SkyTools.tsx";
import { skyScale } from "./skyScale.ts";
import { useTraces } from "./useTraces.ts";
import "./Sky.css";

/** Where the signal goes: up and down through the beam, round the compass at one elevation, and the figures beside. */
export function Sky() {
  const traces = useTraces(useAnswer);
  const printed = useTraces(useCalmAnswer);
  const shown = useAnswer((s) => s.readoutPlan);
  const stale = useAnswer((s) => s.state === "old");
  const { elevation_deg, azimuthCutElevation_deg, rearSector_deg } = usePlan((s) => interestOf(s.plan));
  const heading_deg = usePlan((s) => headingOf(s.plan));
  // The plan on screen stands in until there is an answer to draw.
  const waiting = usePlan((s) => (shown ? null : s.plan));
  const drawn = shown ?? waiting!;

  const [form, setForm] = useState<CutForm>("polar");
  const [angles, setAngles] = useState<CutAngles>("true");
  const [held_dBi, setHeld] = useState<number | null>(null);
  // Markers stay where they were put; until then they stand on the path and on the beam.
  const [elevationMark, setElevationMark] = useState<number | null>(null);
  const [bearingMark, setBearingMark] = useState<number | null>(null);

  const scale = useMemo(() => skyScale(traces, held_dBi), [traces, held_dBi]);
  const path = useMemo(() => pathBand(elevation_deg), [elevation_deg]);
  const masts = useMemo(() => mastsOf(drawn), [drawn]);
  const { outer_dBi } = scale;
  const hold = useCallback((isHeld: boolean) => setHeld(isHeld ? outer_dBi : null), [outer_dBi]);

  return (
    <div className="sky">
      <SkyTools
        form={form}
        onForm={setForm}
        angles={angles}
        onAngles={setAngles}
        isHeld={held_dBi !== null}
        onHold={hold}
        isOutgrown={scale.isOutgrown}
      />
      <ElevationCut
        traces={traces}
        printed={printed}
        masts={masts}
        heading_deg={heading_deg}
        path={path}
        form={form}
        stretched={angles === "stretched"}
        outer_dBi={outer_dBi}
        marker_deg={elevationMark ?? elevation_deg}
        stale={stale}
        onMarker={setElevationMark}
      />
      <CutElevation />
      <div className="sky-lower">
        <AzimuthCut
          traces={traces}
          printed={printed}
          heading_deg={heading_deg}
          elevation_deg={azimuthCutElevation_deg}
          rearSector_deg={rearSector_deg}
          form={form}
          outer_dBi={outer_dBi}
          marker_deg={bearingMark ?? Math.round(heading_deg) % 360}
          stale={stale}
          onMarker={setBearingMark}
        />
        <BesideBeam />
      </div>
    </div>
  );
}
