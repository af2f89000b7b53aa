import { previewError } from "../../engine/index.ts";
import { figure } from "../charts/figure.ts";
import { usePlan } from "../store/usePlan.ts";
import type { AnswerLabel } from "./answerLabel.ts";

interface Props {
  readonly kind: AnswerLabel["kind"];
  /** The plan asks for the full answer. */
  readonly isFull: boolean;
}

/** What the two models are, and how far the quick one has been seen to be off. */
export function ModelWords({ kind, isFull }: Props) {
  const plan = usePlan((s) => s.plan);
  const error = previewError(plan);
  return (
    <>
      <p>
        <strong>The full-wave answer</strong> solves every radial as a wire of its own over, on or in flat, even soil,
        with the soil’s whole effect on every piece. It takes a moment, so it comes once the plan has been still. It
        does not know slopes, stones, or what the soil is really like.
      </p>
      <p>
        <strong>The quick preview</strong> takes the currents as over a perfect ground and then corrects them for soil
        and radials as a whole. It stands there while something moves
        {kind === "preview"
          ? isFull
            ? ", and for this plan it is all there is"
            : ", or when the plan asks for no more"
          : ""}
        .
        {error
          ? " Against the full-wave answer, in a table of verticals worked out both ways, it was off by as much as this around your plan:"
          : " Raised radials it does not know, and none is shown for them."}
      </p>
      {error && (
        <ul className="sureness__list">
          <li>{`R ${figure(error.resistance_ohm, 0)} Ω, X ${figure(error.reactance_ohm, 0)} Ω at the feedpoint`}</li>
          <li>{`gain ahead ${figure(error.gain_dB, 1)} dB, at 5° elevation`}</li>
          {error.frontToBack_dB !== undefined && <li>{`front-to-back ${figure(error.frontToBack_dB, 1)} dB`}</li>}
        </ul>
      )}
      <p>Differences shown here are always between two answers of one kind, never one of each.</p>
    </>
  );
}
