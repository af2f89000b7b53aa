import { interestOf, limits, type PlanInterest, type SavedPlan } from "../../engine/index.ts";
import { usePlan } from "../store/usePlan.ts";
import { Icon } from "../ui/Icon.tsx";
import { Popover } from "../ui/Popover.tsx";
import { QuantityField } from "../ui/QuantityField.tsx";
import { formatQuantity } from "../ui/quantity/formatQuantity.ts";

/** The directions every figure is read in: the elevation that carries the path, and the sector that should be quiet. */
export function PathPicker() {
  const elevation_deg = usePlan((s) => interestOf(s.plan).elevation_deg);
  return (
    <Popover
      title="What matters to you"
      buttonClass="button button--quiet topbar__fact"
      label={
        <>
          <span className="topbar__what">path at</span>
          <b>{formatQuantity(elevation_deg, "angle_deg", "metric")}</b>
          <Icon name="down" />
        </>
      }
    >
      {() => <PathPanel />}
    </Popover>
  );
}

function PathPanel() {
  const interest = usePlan((s) => interestOf(s.plan));
  const edit = usePlan((s) => s.edit);
  return (
    <div className="picker">
      <div className="picker__pair">
        <QuantityField
          label="Elevation of my path"
          kind="angle_deg"
          value={interest.elevation_deg}
          least={limits.elevation_deg.least}
          most={limits.elevation_deg.most}
          onCommit={(elevation_deg, stepped) =>
            edit((plan) => withPath(plan, elevation_deg), "change the path’s elevation", stepped ? "path" : undefined)
          }
        />
        <QuantityField
          label="Quiet sector, width"
          kind="angle_deg"
          value={interest.rearSector_deg}
          least={limits.sector_deg.least}
          most={limits.sector_deg.most}
          onCommit={(rearSector_deg, stepped) =>
            edit(
              (plan) => withInterest(plan, { rearSector_deg }),
              "change the quiet sector",
              stepped ? "sector" : undefined,
            )
          }
        />
      </div>
      <p className="soft">
        By geometry alone, one hop from a layer 300 km up arrives at 30° from about 930 km away, at 10° from 2200 km, at
        5° from 2900 km; longer paths arrive lower or in more hops. There is always a spread of angles. The quiet sector
        lies symmetrically about straight back.
      </p>
    </div>
  );
}

function withInterest(plan: SavedPlan, part: Partial<PlanInterest>): SavedPlan {
  return { ...plan, interest: { ...interestOf(plan), ...part } };
}

/** The azimuth cut goes along when it was taken at the path's elevation. */
function withPath(plan: SavedPlan, elevation_deg: number): SavedPlan {
  const before = interestOf(plan);
  const isJoined = before.azimuthCutElevation_deg === before.elevation_deg;
  return withInterest(plan, { elevation_deg, ...(isJoined ? { azimuthCutElevation_deg: elevation_deg } : {}) });
}
