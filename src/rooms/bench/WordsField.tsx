import { TypedField, type TypedFieldProps } from "../../ui/TypedField.tsx";
import { useTypedText } from "../../ui/useTypedText.ts";

interface Props extends Pick<TypedFieldProps, "label" | "type"> {
  readonly value: string;
  readonly most: number;
  readonly hint?: string;
  /** Anything against what was typed, in one sentence; null when there is nothing. */
  check?(text: string): string | null;
  onCommit(value: string): void;
}

/** A line of words, or a date or time of day, typed as `useTypedText` says. */
export function WordsField({ label, value, most, type = "text", hint = "", check, onCommit }: Props) {
  const typing = useTypedText<string>({
    inForce: value,
    judge: (text) => {
      const message = check?.(text) ?? null;
      return message === null ? { ok: true, value: text } : { ok: false, message };
    },
    take: onCommit,
  });
  return (
    <TypedField
      label={label}
      type={type}
      words
      most={most}
      text={typing.text}
      refusal={typing.refusal}
      hint={hint}
      onChange={typing.onChange}
      onKeyDown={typing.onKeyDown}
      onBlur={typing.finish}
    />
  );
}
