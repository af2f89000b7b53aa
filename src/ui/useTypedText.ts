import type { KeyboardEvent } from "react";
import { useState } from "react";

/** What a text comes to: a value to take, or in one sentence why there is none. */
export type Judgement<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly message: string };

interface Rules<T> {
  /** The text of the value in force. */
  readonly inForce: string;
  judge(text: string): Judgement<T>;
  /** A text that differs from the one in force was judged usable and is finished. */
  take(value: T): void;
}

/**
 * A text while it is being typed into a field. It stays as typed until Enter or leaving the field; one that cannot be
 * used stays where it is with the reason, and the value in force does not change. Escape puts the value in force back.
 * A field that was looked at and left alone takes nothing.
 */
export function useTypedText<T>({ inForce, judge, take }: Rules<T>) {
  const [typed, setTyped] = useState<string | null>(null);
  const [refusal, setRefusal] = useState<string | null>(null);
  const untouched = typed === null || typed === inForce;

  const forget = () => {
    setTyped(null);
    setRefusal(null);
  };

  /** Whether there is nothing left that cannot be used. */
  const finish = () => {
    if (!untouched) {
      const judged = judge(typed);
      if (!judged.ok) {
        setRefusal(judged.message);
        return false;
      }
      take(judged.value);
    }
    forget();
    return true;
  };

  const onChange = (text: string) => {
    setTyped(text);
    // A message that has become untrue goes at once; a new one waits until the person has finished.
    if (refusal !== null && judge(text).ok) setRefusal(null);
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Enter") {
      // What cannot be used does not send off the form around it either.
      if (!finish()) event.preventDefault();
    } else if (event.key === "Escape" && (typed !== null || refusal !== null)) {
      // Else the dialog or panel around it would close as well.
      event.stopPropagation();
      event.preventDefault();
      forget();
    }
  };

  return {
    /** What the field shows. */
    text: typed ?? inForce,
    /** What the text comes to as it stands; null while it is that of the value in force. */
    preview: untouched ? null : judge(typed),
    refusal,
    refuse: setRefusal,
    forget,
    finish,
    onChange,
    onKeyDown,
  };
}
