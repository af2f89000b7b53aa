import { type KeyboardEvent, type ReactNode, useEffect, useId, useRef, useState } from "react";
import { fitPanel } from "./fitPanel.ts";

interface Props {
  /** What the button says; also the panel's name unless `title` is given. */
  readonly label: ReactNode;
  readonly title: string;
  /** A title for the eye at the top of the panel; a panel that explains itself needs none. */
  readonly isTitleShown?: boolean;
  readonly buttonClass?: string;
  readonly buttonTitle?: string;
  readonly end?: boolean;
  /** Given a function that closes the panel and returns the focus to the button. */
  readonly children: (close: () => void) => ReactNode;
}

/**
 * A button that opens a panel below itself. Escape, the button, or a press anywhere else closes it; the focus goes
 * into the panel and, after Escape, back to the button.
 */
export function Popover({
  label,
  title,
  isTitleShown = true,
  buttonClass = "button",
  buttonTitle,
  end,
  children,
}: Props) {
  const [isOpen, setOpen] = useState(false);
  const root = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const panel = useRef<HTMLDivElement>(null);
  const id = useId();

  useEffect(() => {
    if (!isOpen) return;
    const box = panel.current;
    if (box) {
      fitPanel(box);
      (box.querySelector<HTMLElement>("[data-first], input, button, select, textarea, a, [tabindex]") ?? box).focus({
        preventScroll: true,
      });
    }
    const outside = (event: Event) => {
      if (!root.current?.contains(event.target as Node)) setOpen(false);
    };
    document.addEventListener("pointerdown", outside);
    document.addEventListener("focusin", outside);
    return () => {
      document.removeEventListener("pointerdown", outside);
      document.removeEventListener("focusin", outside);
    };
  }, [isOpen]);

  const close = () => {
    setOpen(false);
    button.current?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Escape" || !isOpen) return;
    event.stopPropagation();
    close();
  };

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: only Escape is caught here, on its way up from the controls
    <div className="popover" ref={root} onKeyDown={onKeyDown}>
      <button
        type="button"
        className={buttonClass}
        ref={button}
        title={buttonTitle}
        aria-expanded={isOpen}
        aria-controls={isOpen ? id : undefined}
        onClick={() => setOpen(!isOpen)}
      >
        {label}
      </button>
      {isOpen && (
        // biome-ignore lint/a11y/useSemanticElements: a fieldset would claim to be part of a form
        <div
          className={end ? "popover__panel popover__panel--end" : "popover__panel"}
          id={id}
          ref={panel}
          role="group"
          aria-label={title}
          tabIndex={-1}
        >
          {isTitleShown && <h2 className="popover__title">{title}</h2>}
          {children(close)}
        </div>
      )}
    </div>
  );
}
