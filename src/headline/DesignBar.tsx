import { limits, loneVertical, reflectorOf } from "../../engine/index.ts";
import { usePlan } from "../store/usePlan.ts";
import { useSettings } from "../store/useSettings.ts";
import { Button } from "../ui/Button.tsx";
import { Icon } from "../ui/Icon.tsx";
import { say } from "../ui/say.ts";
import { PinChip } from "./PinChip.tsx";
import { pinDesign } from "./pinDesign.ts";
import { pinnedAs } from "./pinnedAs.ts";
import { toggleReflector } from "./toggleReflector.ts";

/** One row of what can be done with the design as a whole: reflector in or out, and pins. */
export function DesignBar() {
  const plan = usePlan((s) => s.plan);
  const edit = usePlan((s) => s.edit);
  const units = useSettings((s) => s.units);
  const hasReflector = reflectorOf(plan) !== undefined;
  const pins = plan.pins ?? [];
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
}
