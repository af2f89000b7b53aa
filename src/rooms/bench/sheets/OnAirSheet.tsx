import type { SavedPlan } from "../../../../engine/index.ts";
import type { Units } from "../../../store/useSettings.ts";
import { SheetPage } from "./SheetPage.tsx";
import { lineDistance } from "./tallest.ts";

const pairs = 30;

/** Blank rows for alternating pairs, and how to fill them. */
export function OnAirSheet({ plan, units }: { readonly plan: SavedPlan; readonly units: Units }) {
  return (
    <SheetPage
      name="On-air test"
      about="One station, far off, on the beam’s line. Change direction after every over; same power, same scale, the two readings of a pair close together. Fill all of it: a few pairs prove nothing while signals fade."
      lineDistance={lineDistance(plan, units)}
    >
      <div className="pg-blanks">
        <span>station</span>
        <span>distance and bearing</span>
        <span>day, from and to</span>
        <span>ground</span>
        <span>readings in: dB over noise · S-meter dB · other</span>
      </div>
      <table className="pg-table pg-rows">
        <thead>
          <tr>
            {["pair", "time", "forward, dB", "reversed, dB", "forward − reversed", "remark"].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: pairs }, (_, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: blank rows have nothing but their number
            <tr key={i}>
              <th scope="row">
                {i + 1}
                <span className="pg-order">{i % 2 === 0 ? " forward first" : " reversed first"}</span>
              </th>
              <td />
              <td />
              <td />
              <td />
              <td />
            </tr>
          ))}
        </tbody>
      </table>
      <p className="pg-about">
        Take the middle value of the differences. With fading of 6 dB in each reading, twenty pairs leave it uncertain
        by about 2 dB, fifty by about 1 dB. Type the pairs into the part “On air”.
      </p>
    </SheetPage>
  );
}
