import type { ReactNode } from "react";

interface Props {
  readonly caption: string;
  readonly heads: readonly ReactNode[];
  /** First cell heads its row. */
  readonly rows: readonly (readonly ReactNode[])[];
}

/** A table that stands open; where it is wider than its place, it can be scrolled, by keyboard too. */
export function RoomTable({ caption, heads, rows }: Props) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard
    <section className="fr-scroll" tabIndex={0} aria-label={caption}>
      <table className="fr-table">
        <caption>{caption}</caption>
        <thead>
          <tr>
            {heads.map((head, i) =>
              head === "" ? (
                // biome-ignore lint/suspicious/noArrayIndexKey: the columns of a table do not move
                <td key={i} />
              ) : (
                // biome-ignore lint/suspicious/noArrayIndexKey: the columns of a table do not move
                <th key={i} scope="col">
                  {head}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map(([head, ...cells], i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows have nothing else that is theirs alone
            <tr key={i}>
              <th scope="row">{head}</th>
              {cells.map((cell, j) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: the cells of a row do not move
                <td key={j}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
