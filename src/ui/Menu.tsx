import { type KeyboardEvent, type ReactNode, useEffect, useId, useRef, useState } from "react";
import { fitPanel } from "./fitPanel.ts";

export interface MenuItem {
  readonly label: string;
  readonly icon?: ReactNode;
  /** Shown at the right, e.g. "Ctrl S"; the page catches the keys elsewhere. */
  readonly keys?: string;
  readonly isDisabled?: boolean;
  /** Draws a rule above this item. */
  readonly startsGroup?: boolean;
  onChoose(): void;
}

interface Props {
  readonly label: ReactNode;
  readonly title: string;
  readonly buttonClass?: string;
  readonly end?: boolean;
  /** Called when the menu is drawn, so that what it offers is what can be done now. */
  items(): readonly MenuItem[];
}

/** A menu button as the ARIA practices describe it: arrows, Home, End, first letters, Escape, Tab leaves. */
export function Menu({ label, title, buttonClass = "button", end, items: itemsNow }: Props) {
  const [isOpen, setOpen] = useState(false);
  const [at, setAt] = useState(0);
  const root = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const id = useId();
  const items = isOpen ? itemsNow() : [];

  useEffect(() => {
    if (!isOpen || !list.current) return;
    fitPanel(list.current);
    const outside = (event: Event) => {
      if (!root.current?.contains(event.target as Node)) setOpen(false);
    };
    document.addEventListener("pointerdown", outside);
    return () => document.removeEventListener("pointerdown", outside);
  }, [isOpen]);

  useEffect(() => {
    if (isOpen) list.current?.querySelectorAll<HTMLElement>("[role=menuitem]")[at]?.focus({ preventScroll: true });
  }, [isOpen, at]);

  const show = (index: number) => {
    setAt(index);
    setOpen(true);
  };
  const close = () => {
    setOpen(false);
    button.current?.focus();
  };
  const choose = (item: MenuItem) => {
    if (item.isDisabled) return;
    close();
    item.onChoose();
  };

  const onMenuKey = (event: KeyboardEvent) => {
    const last = items.length - 1;
    const moves: Record<string, number> = {
      ArrowDown: at === last ? 0 : at + 1,
      ArrowUp: at === 0 ? last : at - 1,
      Home: 0,
      End: last,
    };
    const target = moves[event.key];
    if (target !== undefined || event.key === "Escape") {
      event.preventDefault();
      event.stopPropagation();
      if (target === undefined) close();
      else setAt(target);
    } else if (event.key === "Tab") setOpen(false);
    else if (event.key.length === 1 && !event.ctrlKey && !event.metaKey && !event.altKey) {
      const letter = event.key.toLowerCase();
      const order = [...items.keys()].map((i) => (at + 1 + i) % items.length);
      const found = order.find((i) => items[i]!.label.toLowerCase().startsWith(letter));
      if (found !== undefined) setAt(found);
    }
  };

  const onButtonKey = (event: KeyboardEvent) => {
    if (event.key !== "ArrowDown" && event.key !== "ArrowUp") return;
    event.preventDefault();
    show(event.key === "ArrowDown" ? 0 : itemsNow().length - 1);
  };

  return (
    <div className="popover" ref={root}>
      <button
        type="button"
        className={buttonClass}
        ref={button}
        aria-haspopup="menu"
        aria-expanded={isOpen}
        aria-controls={isOpen ? id : undefined}
        onClick={() => (isOpen ? setOpen(false) : show(0))}
        onKeyDown={onButtonKey}
      >
        {label}
      </button>
      {isOpen && (
        <div
          className={end ? "popover__panel popover__panel--end menu" : "popover__panel menu"}
          id={id}
          ref={list}
          role="menu"
          aria-label={title}
          tabIndex={-1}
          onKeyDown={onMenuKey}
        >
          {items.map((item, i) => (
            <div key={item.label} role="none">
              {item.startsGroup && <div className="menu__rule" />}
              <button
                type="button"
                role="menuitem"
                className="menu__item"
                tabIndex={i === at ? 0 : -1}
                aria-disabled={item.isDisabled || undefined}
                onClick={() => choose(item)}
              >
                {item.icon}
                <span>{item.label}</span>
                {item.keys && <span className="menu__keys">{item.keys}</span>}
              </button>
            </div>
          ))}
        </div>
      )}
    </div>
  );
}
