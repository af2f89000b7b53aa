import { useEffect } from "react";
import { planStore } from "../store/usePlan.ts";
import { savePlan } from "./planActions.ts";

/**
 * The shortcuts every program has: undo, redo, save, open. While someone is typing in a field, undo is the field's
 * own; once what was typed has been taken (or nothing was), it is the plan's.
 */
export function usePageKeys(openFile: () => void): void {
  useEffect(() => {
    let typingIn: EventTarget | null = null;
    const onInput = (event: Event) => {
      typingIn = event.target;
    };
    const onLeave = () => {
      typingIn = null;
    };
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key === "Enter" || event.key === "Escape") typingIn = null;
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      const act = shortcut(key, event.shiftKey, openFile);
      if (!act || ((key === "z" || key === "y") && typingIn !== null && typingIn === event.target)) return;
      event.preventDefault();
      act();
    };
    document.addEventListener("input", onInput);
    document.addEventListener("focusout", onLeave);
    // On its way down: fields that use Escape themselves let it come no further up.
    document.addEventListener("keydown", onKeyDown, true);
    return () => {
      document.removeEventListener("input", onInput);
      document.removeEventListener("focusout", onLeave);
      document.removeEventListener("keydown", onKeyDown, true);
    };
  }, [openFile]);
}

function shortcut(key: string, isShifted: boolean, openFile: () => void): (() => void) | null {
  const { undo, redo } = planStore.getState();
  if (key === "z") return isShifted ? redo : undo;
  if (key === "y" && !isShifted) return redo;
  if (key === "s" && !isShifted) return savePlan;
  if (key === "o" && !isShifted) return openFile;
  return null;
}
