import { type ElementPlan, limits, type SavedPlan, withStake } from "../../../../engine/index.ts";
import { QuantityField } from "../../../ui/QuantityField.tsx";
import { fieldHand } from "../fieldHand.ts";
import type { YardEdits } from "../useYardEdits.ts";

const usual: NonNullable<ElementPlan["stake"]> = { length_m: 1.2, diameter_mm: 16 };

/** A rod under each base. */
export function StakeFields({ plan, edits }: { readonly plan: SavedPlan; readonly edits: YardEdits }) {
  const stake = plan.elements.find((element) => element.stake)?.stake;
  const drive = (part: Partial<typeof usual>) => (p: SavedPlan) =>
    withStake(p, { ...(p.elements.find((element) => element.stake)?.stake ?? usual), ...part });
  return (
    <section className="radials__part">
      <h3>Ground stake</h3>
      <label className="check">
        <input
          type="checkbox"
          checked={stake !== undefined}
          onChange={(event) => {
            const on = event.currentTarget.checked;
            edits.change(
              on ? drive({}) : (p) => withStake(p, null),
              on ? "drive ground stakes" : "leave out the ground stakes",
            );
          }}
        />
        <span>a stake under each base, joined to it</span>
      </label>
      {stake && (
        <>
          <QuantityField
            label="in the soil"
            kind="length_m"
            value={stake.length_m}
            least={limits.stake_m.least}
            most={limits.stake_m.most}
            {...fieldHand(edits, (value) => drive({ length_m: value }), "change the stakes", "stake length")}
          />
          <QuantityField
            label="stake thickness"
            kind="diameter_mm"
            value={stake.diameter_mm}
            least={limits.stakeDiameter_mm.least}
            most={limits.stakeDiameter_mm.most}
            {...fieldHand(edits, (value) => drive({ diameter_mm: value }), "change the stakes", "stake thickness")}
          />
        </>
      )}
      <p className="soft">A stake is for lightning and static. At radio frequencies a few radials do far more.</p>
    </section>
  );
}
