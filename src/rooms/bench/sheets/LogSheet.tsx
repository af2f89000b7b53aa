import type { SavedPlan } from "../../../../engine/index.ts";
import type { Units } from "../../../store/useSettings.ts";
import { SheetPage } from "./SheetPage.tsx";
import { lineDistance } from "./tallest.ts";

const rows = 28;
const heads = [
  "day, time",
  "ground",
  "fed",
  "other base",
  "MHz",
  "R, Ω",
  "X, Ω",
  "SWR",
  "X = 0 at",
  "what was done, remark",
];

/** Blank lines of the log, for a board beside the mast. */
export function LogSheet({ plan, units }: { readonly plan: SavedPlan; readonly units: Units }) {
  return (
    <SheetPage
      name="Log sheet"
      about="A line for each visit. Ground: dry, damp, wet, frozen, snow. Other base: open, joined, loaded."
      lineDistance={lineDistance(plan, units)}
    >
      <table className="pg-table pg-rows pg-log">
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: rows }, (_, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: blank rows have nothing that is theirs
            <tr key={i}>
              {heads.map((head) => (
                <td key={head} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </SheetPage>
  );
}
