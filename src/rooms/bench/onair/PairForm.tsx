import { useRef, useState } from "react";
import type { OnAirPair } from "../../../../engine/index.ts";
import { Button } from "../../../ui/Button.tsx";
import { BlankableField } from "../BlankableField.tsx";
import { bounds } from "../bounds.ts";

/** Two readings of one station, typed one pair after the other: the last field’s Enter keeps them and begins anew. */
export function PairForm({ number, onPair }: { readonly number: number; onPair(pair: OnAirPair): void }) {
  const box = useRef<HTMLFormElement>(null);
  const [forward_dB, setForward] = useState<number | undefined>(undefined);
  const [reverse_dB, setReverse] = useState<number | undefined>(undefined);
  const [refusal, setRefusal] = useState<string | null>(null);
  const keep = (forward: number | undefined, reverse: number | undefined) => {
    if (forward === undefined || reverse === undefined)
      return setRefusal(
        `Pair ${number} still lacks ${forward === undefined ? "the forward" : "the reversed"} reading.`,
      );
    setRefusal(null);
    setForward(undefined);
    setReverse(undefined);
    onPair({ forward_dB: forward, reverse_dB: reverse });
    box.current?.querySelector("input")?.focus();
  };
  return (
    <form
      className="bn-point"
      ref={box}
      aria-label={`Pair ${number}`}
      onSubmit={(event) => {
        event.preventDefault();
        keep(forward_dB, reverse_dB);
      }}
    >
      <div className="fr-fields">
        <BlankableField
          label={`pair ${number}: forward`}
          kind="ratio"
          value={forward_dB}
          {...bounds.level_dB}
          hint="dB of any one scale"
          onCommit={setForward}
        />
        <BlankableField
          label={`pair ${number}: reversed`}
          kind="ratio"
          value={reverse_dB}
          {...bounds.level_dB}
          hint="dB of the same scale"
          onCommit={setReverse}
        />
        <div className="fr-acts bn-end">
          <Button type="submit">Keep this pair</Button>
        </div>
      </div>
      {refusal && (
        <p className="fr-problem" role="alert">
          {refusal}
        </p>
      )}
    </form>
  );
}
