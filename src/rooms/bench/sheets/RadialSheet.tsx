import type { SavedPlan } from "../../../../engine/index.ts";
import { bearingText } from "../../../charts/bearing.ts";
import type { Units } from "../../../store/useSettings.ts";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";
import { elementName } from "../../yard/elementName.ts";
import { benchOf } from "../useBenchEdit.ts";
import { radialRows } from "./radialRows.ts";
import { SheetPage } from "./SheetPage.tsx";
import { keptDistance, lineDistance } from "./tallest.ts";

/** More than this are told by their rule alone. */
const listed = 36;

const meetings = {
  overlap:
    "The fields run on over each other. Where radials of two elements cross, they must not touch bare: lay one on insulation.",
  stop: "Radials end a hand’s breadth short of the line midway between two elements.",
  bus: "Radials end on a bare wire laid along the line midway between two elements; solder or clamp each to it.",
} as const;

/** Where every radial lies, how long it is, and how much wire that takes. */
export function RadialSheet({ plan, units }: { readonly plan: SavedPlan; readonly units: Units }) {
  const length = (m: number) => formatQuantity(m, "length_m", units);
  const { declination_deg } = benchOf(plan);
  const fields = radialRows(plan);
  const total = fields.reduce((sum, field) => sum + field.total_m, 0);
  const isSeveral = plan.elements.length > 1;
  return (
    <SheetPage
      name="Radials"
      about={`Bearings are true, seen from each hub${declination_deg === undefined ? "" : "; by the compass in brackets"}. Lengths from the hub’s bolt to the end.`}
      lineDistance={lineDistance(plan, units)}
    >
      {fields.map(({ element, radials, total_m, lies }) => {
        const name = elementName(plan, element);
        return (
          <section key={element.id} className="pg-field" aria-label={`Radials of the ${name}`}>
            <h4>
              {name}: {radials.length} radials, {length(total_m)} of wire
            </h4>
            <p>
              {lies}, {element.radials.insulation ? "insulated" : "bare"} wire of{" "}
              {formatQuantity(element.radials.diameter_mm, "diameter_mm", units)}
              {radials.length > listed &&
                `; one every ${(360 / radials.length).toFixed(1)}°, the first at ${bearingText(radials[0]!.bearing_deg)}`}
              .
            </p>
            {radials.length <= listed && (
              <ul className="pg-radial-list">
                {radials.map((one) => (
                  <li key={one.bearing_deg}>
                    <span className="pg-box" /> <b>{bearingText(one.bearing_deg)}</b>
                    {declination_deg !== undefined && ` (${bearingText(one.bearing_deg - declination_deg)})`}{" "}
                    {length(one.length_m)}
                  </li>
                ))}
              </ul>
            )}
          </section>
        );
      })}
      {isSeveral && <p>{meetings[plan.fields?.radials ?? "overlap"]}</p>}
      {plan.fields?.bonded && <p>A wire joins the bases.</p>}
      <p>
        Together <b>{length(total)}</b>; {keptDistance(1.05 * total, units)} with one part in twenty to spare.
      </p>
      <p className="pg-about">
        Pin them flat, or slot them under the turf, and mark where they end. Bolt them to the hub with lugs or under
        washers; rain finds every joint that is only twisted.
      </p>
    </SheetPage>
  );
}
