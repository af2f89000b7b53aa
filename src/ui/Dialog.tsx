import { type ReactNode, useEffect, useId, useRef } from "react";
import { Button } from "./Button.tsx";

interface Props {
  readonly title: string;
  readonly children: ReactNode;
  /** Buttons before "Close". */
  readonly actions?: ReactNode;
  onClose(): void;
}

/** A modal dialog: the browser keeps the focus inside, Escape closes, and the focus returns to where it was. */
export function Dialog({ title, children, actions, onClose }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();

  useEffect(() => {
    const box = dialog.current;
    if (box && !box.open) box.showModal();
  }, []);

  return (
    <dialog className="dialog" ref={dialog} aria-labelledby={id} onClose={onClose}>
      <h2 className="dialog__title" id={id}>
        {title}
      </h2>
      {children}
      <div className="dialog__foot">
        {actions}
        <Button onClick={() => dialog.current?.close()}>Close</Button>
      </div>
    </dialog>
  );
}
