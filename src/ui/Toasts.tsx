import { useEffect, useState } from "react";
import { useStore } from "zustand";
import { Button } from "./Button.tsx";
import { Icon } from "./Icon.tsx";
import { dismissToast, type Toast, toastStore } from "./say.ts";

const passing_ms = 8000;

/** Passing messages at the foot of the window; they wait while the pointer or the focus is on them. */
export function Toasts() {
  const list = useStore(toastStore, (state) => state.list);
  return (
    <>
      <div className="toasts" role="status">
        {list.filter((toast) => !toast.isTrouble).map(one)}
      </div>
      <div className="toasts" role="alert">
        {list.filter((toast) => toast.isTrouble).map(one)}
      </div>
    </>
  );
}

const one = (toast: Toast) => <OneToast key={toast.id} toast={toast} />;

function OneToast({ toast }: { readonly toast: Toast }) {
  const [isHeld, setHeld] = useState(false);
  const { id, text, action, isTrouble } = toast;

  useEffect(() => {
    if (isHeld || isTrouble) return;
    const timer = setTimeout(() => dismissToast(id), passing_ms);
    return () => clearTimeout(timer);
  }, [id, isHeld, isTrouble]);

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: only holds the message while someone is on it
    <div
      className="toast"
      onPointerEnter={() => setHeld(true)}
      onPointerLeave={() => setHeld(false)}
      onFocus={() => setHeld(true)}
      onBlur={() => setHeld(false)}
    >
      {isTrouble && <Icon name="warn" />}
      <p className="toast__text">{text}</p>
      {action && (
        <Button
          onClick={() => {
            dismissToast(id);
            action.run();
          }}
        >
          {action.label}
        </Button>
      )}
      <Button
        look="quiet"
        isIconOnly
        aria-label="Dismiss"
        icon={<Icon name="cross" />}
        onClick={() => dismissToast(id)}
      />
    </div>
  );
}
