import { limits, lineOfCable, lineTypes, matchedLoss_dB, type PlanCable } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import { megahertz } from "../../../charts/megahertz.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { useSettings } from "../../../store/useSettings.ts";
import { QuantityField } from "../../../ui/QuantityField.tsx";
import type { FeedlineEdit } from "../useFeedlineEdit.ts";

const { feedline: bounds } = limits;
/** 100 ft in units of 100 m. */
const perFeet = 0.3048;

/** Which cable: one of the table, or a person's own figures. */
export function CableChoice({ cable, edit }: { readonly cable: PlanCable; readonly edit: FeedlineEdit }) {
  const frequency_MHz = usePlan((s) => s.plan.frequency_MHz);
  return (
    <label className="field fr-cable">
      <span className="field__label">cable</span>
      <select
        className="field__select"
        value={cable.kind === "own" ? "own" : cable.id}
        onChange={(event) => {
          const id = event.currentTarget.value;
          if (id !== "own") edit({ cable: { kind: "listed", id } }, "choose the cable");
          else edit({ cable: ownLike(cable, frequency_MHz) }, "describe the cable");
        }}
      >
        {lineTypes.map((type) => (
          <option key={type.id} value={type.id}>
            {`${type.name}${type.name.includes("ohm") ? "" : `, ${type.impedance_ohm} ohm`}`}
          </option>
        ))}
        <option value="own">my own figures</option>
      </select>
    </label>
  );
}

/** An own cable starts from the one that was chosen, so that only what differs has to be typed. */
function ownLike(cable: PlanCable, frequency_MHz: number): PlanCable {
  if (cable.kind === "own") return cable;
  const line = lineOfCable(cable);
  const at = (f: number) => ({
    frequency_MHz: f,
    loss_dBPer100m: line.ok ? Number(matchedLoss_dB(line.value, 100, f).toFixed(2)) : 3,
  });
  return {
    kind: "own",
    impedance_ohm: line.ok ? line.value.impedance_ohm : 50,
    velocityFactor: line.ok ? line.value.velocityFactor : 0.66,
    loss: frequency_MHz < 30 ? [at(10), at(50)] : [at(30), at(100)],
  };
}

/** Impedance, velocity factor and two losses of an own cable. */
export function OwnCable({
  cable,
  edit,
}: {
  readonly cable: PlanCable & { kind: "own" };
  readonly edit: FeedlineEdit;
}) {
  const units = useSettings((s) => s.units);
  const by = units === "metric" ? 1 : perFeet;
  const per = units === "metric" ? "100 m" : "100 ft";
  const set = (change: Partial<PlanCable & { kind: "own" }>, label: string, key?: string) =>
    edit({ cable: { ...cable, ...change } }, label, key);
  const setLoss = (i: 0 | 1, change: Partial<(typeof cable.loss)[0]>, key?: string) => {
    const [a, b] = cable.loss;
    set({ loss: i === 0 ? [{ ...a, ...change }, b] : [a, { ...b, ...change }] }, "change the cable's loss", key);
  };
  return (
    <fieldset className="fr-own">
      <legend className="field__label">own cable</legend>
      <QuantityField
        label="impedance"
        kind="resistance_ohm"
        value={cable.impedance_ohm}
        {...bounds.impedance_ohm}
        hint="of the line itself"
        onCommit={(value, stepped) =>
          set({ impedance_ohm: value }, "change the cable's impedance", stepped ? "cable impedance" : undefined)
        }
      />
      <QuantityField
        label="velocity factor"
        kind="ratio"
        value={cable.velocityFactor}
        {...bounds.velocityFactor}
        hint="over that of light"
        onCommit={(value, stepped) =>
          set({ velocityFactor: value }, "change the velocity factor", stepped ? "velocity factor" : undefined)
        }
      />
      {([0, 1] as const).map((i) => (
        <div className="fr-loss" key={i}>
          <QuantityField
            label={`loss ${i + 1} is at`}
            kind="frequency_MHz"
            value={cable.loss[i].frequency_MHz}
            {...bounds.lossFrequency_MHz}
            onCommit={(value, stepped) => setLoss(i, { frequency_MHz: value }, stepped ? `loss at ${i}` : undefined)}
          />
          <QuantityField
            label={`loss ${i + 1}, dB per ${per}`}
            kind="ratio"
            value={Number((cable.loss[i].loss_dBPer100m * by).toPrecision(6))}
            least={0}
            most={bounds.loss_dBPer100m.most * by}
            hint={
              units === "metric"
                ? `${figure(cable.loss[i].loss_dBPer100m * perFeet, 2)} per 100 ft`
                : `${figure(cable.loss[i].loss_dBPer100m, 2)} per 100 m`
            }
            onCommit={(value, stepped) => setLoss(i, { loss_dBPer100m: value / by }, stepped ? `loss ${i}` : undefined)}
          />
        </div>
      ))}
      <FitWords cable={cable} />
    </fieldset>
  );
}

/** Loss in metal and insulation never falls as frequency rises; figures that do cannot both be met. */
function FitWords({ cable }: { readonly cable: PlanCable & { kind: "own" } }) {
  const line = lineOfCable(cable);
  if (!line.ok) return null;
  const off = cable.loss.find((point) => {
    const fitted = matchedLoss_dB(line.value, 100, point.frequency_MHz);
    return Math.abs(fitted - point.loss_dBPer100m) > 0.03 * Math.max(point.loss_dBPer100m, 0.1);
  });
  if (!off) return null;
  return (
    <p className="fr-note">
      No cable’s loss runs like these two: with what metal and insulation allow, it is taken as{" "}
      {figure(matchedLoss_dB(line.value, 100, off.frequency_MHz), 2)} dB per 100 m at {megahertz(off.frequency_MHz)}{" "}
      MHz.
    </p>
  );
}
