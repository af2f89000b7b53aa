import type { BenchAllowance, SavedPlan } from "../../../../engine/index.ts";
import { figure } from "../../../charts/figure.ts";
import type { Units } from "../../../store/useSettings.ts";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";
import { benchOf } from "../useBenchEdit.ts";
import { cutList, materials } from "./cutList.ts";
import { SheetPage } from "./SheetPage.tsx";
import { lineDistance } from "./tallest.ts";

interface Props {
  readonly plan: SavedPlan;
  readonly units: Units;
  readonly allowance: BenchAllowance;
}

/** What to cut, how long at first, and how long it is to be in the end. */
export function CutListSheet({ plan, units, allowance }: Props) {
  const pieces = cutList(plan, allowance);
  const length = (m: number) => formatQuantity(m, "length_m", units);
  const thick = (mm: number) => formatQuantity(mm, "diameter_mm", units);
  const isCorrected = benchOf(plan).asMeasured !== undefined;
  const heads = ["part", "material", "pieces", "cut at first", "to be in the end", "is now", "done"];
  return (
    <SheetPage
      name="Cut list"
      about={`Cut long first: uprights ${figure(allowance.driven_percent, 1)} %${plan.elements.length > 1 ? ` and ${figure(allowance.reflector_percent, 1)} %` : ""}, radials ${figure(allowance.radial_percent, 1)} %. The uprights are trimmed at the meter, never to this sheet alone. Measure from the base’s joint to the tip, tails and loops with it.`}
      lineDistance={lineDistance(plan, units)}
    >
      <table className="pg-table pg-cuts">
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
          {pieces.map((one) => (
            <tr key={`${one.part} ${one.finished_m}`}>
              <th scope="row">{one.part}</th>
              <td>
                {one.conductor}, {thick(one.diameter_mm)}
              </td>
              <td className="pg-number">{one.count}</td>
              <td className="pg-number">
                <b>{length(one.cut_m)}</b>
              </td>
              <td className="pg-number">{length(one.finished_m)}</td>
              <td className="pg-blank" />
              <td>
                <span className="pg-box" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <table className="pg-table">
        <caption>In all, as cut at first</caption>
        <tbody>
          {materials(pieces).map((one) => (
            <tr key={`${one.conductor} ${one.diameter_mm}`}>
              <th scope="row">
                {one.conductor}, {thick(one.diameter_mm)}
              </th>
              <td className="pg-number">{one.pieces === 1 ? "1 piece" : `${one.pieces} pieces`}</td>
              <td className="pg-number">
                <b>{length(one.total_m)}</b>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="pg-about">
        {isCorrected
          ? "Lengths to cut; by the readings the uprights act somewhat otherwise, and that is reckoned in. "
          : "Lengths are those the model’s bare wire has. Insulation makes a wire act 1 to 3 percent longer than it is (common practice, no source): another reason to cut long and trim. "}
      </p>
    </SheetPage>
  );
}
