import type { DrawnTrace } from "./DrawnTrace.ts";
import { traceClass } from "./traceClass.ts";

/** The lines of a chart's traces, in the order given. */
export function TraceLines({ drawn }: { readonly drawn: readonly DrawnTrace[] }) {
  return drawn.map((t) => <path key={t.id} className={traceClass(t)} d={t.path} />);
}
