import { memo } from "react";
import type { DrawnTrace } from "./DrawnTrace.ts";
import { traceClass } from "./traceClass.ts";

/** The lines of a chart's traces, in the order given. */
export function TraceLines({ drawn }: { readonly drawn: readonly DrawnTrace[] }) {
  return drawn.map((t) => <TraceLine key={t.id} className={traceClass(t)} d={t.path} />);
}

const TraceLine = memo(function TraceLine(props: { readonly className: string; readonly d: string }) {
  return <path {...props} />;
});
