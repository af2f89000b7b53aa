import { type ReactNode, useEffect, useId, useRef } from "react";
import { Button } from "./Button.tsx";
import { Icon } from "./Icon.tsx";
import { Switch } from "./Switch.tsx";
import "./sideRoom.css";

interface Props<Part extends string> {
  readonly name: string;
  /** What its style calls it. */
  readonly place: string;
  readonly parts: readonly { readonly value: Part; readonly label: string }[];
  readonly part: Part;
  onPart(part: Part): void;
  onClose(): void;
  /** How many workers it keeps busy, for who watches from outside. */
  readonly busy?: number;
  readonly children: ReactNode;
}

/** A room that is opened beside the Yard, in parts of which one stands open; it takes the focus, and Escape closes it. */
export function SideRoom<Part extends string>(p: Props<Part>) {
  const room = useRef<HTMLElement>(null);
  const id = useId();
  useEffect(() => {
    room.current?.focus({ preventScroll: true });
    room.current?.scrollIntoView?.({ block: "start" });
  }, []);
  return (
    <section
      className={`sheet room room--side room--${p.place}`}
      aria-labelledby={id}
      ref={room}
      tabIndex={-1}
      data-busy={p.busy}
      onKeyDown={(event) => event.key === "Escape" && !event.defaultPrevented && p.onClose()}
    >
      <header className="side-head">
        <h2 className="room__name" id={id}>
          {p.name}
        </h2>
        <Switch<Part>
          label="Part of this room"
          isLabelShown={false}
          choices={p.parts}
          value={p.part}
          onChange={p.onPart}
        />
        <Button look="quiet" icon={<Icon name="cross" />} onClick={p.onClose}>
          Close
        </Button>
      </header>
      {p.children}
    </section>
  );
}
