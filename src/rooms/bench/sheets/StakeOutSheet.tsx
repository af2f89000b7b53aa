import type { SavedPlan } from "../../../../engine/index.ts";
import type { Units } from "../../../store/useSettings.ts";
import { formatQuantity } from "../../../ui/quantity/formatQuantity.ts";
import { headingOf } from "../../yard/heading.ts";
import { benchOf } from "../useBenchEdit.ts";
import { SheetPage } from "./SheetPage.tsx";
import { StakeSketch } from "./StakeSketch.tsx";
import { stakeOut } from "./stakeOut.ts";
import { lineDistance } from "./tallest.ts";

/** Where to drive the stakes: a sketch to scale, distances and bearings from one datum, diagonals that check them. */
export function StakeOutSheet({ plan, units }: { readonly plan: SavedPlan; readonly units: Units }) {
  const { declination_deg, declinationSource } = benchOf(plan);
  const { stakes, diagonals } = stakeOut(plan, declination_deg);
  const length = (m: number) => formatQuantity(m, "length_m", units);
  const bearing = (deg: number) => formatQuantity(Math.round(deg * 10) / 10, "bearing_deg", units);
  const isTrueOnly = declination_deg === undefined;
  return (
    <SheetPage
      name="Stake-out"
      about={`Stand at A, the datum. The beam looks to ${bearing(headingOf(plan))} true. ${
        isTrueOnly
          ? "Bearings are true: a compass is off by the declination, which is not stated."
          : `The compass points ${formatQuantity(Math.abs(declination_deg), "angle_deg", units)} ${declination_deg < 0 ? "west" : "east"} of true north (${declinationSource ?? "source and year not stated"}).`
      } Keep iron and phones from the compass. Tape level, not along the slope.`}
      lineDistance={lineDistance(plan, units)}
    >
      <StakeSketch plan={plan} units={units} stakes={stakes} declination_deg={declination_deg} />
      <table className="pg-table">
        <thead>
          <tr>
            {["stake", "what", "from A", "true bearing", ...(isTrueOnly ? [] : ["by compass"]), "done"].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {stakes.map((one) => (
            <tr key={one.letter}>
              <th scope="row">
                <b>{one.letter}</b>
              </th>
              <td>{one.name}</td>
              <td className="pg-number">{one.trueBearing_deg === null ? "–" : length(one.distance_m)}</td>
              <td className="pg-number">{one.trueBearing_deg === null ? "–" : bearing(one.trueBearing_deg)}</td>
              {!isTrueOnly && (
                <td className="pg-number">
                  {one.magneticBearing_deg === null ? "–" : bearing(one.magneticBearing_deg)}
                </td>
              )}
              <td>
                <span className="pg-box" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {diagonals.length > 0 && (
        <section aria-label="Diagonals">
          <h4>Diagonals to check</h4>
          <ul className="pg-diagonals">
            {diagonals.map((one) => (
              <li key={one.from + one.to}>
                <span className="pg-box" />{" "}
                <b>
                  {one.from}–{one.to}
                </b>{" "}
                {length(one.distance_m)}
              </li>
            ))}
          </ul>
          <p className="pg-about">
            If they differ by more than a hand, a bearing is off: move the stake, not the tape.
          </p>
        </section>
      )}
    </SheetPage>
  );
}
