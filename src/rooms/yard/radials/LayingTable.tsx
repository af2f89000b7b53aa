import { layings } from "../../../../engine/index.ts";
import { useAnswer } from "../../../store/useAnswer.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { readoutRows } from "./layingRows.ts";

/** Few radials: what the full answer would be if they lay otherwise. */
export function LayingTable() {
  const plan = usePlan((s) => s.plan);
  const found = useAnswer((s) => s.layings);
  const asked = layings(plan);
  if (asked.length === 0) return null;
  const rows = found && readoutRows(found, plan);
  return (
    <section className="radials__part">
      <h3>If they lay otherwise</h3>
      <p className="soft">
        With fewer than eight radials, how they lie outweighs most else, and nobody knows it exactly. The spread below
        is part of the answer.
      </p>
      {rows ? (
        <table className="radials__table">
          <thead>
            <tr>
              <th scope="col">radials</th>
              <th scope="col">feed</th>
              <th scope="col">SWR</th>
              <th scope="col">{`forward at ${rows.elevation_deg}°`}</th>
              <th scope="col">front-to-back</th>
            </tr>
          </thead>
          <tbody>
            {rows.list.map((row) => (
              <tr key={row.lie} data-now={row.isNow || undefined}>
                <th scope="row">
                  {row.lie}
                  {row.isNow && <span className="radials__now"> as planned</span>}
                </th>
                <td>{row.impedance}</td>
                <td>{row.swr}</td>
                <td>{row.forward}</td>
                <td>{row.frontToBack}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : (
        <p className="soft">They are worked out when the full-wave answer and the sweeps are there.</p>
      )}
    </section>
  );
}
