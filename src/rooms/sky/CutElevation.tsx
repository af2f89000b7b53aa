import { memo, useId } from "react";
import type { SavedPlan } from "../../../engine/index.ts";
import { interestOf } from "../../../engine/index.ts";
import { standingRungs_deg } from "../../store/readoutRequest.ts";
import { usePlan } from "../../store/usePlan.ts";

/** At which elevation the azimuth cut is taken: a slider by degrees, and steps at the ladder's rungs. */
export const CutElevation = memo(function CutElevation() {
  const id = useId();
  const now = usePlan((s) => interestOf(s.plan).azimuthCutElevation_deg);
  const path = usePlan((s) => interestOf(s.plan).elevation_deg);
  const edit = usePlan((s) => s.edit);
  const sealEdit = usePlan((s) => s.sealEdit);
  const set = (elevation_deg: number) =>
    edit((plan) => cutAt(plan, elevation_deg), "move the azimuth cut", "azimuth cut elevation");
  const steps = standingRungs_deg.includes(path) ? standingRungs_deg : [...standingRungs_deg, path];

  return (
    <div className="sky-elevation">
      <label htmlFor={id}>azimuth cut at</label>
      <input
        id={id}
        type="range"
        min={1}
        max={89}
        step={1}
        value={now}
        aria-valuetext={`${now} degrees elevation`}
        onChange={(e) => set(e.currentTarget.valueAsNumber)}
        onPointerUp={sealEdit}
        onBlur={sealEdit}
      />
      <div className="sky-steps">
        {steps
          .toSorted((a, b) => a - b)
          .map((e) => (
            <button
              key={e}
              type="button"
              className={e === path ? "sky-step sky-step-path" : "sky-step"}
              aria-pressed={e === now}
              aria-label={e === path ? `${e} degrees, the path's elevation` : `${e} degrees`}
              onClick={() => {
                set(e);
                sealEdit();
              }}
            >
              {e}°
            </button>
          ))}
      </div>
    </div>
  );
});

function cutAt(plan: SavedPlan, azimuthCutElevation_deg: number): SavedPlan {
  const interest = interestOf(plan);
  if (interest.azimuthCutElevation_deg === azimuthCutElevation_deg) return plan;
  return { ...plan, interest: { ...interest, azimuthCutElevation_deg } };
}
