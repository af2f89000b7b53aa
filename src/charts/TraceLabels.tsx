import type { DrawnTrace } from "./DrawnTrace.ts";

/** Names standing beside their lines; drawn last, with a halo, so that nothing runs through them. */
export function TraceLabels({ drawn }: { readonly drawn: readonly DrawnTrace[] }) {
  return drawn.map(
    ({ id, name, role, label }) =>
      label && (
        <text
          key={id}
          className={`tr-label tr-label-${role}`}
          x={(label.x + label.width / 2).toFixed(1)}
          y={(label.y + label.height / 2).toFixed(1)}
        >
          {name}
        </text>
      ),
  );
}
