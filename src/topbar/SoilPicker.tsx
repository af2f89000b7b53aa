import { useState } from "react";
import { type Ground, limits, type SavedPlan, type SoilClass, soilOf, soils, withGround } from "../../engine/index.ts";
import { usePlan } from "../store/usePlan.ts";
import { Icon } from "../ui/Icon.tsx";
import { Popover } from "../ui/Popover.tsx";
import { QuantityField } from "../ui/QuantityField.tsx";
import { formatQuantity } from "../ui/quantity/formatQuantity.ts";

/** The ground under and before the array: a class with its two constants, or the person's own figures. */
export function SoilPicker() {
  const ground = usePlan((s) => s.plan.ground);
  const { what, figures } = inShort(ground);
  return (
    <Popover
      title="Ground"
      buttonClass="button button--quiet topbar__fact"
      label={
        <>
          <span className="topbar__what">{what}</span>
          <b>{figures}</b>
          <Icon name="down" />
        </>
      }
    >
      {() => <SoilPanel ground={ground} />}
    </Popover>
  );
}

function SoilPanel({ ground }: { readonly ground: Ground }) {
  const edit = usePlan((s) => s.edit);
  const pins = usePlan((s) => s.plan.pins?.length ?? 0);
  const [withPins, setWithPins] = useState(true);
  const soil = soilOf(ground);
  const set = (next: Ground, mergeKey?: string) =>
    edit((plan) => onGround(plan, next, withPins), "change the ground", mergeKey);

  return (
    <div className="picker">
      <label className="field">
        <span className="field__label">Kind of ground</span>
        <select
          className="field__select"
          data-first
          value={soil?.id ?? ground.kind}
          onChange={(event) => {
            const id = event.currentTarget.value;
            const found = soils.find((one) => one.id === id);
            if (found) set(groundOf(found));
            else if (id === "perfect") set({ kind: "perfect" });
          }}
        >
          {ground.kind === "soil" && !soil && <option value="soil">my own figures</option>}
          {soils.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name}
            </option>
          ))}
          <option value="perfect">Perfect ground (for lessons)</option>
          {ground.kind === "free-space" && <option value="free-space">No ground at all</option>}
        </select>
      </label>
      {ground.kind === "soil" && (
        <div className="picker__pair">
          <QuantityField
            label="Relative permittivity"
            kind="ratio"
            value={ground.relativePermittivity}
            least={limits.soilPermittivity.least}
            most={limits.soilPermittivity.most}
            onCommit={(value, stepped) =>
              set({ ...ground, relativePermittivity: value }, stepped ? "permittivity" : undefined)
            }
          />
          <QuantityField
            label="Conductivity"
            kind="conductivity_SPerM"
            value={ground.conductivity_SPerM}
            least={limits.soilConductivity_SPerM.least}
            most={limits.soilConductivity_SPerM.most}
            onCommit={(value, stepped) =>
              set({ ...ground, conductivity_SPerM: value }, stepped ? "conductivity" : undefined)
            }
          />
        </div>
      )}
      {pins > 0 && (
        <label className="check">
          <input type="checkbox" checked={withPins} onChange={(event) => setWithPins(event.currentTarget.checked)} />
          <span>Pinned designs stand on the same ground</span>
        </label>
      )}
      {ground.kind === "soil" && (
        <p className="soft">
          {soil
            ? `Figures: ${soil.source}${soil.provenance === "memory" ? "" : ", as read there"}.`
            : "Your own figures."}{" "}
          Real soil changes with rain and frost and is seldom known within a factor of two: try the classes on either
          side.
        </p>
      )}
    </div>
  );
}

function groundOf({ relativePermittivity, conductivity_SPerM }: SoilClass): Ground {
  return { kind: "soil", relativePermittivity, conductivity_SPerM };
}

/** The soil is a fact of the place, not of a design: unless told otherwise, the pinned designs move onto it too. */
function onGround(plan: SavedPlan, ground: Ground, withPins: boolean): SavedPlan {
  const moved = withGround(plan, ground);
  if (!withPins || !plan.pins) return moved;
  return { ...moved, pins: plan.pins.map((pin) => ({ ...pin, plan: withGround(pin.plan, ground) })) };
}

function inShort(ground: Ground): { what: string; figures: string } {
  if (ground.kind === "perfect") return { what: "ground", figures: "perfect" };
  if (ground.kind === "free-space") return { what: "ground", figures: "none" };
  const name = soilOf(ground)?.name.split(":")[0]?.toLowerCase() ?? "own soil";
  const permittivity = formatQuantity(ground.relativePermittivity, "ratio", "metric");
  return {
    what: name,
    figures: `${permittivity}, ${formatQuantity(ground.conductivity_SPerM, "conductivity_SPerM", "metric")}`,
  };
}
