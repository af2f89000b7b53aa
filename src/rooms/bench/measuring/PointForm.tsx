import { useState } from "react";
import type { BenchPoint } from "../../../../engine/index.ts";
import { Button } from "../../../ui/Button.tsx";
import { Switch } from "../../../ui/Switch.tsx";
import { BlankableField } from "../BlankableField.tsx";
import { bounds } from "../bounds.ts";
import { ChoiceField } from "../ChoiceField.tsx";
import { pointFromSwr } from "./pointFrom.ts";

type Shown = "rx" | "zero" | "swr";

const shows: readonly { readonly value: Shown; readonly label: string }[] = [
  { value: "rx", label: "R and X" },
  { value: "zero", label: "where X is 0" },
  { value: "swr", label: "R and SWR" },
];
const sides = [
  { value: "above", label: "above 0 (coil-like)" },
  { value: "below", label: "below 0 (capacitor-like)" },
] as const;

interface Props {
  readonly frequency_MHz: number;
  readonly word: string;
  onPoint(point: BenchPoint): void;
}

/** One frequency of a reading, typed as the meter shows it. */
export function PointForm({ frequency_MHz, word, onPoint }: Props) {
  const [shown, setShown] = useState<Shown>("rx");
  const [at, setAt] = useState<number | undefined>(undefined);
  const [r, setR] = useState<number | undefined>(undefined);
  const [x, setX] = useState<number | undefined>(undefined);
  const [swr, setSwr] = useState<number | undefined>(undefined);
  const [side, setSide] = useState<"above" | "below">("above");
  const [refusal, setRefusal] = useState<string | null>(null);
  const f = at ?? (shown === "zero" ? undefined : frequency_MHz);
  const missing = [
    f === undefined && "the frequency",
    r === undefined && "R",
    shown === "rx" && x === undefined && "X",
    shown === "swr" && swr === undefined && "the SWR",
  ].filter(Boolean);

  const keep = () => {
    // A field that is left by pressing the button has been taken by now.
    if (missing.length > 0) return setRefusal(`Still to be typed: ${missing.join(", ")}.`);
    const point =
      shown === "swr"
        ? pointFromSwr(f!, r!, swr!, side === "above")
        : {
            ok: true as const,
            value: { frequency_MHz: f!, resistance_ohm: r!, reactance_ohm: shown === "rx" ? x! : 0 },
          };
    if (!point.ok) return setRefusal(point.problems[0]!.message);
    setRefusal(null);
    setAt(undefined);
    setR(undefined);
    setX(undefined);
    setSwr(undefined);
    onPoint(point.value);
  };
  return (
    <div className="bn-point">
      <Switch<Shown> label="the meter shows" choices={shows} value={shown} onChange={setShown} />
      <div className="fr-fields">
        <BlankableField
          label={shown === "zero" ? "X is 0 at" : "at the frequency"}
          kind="frequency_MHz"
          value={f}
          {...bounds.frequency_MHz}
          onCommit={setAt}
        />
        <BlankableField
          label="R read"
          kind="resistance_ohm"
          value={r}
          least={0.01}
          most={bounds.resistance_ohm.most}
          onCommit={setR}
        />
        {shown === "rx" && (
          <BlankableField
            label="X read"
            kind="resistance_ohm"
            value={x}
            {...bounds.reactance_ohm}
            hint="Ω; minus where it is capacitive"
            onCommit={setX}
          />
        )}
        {shown === "swr" && (
          <>
            <BlankableField
              label="SWR read"
              kind="ratio"
              value={swr}
              {...bounds.swr}
              hint="against 50 Ω"
              onCommit={setSwr}
            />
            <ChoiceField<"above" | "below"> label="X is" value={side} choices={sides} onChoose={setSide} />
          </>
        )}
      </div>
      {shown === "swr" && (
        <p className="fr-small">
          SWR alone says not on which side of resonance you are: tune a little higher; if X or the SWR grows, X is above
          0.
        </p>
      )}
      {refusal && (
        <p className="fr-problem" role="alert">
          {refusal}
        </p>
      )}
      <div className="fr-acts">
        <Button onClick={keep}>{word}</Button>
      </div>
    </div>
  );
}
