import { useMemo, useState } from "react";
import { type Line, limits, lineTypes, type PlanFeedline } from "../../../../engine/index.ts";
import type { Curve } from "../../../charts/Curve.ts";
import { CurveChart } from "../../../charts/CurveChart.tsx";
import { figure } from "../../../charts/figure.ts";
import { impedanceText } from "../../../charts/impedanceText.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { useSettings } from "../../../store/useSettings.ts";
import { Button } from "../../../ui/Button.tsx";
import { QuantityField } from "../../../ui/QuantityField.tsx";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";
import type { BandFeed } from "../bandFeed.ts";
import { topFor } from "../topFor.ts";
import type { FeedlineEdit } from "../useFeedlineEdit.ts";
import { LNetworks } from "./LNetworks.tsx";
import { MatchList } from "./MatchList.tsx";
import { type KeyedMatch, matchCurve, matchNamed, type RoomMatches } from "./roomMatches.ts";
import { sectionWords } from "./sectionWords.ts";
import { recutDriven, recutFor } from "./shortenDriven.ts";

interface Props {
  readonly feed: BandFeed;
  readonly feedline: PlanFeedline;
  readonly line: Line;
  readonly matches: RoomMatches;
  readonly edit: FeedlineEdit;
  readonly stale: boolean;
}

/** Every way to bring this feedpoint to the line's impedance, what it takes and what it holds; one of them chosen. */
export function MatchSection({ feed, feedline, line, matches, edit, stale }: Props) {
  const [marker_MHz, setMarker] = useState<number | null>(null);
  const units = useSettings((s) => s.units);
  const { advice, adviceKey, candidates, antenna_ohm } = matches;
  const { span, design_MHz } = feed;
  const chosen = matchNamed(matches, feedline.match);
  const shown = chosen ?? candidates.find((one) => one.key === adviceKey)!;
  const isNone = shown.readout.match.kind === "none";
  const choose = (key: string | undefined) =>
    edit(
      { match: key === "none" ? undefined : key },
      key === undefined || key === "none" ? "take the match out" : "choose a match",
    );
  const curves = useMemo((): Curve[] => {
    const bare = matchCurve(candidates[0]!, matches, feed);
    return [
      ...(isNone
        ? []
        : [
            {
              id: "with",
              name: chosen ? "chosen match" : "recommended",
              role: "live" as const,
              style: 0,
              ...matchCurve(shown, matches, feed),
            },
          ]),
      { id: "bare", name: "no match", role: isNone ? ("live" as const) : ("pin" as const), style: 0, ...bare },
    ];
  }, [candidates, matches, feed, shown, chosen, isNone]);

  return (
    <div className="fr-part">
      <div className="fr-two">
        <div className="fr-said">
          <h3>Recommended: {advice.choice.match.name}</h3>
          <p>
            The feedpoint shows {impedanceText(antenna_ohm.re, antenna_ohm.im)} at {megahertz(design_MHz)} MHz; the line
            wants {`${figure(line.impedance_ohm, 0)}\u00a0Ω`}. {advice.reason}
          </p>
          {advice.notes.map((note) => (
            <p key={note.code} className="fr-note">
              {note.message}
            </p>
          ))}
          {advice.choice.match.ladder.length > 0 && (
            <p>
              From antenna to rig:{" "}
              <b>{advice.choice.match.ladder.map((one) => sectionWords(one, units)).join(", then ")}</b>.
            </p>
          )}
          {feedline.match !== undefined && !chosen && (
            <p className="fr-problem" role="status">
              The match you had chosen cannot be made for this feedpoint any more; none stands at it. Choose another, or
              go back with Undo.
            </p>
          )}
          <div className="fr-acts">
            {adviceKey !== (feedline.match ?? "none") && (
              <Button look="hot" onClick={() => choose(adviceKey)}>
                Use the recommended match
              </Button>
            )}
            {feedline.match !== undefined && <Button onClick={() => choose(undefined)}>Take the match out</Button>}
          </div>
          {shown && <Recutting match={shown} feed={feed} />}
        </div>
        <CurveChart
          title={`SWR at the rig’s side of the match, against ${figure(line.impedance_ohm, 0)} Ω`}
          note={`limit ${figure(feedline.swrLimit, 2)} drawn strong`}
          said={advice.reason}
          quantity="swr"
          curves={curves}
          band={span}
          bandLabel={span.label}
          design_MHz={design_MHz}
          top={topFor(curves, span)}
          limit={feedline.swrLimit}
          marker_MHz={marker_MHz ?? design_MHz}
          stale={stale}
          onMarker={setMarker}
        />
      </div>
      <PartFields feedline={feedline} edit={edit} />
      <MatchList matches={matches} chosenKey={chosen ? chosen.key : "none"} feedline={feedline} onChoose={choose} />
      <LNetworks networks={matches.networks} />
    </div>
  );
}

/** What a match needs of the driven, as an edit of the plan that is then solved anew. */
function Recutting({ match, feed }: { readonly match: KeyedMatch; readonly feed: BandFeed }) {
  const plan = usePlan((s) => s.plan);
  const edit = usePlan((s) => s.edit);
  const units = useSettings((s) => s.units);
  const recut = recutFor(match.readout.match, plan, feed.swept, feed.design_MHz);
  if (!recut) return null;
  const isShorter = recut.to_m < recut.from_m;
  return (
    <div className="fr-note">
      <p>
        This match counts on the driven being {isShorter ? "shorter" : "longer"}: about{" "}
        {formatQuantity(recut.to_m, "length_m", units)} instead of {formatQuantity(recut.from_m, "length_m", units)}.
        Until it is solved so, its figures take the resistance as unmoved.
      </p>
      <Button
        onClick={() => edit((p) => recutDriven(p, recut), `${isShorter ? "shorten" : "lengthen"} the driven to suit`)}
      >
        {isShorter ? "Shorten" : "Lengthen"} the driven to suit, and solve again
      </Button>
    </div>
  );
}

/** What parts are at hand, and how good they are. */
function PartFields({ feedline, edit }: { readonly feedline: PlanFeedline; readonly edit: FeedlineEdit }) {
  const { q } = limits.feedline;
  return (
    <div className="fr-fields">
      <label className="field fr-cable">
        <span className="field__label">another cable at hand, for sections and stubs</span>
        <select
          className="field__select"
          value={feedline.sectionId}
          onChange={(event) => edit({ sectionId: event.currentTarget.value }, "choose the cable for sections")}
        >
          {lineTypes.map((type) => (
            <option key={type.id} value={type.id}>
              {type.name}
            </option>
          ))}
        </select>
      </label>
      <QuantityField
        label="Q of coils"
        kind="ratio"
        value={feedline.coilQ}
        {...q}
        hint="200 when wound with care"
        onCommit={(value) => edit({ coilQ: value }, "change the Q of coils")}
      />
      <QuantityField
        label="Q of capacitors"
        kind="ratio"
        value={feedline.capacitorQ}
        {...q}
        hint="1000 for mica or air"
        onCommit={(value) => edit({ capacitorQ: value }, "change the Q of capacitors")}
      />
    </div>
  );
}
