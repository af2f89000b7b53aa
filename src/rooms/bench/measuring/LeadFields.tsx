import { type BenchLead, limits } from "../../../../engine/index.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { QuantityField } from "../../../ui/QuantityField.tsx";
import { CableChoice, OwnCable } from "../../feed/line/CableFields.tsx";
import type { FeedlineEdit } from "../../feed/useFeedlineEdit.ts";
import { benchOf, useBenchEdit } from "../useBenchEdit.ts";

const usual: BenchLead = { cable: { kind: "listed", id: "rg-58c" }, length_m: 1 };

/** Whether the meter stands at the base or behind a cable, and which; the cable is then reckoned out. */
export function LeadFields() {
  const lead = usePlan((s) => benchOf(s.plan).lead);
  const editBench = useBenchEdit();
  const edit: FeedlineEdit = ({ cable }, label, mergeKey) =>
    cable && editBench((bench) => ({ lead: { ...(bench.lead ?? usual), cable } }), label, mergeKey);
  return (
    <section className="bn-lead" aria-label="Where the meter is">
      <label className="check">
        <input
          type="checkbox"
          checked={lead !== undefined}
          onChange={(event) => {
            const isThrough = event.currentTarget.checked;
            editBench(
              () => ({ lead: isThrough ? usual : undefined }),
              isThrough ? "put a cable before the meter" : "take the cable from the meter",
            );
          }}
        />
        a cable stands between meter and base, and the meter was not calibrated at its far end
      </label>
      {lead && (
        <>
          <div className="fr-fields">
            <CableChoice cable={lead.cable} edit={edit} />
            <QuantityField
              label="length of that cable"
              kind="length_m"
              value={lead.length_m}
              least={0.01}
              most={limits.feedline.length_m.most}
              onCommit={(length_m, stepped) =>
                editBench(
                  (bench) => ({ lead: { ...(bench.lead ?? usual), length_m } }),
                  "change the length of the meter’s cable",
                  stepped ? "lead length" : undefined,
                )
              }
            />
          </div>
          {lead.cable.kind === "own" && <OwnCable cable={lead.cable} edit={edit} />}
          <p className="fr-small">
            Readings marked “through the cable” are carried over to the base with its length, velocity factor and loss.
            That is as good as those three are: better to calibrate at the base.
          </p>
        </>
      )}
    </section>
  );
}
