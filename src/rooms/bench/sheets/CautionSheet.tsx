import type { SavedPlan } from "../../../../engine/index.ts";
import type { Units } from "../../../store/useSettings.ts";
import { cautionWords } from "../../../text/cautionWords.ts";
import { SheetPage } from "./SheetPage.tsx";
import { keptDistance, lineDistance, tallest_m } from "./tallest.ts";

/** What to read before anything is dug, raised or fed. */
export function CautionSheet({ plan, units }: { readonly plan: SavedPlan; readonly units: Units }) {
  const text = (m: number) => keptDistance(m, units);
  const h = tallest_m(plan);
  const cautions = cautionWords({
    tallest: text(h),
    lineDistance: text(1.5 * h),
    fallRadius: text(h + 1),
    guysFrom: text(0.5 * h),
    guysTo: text(0.75 * h),
    radialReach: text(Math.max(0, ...plan.elements.map(({ radials }) => (radials.count > 0 ? radials.length_m : 0)))),
  });
  return (
    <SheetPage
      name="Cautions"
      about="Read this aloud to whoever helps. Tick each when it has been looked at."
      lineDistance={lineDistance(plan, units)}
    >
      <ul className="pg-cautions">
        {cautions.map(({ title, lines }) => (
          <li key={title}>
            <span className="pg-box" aria-hidden="true" />
            <div>
              <h4>{title}</h4>
              {lines.map((line) => (
                <p key={line}>{line}</p>
              ))}
            </div>
          </li>
        ))}
      </ul>
    </SheetPage>
  );
}
