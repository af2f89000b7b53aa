import type { AnswerLabel } from "./answerLabel.ts";

interface Props {
  readonly kind: AnswerLabel["kind"];
  /** The plan asks for the full answer. */
  readonly isFull: boolean;
}

/** What the two models are, and how far the quick one has been seen to be off. */
export function ModelWords({ kind, isFull }: Props) {
  return (
    <>
      <p>
        <strong>The full-wave answer</strong> solves every radial as a wire of its own in air above flat, even soil,
        with the soil’s whole effect on every piece. It takes a moment, so it comes once the plan has been still. It
        does not know buried radials yet, nor slopes, stones, or what the soil is really like.
      </p>
      <p>
        <strong>The quick preview</strong> takes the currents as over a perfect ground and then corrects them for soil
        and radials as a whole. It stands there while something moves
        {kind === "preview"
          ? isFull
            ? ", and for this plan it is all there is"
            : ", or when the plan asks for no more"
          : ""}
        . How far it is off, against the full-wave answer, for one vertical on 7 MHz over average soil (permittivity 13,
        5 mS/m):
      </p>
      <ul className="sureness__list">
        <li>16 to 32 radials of an eighth wave: R within about 2 Ω and gain within 0.2 dB, but X 8 to 25 Ω off</li>
        <li>16 or more of a quarter wave: R 2 to 12 Ω too high, gain 0.2 to 1 dB too low</li>
        <li>8 or fewer, or poor soil: whole decibels and tens of ohms, either way</li>
        <li>raised radials: it does not apply, and none is shown</li>
      </ul>
      <p>Differences shown here are always between two answers of one kind, never one of each.</p>
    </>
  );
}
