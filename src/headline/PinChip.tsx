import { useState } from "react";
import { type PinnedPlan, withBaseline, withoutPin } from "../../engine/index.ts";
import { traceClass } from "../charts/traceClass.ts";
import { usePlan } from "../store/usePlan.ts";
import { Button } from "../ui/Button.tsx";
import { Popover } from "../ui/Popover.tsx";

interface Props {
  readonly pin: PinnedPlan;
  /** Which dash it has in the charts. */
  readonly style: number;
}

/** One pinned design: its line as the charts draw it, its name, and behind a press what can be done with it. */
export function PinChip({ pin, style }: Props) {
  const isBaseline = usePlan((s) => s.plan.baseline === pin.id);
  const edit = usePlan((s) => s.edit);

  return (
    <Popover
      buttonClass="button pin-chip"
      title={`Pinned: ${pin.name}`}
      isTitleShown={false}
      label={
        <>
          <svg className="pin-chip__line" viewBox="0 0 34 8" aria-hidden="true">
            <path className={traceClass({ role: "pin", style })} d="M1 4h32" />
          </svg>
          <span className="pin-chip__name">{pin.name}</span>
          {isBaseline && <span className="pin-chip__tag">baseline</span>}
        </>
      }
    >
      {(close) => (
        <>
          <PinName pin={pin} />
          <Button
            onClick={() =>
              edit(
                (p) => withBaseline(p, isBaseline ? null : pin.id),
                isBaseline ? "drop the baseline" : `compare with ${pin.name}`,
              )
            }
          >
            {isBaseline ? "Stop comparing with this" : "Compare everything with this"}
          </Button>
          <Button
            onClick={() => {
              close();
              edit((p) => ({ ...p, ...pin.plan, title: p.title }), `take up ${pin.name}`);
            }}
          >
            Work on this design
          </Button>
          <Button
            onClick={() => {
              close();
              edit((p) => withoutPin(p, pin.id), `remove the pin ${pin.name}`);
            }}
          >
            Remove
          </Button>
        </>
      )}
    </Popover>
  );
}

function PinName({ pin }: { readonly pin: PinnedPlan }) {
  const edit = usePlan((s) => s.edit);
  const sealEdit = usePlan((s) => s.sealEdit);
  // An empty name is a step on the way to another one, not a name: it stays in the field only.
  const [typed, setTyped] = useState<string | null>(null);

  const rename = (name: string) => {
    setTyped(name);
    if (name.trim() === "") return;
    edit(
      (p) => ({ ...p, pins: (p.pins ?? []).map((one) => (one.id === pin.id ? { ...one, name } : one)) }),
      "rename a pin",
      `pin-name ${pin.id}`,
    );
  };

  return (
    <label className="field">
      <span className="field__label">Name of this pinned design</span>
      <input
        className="field__input"
        type="text"
        maxLength={60}
        value={typed ?? pin.name}
        onChange={(event) => rename(event.currentTarget.value)}
        onBlur={() => {
          setTyped(null);
          sealEdit();
        }}
      />
    </label>
  );
}
