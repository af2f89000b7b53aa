import type { OnAirPair } from "../../../../engine/index.ts";
import { figure, signedFigure } from "../../../charts/figure.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { Button } from "../../../ui/Button.tsx";
import { say } from "../../../ui/say.ts";
import { RoomTable } from "../../feed/RoomTable.tsx";
import { bounds } from "../bounds.ts";
import { benchOf, useBenchEdit } from "../useBenchEdit.ts";
import { PairForm } from "./PairForm.tsx";
import { Verdict } from "./Verdict.tsx";

const none: readonly OnAirPair[] = [];

/** Alternating pairs of readings of one station, and what they prove. */
export function OnAirSection() {
  const pairs = usePlan((s) => benchOf(s.plan).onAir ?? none);
  const edit = useBenchEdit();
  const keep = (next: readonly OnAirPair[], label: string) =>
    edit(() => ({ onAir: next.length > 0 ? next : undefined }), label);
  const add = (pair: OnAirPair) => {
    if (pairs.length >= bounds.pairs) {
      say(`${pairs.length} pairs are kept already; no more than ${bounds.pairs} are.`, { isTrouble: true });
      return;
    }
    keep([...pairs, pair], "add a pair of readings");
  };
  return (
    <div className="bn-part">
      <div className="bn-said">
        <p>
          One station on the beam’s line, far off; change direction after every over, same power, same scale, the two
          readings of a pair close together. Signals fade: a difference from a few pairs means little. The sheet to fill
          is among the sheets.
        </p>
      </div>
      <PairForm number={pairs.length + 1} onPair={add} />
      <Verdict pairs={pairs} />
      {pairs.length > 0 && (
        <>
          <RoomTable
            caption="Pairs in the order they were typed"
            heads={["", "forward, dB", "reversed, dB", "forward − reversed, dB", ""]}
            rows={pairs.map((pair, i) => [
              i + 1,
              figure(pair.forward_dB, 1),
              figure(pair.reverse_dB, 1),
              signedFigure(pair.forward_dB - pair.reverse_dB, 1),
              <Button
                key="out"
                look="quiet"
                aria-label={`Take pair ${i + 1} out`}
                onClick={() =>
                  keep(
                    pairs.filter((_, j) => j !== i),
                    "take a pair of readings out",
                  )
                }
              >
                Take out
              </Button>,
            ])}
          />
          <div className="fr-acts">
            <Button look="quiet" onClick={() => keep(none, "take all pairs out")}>
              Take all pairs out
            </Button>
          </div>
        </>
      )}
    </div>
  );
}
