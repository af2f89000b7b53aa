import { useId } from "react";
import type { PlanFeedline } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { useSettings } from "../../../store/useSettings.ts";
import type { RoomMatches } from "./roomMatches.ts";
import { sectionWords } from "./sectionWords.ts";
import { spanWords } from "./spanWords.ts";

interface Props {
  readonly matches: RoomMatches;
  readonly chosenKey: string;
  readonly feedline: PlanFeedline;
  onChoose(key: string): void;
}

/** All candidates with their values, loss, bandwidth and static drain; a radio button takes one. */
export function MatchList({ matches, chosenKey, feedline, onChoose }: Props) {
  const name = useId();
  const units = useSettings((s) => s.units);
  const { candidates, adviceKey, refused } = matches;
  return (
    <section aria-labelledby={`${name}-title`}>
      <h3 id={`${name}-title`}>All that can be made</h3>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard */}
      <section className="fr-scroll fr-scroll--tall" tabIndex={0} aria-label="Matches">
        <table className="fr-table fr-matches">
          <caption>
            Losses at coil Q {figure(feedline.coilQ, 0)} and capacitor Q {figure(feedline.capacitorQ, 0)}, at the plan’s
            frequency; parts from antenna to rig
          </caption>
          <thead>
            <tr>
              <th scope="col">match</th>
              <th scope="col">worst SWR in the band</th>
              <th scope="col">{`SWR ${figure(feedline.swrLimit, 2)} or less over`}</th>
              <th scope="col">loss, dB</th>
              <th scope="col">static drain</th>
            </tr>
          </thead>
          <tbody>
            {candidates.map(({ key, readout }) => (
              <tr key={key} data-chosen={key === chosenKey || undefined}>
                <th scope="row">
                  <label className="fr-choice">
                    <input type="radio" name={name} checked={key === chosenKey} onChange={() => onChoose(key)} />
                    <span>
                      {readout.match.name}
                      {key === adviceKey && <b className="fr-tag">recommended</b>}
                      <span className="fr-values">
                        {readout.match.ladder.map((one) => sectionWords(one, units)).join(", ")}
                      </span>
                    </span>
                  </label>
                </th>
                <td>{figure(readout.worstSwr, 2)}</td>
                <td>{readout.isBandHeld ? "the whole band" : spanWords(readout.span)}</td>
                <td>{figure(readout.design.loss_dB, 2)}</td>
                <td>{readout.isStaticDrained ? "yes" : "no"}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {refused.length > 0 && (
        <details className="fr-small">
          <summary>What cannot be made for this feedpoint, and why ({refused.length})</summary>
          <ul className="fr-refused">
            {[...new Set(refused.map((one) => one.problem.message))].map((message) => (
              <li key={message}>{message}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
