import { memo } from "react";
import { limits, loneVertical, reflectorOf } from "../../engine/index.ts";
import { planStore, usePlan } from "../store/usePlan.ts";
import { useSettings } from "../store/useSettings.ts";
import { Button } from "../ui/Button.tsx";
import { Icon } from "../ui/Icon.tsx";
import { say } from "../ui/say.ts";
import { PinChip } from "./PinChip.tsx";
import { pinDesign } from "./pinDesign.ts";
import { pinnedAs } from "./pinnedAs.ts";
import { toggleReflector } from "./toggleReflector.ts";

/** One row of what can be done with the design as a whole: reflector in or out, and pins. */
export const DesignBar = memo(function DesignBar() {
  const edit = usePlan((s) => s.edit);
  const units = useSettings((s) => s.units);
  const hasReflector = usePlan((s) => reflectorOf(s.plan) !== undefined);
  const pins = usePlan((s) => s.plan.pins) ?? [];
  const isFull = pins.length >= limits.pins;

  return (
    <div className="design-bar">
      <Button
        look={hasReflector ? "plain" : "hot"}
        icon={<Icon name={hasReflector ? "minus" : "plus"} />}
        onClick={() => edit(toggleReflector, hasReflector ? "take the reflector out" : "add a reflector")}
      >
        {hasReflector ? "Take reflector out" : "Add reflector"}
      </Button>
      <Button
        icon={<Icon name="pin" />}
        disabled={isFull}
        title={isFull ? `${limits.pins} designs are pinned, the most there is room for: remove one first` : undefined}
        onClick={() => {
          const { plan } = planStore.getState();
          const held = pinnedAs(plan, plan);
          if (held) say(`This design is pinned already, as “${held.name}”.`);
          else edit((p) => pinDesign(p, units), "pin this design");
        }}
      >
        Pin this design
      </Button>
      {pins.length > 0 ? (
        <ul className="pins" aria-label="Pinned designs">
          {pins.map((pin, i) => (
            <li key={pin.id}>
              <PinChip pin={pin} style={i} />
            </li>
          ))}
        </ul>
      ) : (
        <Button look="quiet" onClick={() => edit((p) => pinDesign(p, units, loneVertical(p)), "pin one vertical")}>
          Compare with one vertical
        </Button>
      )}
    </div>
  );
});
