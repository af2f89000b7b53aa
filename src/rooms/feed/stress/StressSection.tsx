import { useMemo } from "react";
import {
  chokeAdvice,
  drivenOf,
  type Ladder,
  type Line,
  type PlanFeedline,
  reflectorOf,
} from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import { useCalmAnswer } from "../../../store/useCalmAnswer.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { useSettings } from "../../../store/useSettings.ts";
import type { MakeWorker } from "../../../worker/EngineWorker.ts";
import { elementName } from "../../yard/elementName.ts";
import type { BandFeed } from "../bandFeed.ts";
import { sectionWords } from "../match/sectionWords.ts";
import { Progress } from "../Progress.tsx";
import { RoomTable } from "../RoomTable.tsx";
import { SourceWords } from "../SourceWords.tsx";
import { endRows } from "./endRows.ts";
import { stressFacts } from "./stressFacts.ts";
import { useEndVoltages } from "./useEndVoltages.ts";

interface Props {
  readonly feed: BandFeed;
  readonly feedline: PlanFeedline;
  readonly line: Line;
  readonly ladder: Ladder;
  readonly matchName: string | null;
  readonly makeWorker: MakeWorker;
}

/** What voltages and currents there are, where the power goes, what a choke has to do, and what to beware of. */
export function StressSection({ feed, feedline, line, ladder, matchName, makeWorker }: Props) {
  const { design_MHz } = feed;
  const { power_W, length_m } = feedline;
  const units = useSettings((s) => s.units);
  const plan = usePlan((s) => s.plan);
  const driven = usePlan((s) => drivenOf(s.plan));
  const reflector = usePlan((s) => reflectorOf(s.plan));
  const readout = useCalmAnswer((s) => s.readout);
  const { result: ends, model, problems, answers } = useEndVoltages(makeWorker);
  const facts = useMemo(
    () => stressFacts(feed.at(design_MHz), design_MHz, line, length_m, ladder, power_W),
    [feed, design_MHz, line, length_m, ladder, power_W],
  );
  const nameOf = (id: string) => {
    const element = plan.elements.find((one) => one.id === id);
    return element ? elementName(plan, element) : id;
  };
  if (!facts.ok) return <p className="fr-problem">{facts.problems[0]!.message}</p>;
  const { base, onLine, line: through, parts, atMatch_W, atBase_W } = facts.value;
  const choke = driven ? chokeAdvice(driven.radials.count, driven.radials.height_m > 0.05) : null;
  const behind = readout?.baseCurrents.find((one) => one.elementId === reflector?.id)?.current;
  const behind_A = behind && Math.hypot(behind.re, behind.im) * base.base_Arms;
  const load = reflector?.base.kind === "loaded" ? reflector.base : null;
  const openBase = ends?.find((one) => one.elementId === reflector?.id)?.base_VPerA;
  const behind_V =
    reflector?.base.kind === "joined"
      ? 0
      : behind_A !== undefined && load
        ? behind_A * Math.hypot(load.resistance_ohm, load.reactance_ohm)
        : openBase !== undefined && openBase * base.base_Arms;
  const rows = [
    ["at the rig", watts(power_W), "–", "–", "–"],
    [
      "along the line, at most",
      `${watts(power_W - atMatch_W)} warm it`,
      `${figure(onLine.lineMost_Arms, 2)} A`,
      `${figure(onLine.lineMost_Vrms, 0)} V`,
      `${figure(onLine.lineMost_Vpeak, 0)} V`,
    ],
    ...ladder.flatMap((section, i) =>
      section.kind === "retrim"
        ? []
        : [
            [
              sectionWords(section, units),
              `${watts(parts[i]!.dissipated_W)} warm it`,
              `${figure(parts[i]!.current_Arms, 2)} A`,
              `${figure(parts[i]!.voltage_Vrms, 0)} V`,
              `${figure(parts[i]!.voltage_Vrms * Math.SQRT2, 0)} V`,
            ],
          ],
    ),
    [
      "base of the driven",
      `${watts(atBase_W)} arrive`,
      `${figure(base.base_Arms, 2)} A`,
      `${figure(base.base_Vrms, 0)} V`,
      `${figure(base.base_Vpeak, 0)} V`,
    ],
    ...(behind_A !== undefined && reflector
      ? [
          [
            "base of the reflector",
            "unfed",
            `${figure(behind_A, 2)} A`,
            ...(behind_V === false
              ? ["not known yet", "not known yet"]
              : [`${figure(behind_V, 0)} V`, `${figure(behind_V * Math.SQRT2, 0)} V`]),
          ],
        ]
      : []),
    ...endRows(ends ?? [], nameOf, base.base_Arms),
  ];
  return (
    <div className="fr-part">
      <RoomTable
        caption={`At ${watts(power_W)} and ${megahertz(design_MHz)} MHz; a steady carrier at full power`}
        heads={["where", "power", "current, rms", "voltage, rms", "voltage, peak"]}
        rows={rows}
      />
      <p className="fr-small">
        On the line the SWR is {figure(through.swrAtAntenna, 2)} at its far end; the largest values along it are reached
        only where it is long enough. {matchName ? `The match: ${matchName}.` : "No match is chosen."} Tips and ends are
        potentials against far-off ground; insulators and whoever can reach an end have to bear them. Contacts of relays
        stand under Reversal.
      </p>
      {problems.map((one) => (
        <p key={one.where} className="fr-problem">
          {`Voltages at the ends are not known: ${one.message}`}
        </p>
      ))}
      <Progress answers={answers} isShown={ends !== null} />
      {ends && <SourceWords model={model ?? "preview"} what="Voltages at tips and ends" />}
      {choke && (
        <section className="fr-verdict" aria-label="Common-mode choke">
          <h3>Common-mode choke</h3>
          <p className="fr-verdict-words">
            {`At least ${figure(choke.least_ohm, 0)} Ω, better ${figure(choke.better_ohm, 0)} Ω, mostly ${choke.character}, at the ${choke.place}`}
          </p>
          {choke.reasons.map((reason) => (
            <p key={reason}>{reason}</p>
          ))}
          <p className="fr-small">{choke.provenance}</p>
        </section>
      )}
      <section className="fr-beware" aria-label="Beware">
        <h3>Beware</h3>
        <ul>
          <li>
            <b>RF burns and high voltage.</b> Bases, coils, stubs’ open ends, tips and the ends of radials burn at
            modest power, the unfed element’s too. Guard what can be touched; never adjust while transmitting.
          </li>
          <li>
            <b>Static and lightning.</b>{" "}
            {ladder.some((one) => one.kind === "shunt-coil" || (one.kind === "stub" && one.end === "shorted"))
              ? "A coil or shorted stub across the feed may lead charge from rain and wind to ground."
              : "Nothing here leads charge from rain and wind to ground: a drain choke or resistor across the base does."}{" "}
            That is no protection against a stroke: bond, protect and disconnect as your local code demands, by a
            licensed electrician where it asks for one.
          </li>
          <li>
            <b>Ratings.</b> Take parts for at least twice the peak voltage and current shown, more for SWR that drifts
            in wet weather. Makers’ ratings and local codes come before these figures.
          </li>
        </ul>
      </section>
    </div>
  );
}

const watts = (value: number) => `${figure(value, value < 20 ? 1 : 0)} W`;
