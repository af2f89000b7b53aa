import { type DragEvent, useRef, useState } from "react";
import { Button } from "../../../ui/Button.tsx";
import { Icon } from "../../../ui/Icon.tsx";

interface Props {
  readonly word: string;
  /** For the chooser: ".s1p". */
  readonly accept: string;
  readonly hint: string;
  onText(text: string, name: string): void;
  onUnreadable(name: string): void;
}

/** A place that takes a text file, chosen or dropped. The page's own place for plan files lets these be. */
export function FileTaker({ word, accept, hint, onText, onUnreadable }: Props) {
  const chooser = useRef<HTMLInputElement>(null);
  const [isOver, setOver] = useState(false);
  const take = (file: File | undefined) => {
    if (!file) return;
    file.text().then(
      (text) => onText(text, file.name),
      () => onUnreadable(file.name),
    );
  };
  const onOver = (event: DragEvent) => {
    if (!event.dataTransfer.types.includes("Files")) return;
    event.preventDefault();
    setOver(true);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is a short way for what the button does
    <div
      className="bn-drop"
      data-over={isOver || undefined}
      onDragOver={onOver}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        if (!event.dataTransfer.types.includes("Files")) return;
        event.preventDefault();
        setOver(false);
        take(event.dataTransfer.files[0]);
      }}
    >
      <Button icon={<Icon name="open" />} onClick={() => chooser.current?.click()}>
        {word}
      </Button>
      <span className="fr-small">{hint}</span>
      <input
        ref={chooser}
        type="file"
        accept={accept}
        hidden
        aria-label={word}
        onChange={(event) => {
          const input = event.currentTarget;
          take(input.files?.[0]);
          input.value = "";
        }}
      />
    </div>
  );
}
