import { type FieldMeeting, type SavedPlan, withFields } from "../../../../engine/index.ts";
import { Switch } from "../../../ui/Switch.tsx";
import type { YardEdits } from "../useYardEdits.ts";

const ways: readonly { readonly value: FieldMeeting["radials"]; readonly label: string }[] = [
  { value: "overlap", label: "run on, insulated" },
  { value: "stop", label: "stop midway" },
  { value: "bus", label: "end on a wire midway" },
];

/** What happens where the radials of two elements would meet, and whether a wire joins the bases. */
export function MeetingFields({ plan, edits }: { readonly plan: SavedPlan; readonly edits: YardEdits }) {
  const { radials, bonded } = plan.fields ?? { radials: "overlap", bonded: false };
  return (
    <section className="radials__part">
      <h3>Where two fields meet</h3>
      <Switch
        label="Radials that meet"
        choices={ways}
        value={radials}
        onChange={(value) => edits.change((p) => withFields(p, { radials: value }), "change how radial fields meet")}
      />
      <label className="check">
        <input
          type="checkbox"
          checked={bonded}
          onChange={(event) => {
            const on = event.currentTarget.checked;
            edits.change((p) => withFields(p, { bonded: on }), on ? "join the bases" : "part the bases");
          }}
        />
        <span>a wire joins the bases</span>
      </label>
      <p className="soft">
        Sources differ on which is best, and the effect is small. Radials that run on are taken to lie 5 mm above
        (buried: 2 cm below) those they cross.
      </p>
    </section>
  );
}
