import { useState } from "react";

export interface FigureTableProps {
  readonly caption: string;
  readonly heads: readonly string[];
  /** Called only while the table is open, so that a closed one costs a drag nothing. First cell heads its row. */
  readonly rows: () => readonly (readonly string[])[];
}

/** A chart's figures, folded away under it. */
export function FigureTable({ caption, heads, rows }: FigureTableProps) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details className="cf-figures" onToggle={(e) => setIsOpen(e.currentTarget.open)}>
      <summary>
        Figures<span className="visually-hidden"> of this chart as a table</span>
      </summary>
      {isOpen && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard
        <section className="cf-scroll" tabIndex={0} aria-label={caption}>
          <table className="cf-table">
            <caption>{caption}</caption>
            <thead>
              <tr>
                {heads.map((h) => (
                  <th key={h} scope="col">
                    {h}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows().map(([head, ...cells]) => (
                <tr key={head}>
                  <th scope="row">{head}</th>
                  {cells.map((c, i) => (
                    <td key={heads[i + 1]}>{c}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </details>
  );
}
