import { memo } from "react";
import { markPath } from "./markPath.ts";
import { traceClass } from "./traceClass.ts";
import "./TraceKey.css";

interface Entry {
  readonly id: string;
  readonly name: string;
  readonly role: "live" | "pin";
  readonly style: number;
  /** What the marker reads on this line. */
  readonly value: string;
}

/** Every line of a chart by dash, marker and name, with what the marker reads on it. */
export function TraceKey({ where, entries }: { readonly where: string; readonly entries: readonly Entry[] }) {
  return (
    <div className="tk">
      <div className="tk-where">{where}</div>
      <ul className="tk-list">
        {entries.map(({ id, name, role, style, value }) => (
          <KeyRow key={id} name={name} role={role} style={style} value={value} />
        ))}
      </ul>
    </div>
  );
}

const KeyRow = memo(function KeyRow(e: Omit<Entry, "id">) {
  return (
    <li className="tk-row">
      <svg width="34" height="14" aria-hidden="true">
        <path className={traceClass(e)} d="M0,7H34" />
        <path className={`tr-mark tr-mark-${e.role}`} d={markPath(e, [17, 7])} />
      </svg>
      <span className={e.role === "live" ? "tk-name tk-live" : "tk-name"}>{e.name}</span>
      <span className={e.role === "live" ? "tk-value tk-live" : "tk-value"}>{e.value}</span>
    </li>
  );
});
