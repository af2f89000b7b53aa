import type { BenchAllowance, SavedPlan } from "../../../../engine/index.ts";
import type { Units } from "../../../store/useSettings.ts";
import { materialRows } from "./materialRows.ts";
import { SheetPage } from "./SheetPage.tsx";
import { lineDistance } from "./tallest.ts";

interface Props {
  readonly plan: SavedPlan;
  readonly units: Units;
  readonly allowance: BenchAllowance;
}

/** What to have at hand before the first stake. */
export function MaterialsSheet({ plan, units, allowance }: Props) {
  return (
    <SheetPage
      name="Materials"
      about="Wire is the sum of the cut list; the rest is what such an antenna commonly takes (common practice, no source): strike out and add."
      lineDistance={lineDistance(plan, units)}
    >
      <table className="pg-table">
        <thead>
          <tr>
            {["have", "what", "how much", "remark"].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {materialRows(plan, units, allowance).map((row) => (
            <tr key={`${row.what} ${row.remark}`}>
              <td>
                <span className="pg-box" />
              </td>
              <th scope="row">{row.what}</th>
              <td className="pg-number">
                <b>{row.amount}</b>
              </td>
              <td>{row.remark}</td>
            </tr>
          ))}
          {["", " ", "  "].map((blank) => (
            <tr key={blank}>
              <td>
                <span className="pg-box" />
              </td>
              <td />
              <td />
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </SheetPage>
  );
}
