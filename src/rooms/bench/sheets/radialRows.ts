import { type ElementPlan, layRadials, type SavedPlan } from "../../../../engine/index.ts";
import { bearing_deg } from "../../../charts/bearing.ts";
import { headingOf } from "../../yard/heading.ts";

export interface FieldRows {
  readonly element: ElementPlan;
  /** By rising bearing. */
  readonly radials: readonly { readonly bearing_deg: number; readonly length_m: number }[];
  readonly total_m: number;
  /** "lying on the soil", "5 cm deep" and so on. */
  readonly lies: string;
}

/** The radials of each element as they are laid, by compass. */
export function radialRows(plan: SavedPlan): readonly FieldRows[] {
  const heading = headingOf(plan);
  const laid = layRadials(
    plan,
    plan.elements.map(() => 0),
  );
  return plan.elements.flatMap((element, i): FieldRows[] => {
    const radials = laid
      .filter((wire) => wire.kind === "radial" && wire.element === i)
      .map(({ from_m, to_m }) => {
        const [ahead, left] = [to_m[0] - from_m[0], to_m[1] - from_m[1]];
        return {
          bearing_deg: bearing_deg((Math.atan2(left, ahead) * 180) / Math.PI, heading),
          length_m: Math.hypot(ahead, left),
        };
      })
      .sort((a, b) => a.bearing_deg - b.bearing_deg);
    if (radials.length === 0) return [];
    const cm = Math.round(100 * Math.abs(element.radials.height_m));
    const { height_m } = element.radials;
    return [
      {
        element,
        radials,
        total_m: radials.reduce((sum, one) => sum + one.length_m, 0),
        lies: height_m === 0 ? "Lying on the soil" : height_m > 0 ? `Raised ${cm} cm` : `${cm} cm deep in the soil`,
      },
    ];
  });
}
