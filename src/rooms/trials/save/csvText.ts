/** A table as a spreadsheet reads it: what it is in lines of a "#" each, then heads with their units, then rows. */
export function csvText(
  about: readonly string[],
  heads: readonly string[],
  rows: readonly (readonly (number | string | null)[])[],
): string {
  const line = (cells: readonly (number | string | null)[]) => cells.map(cell).join(",");
  return `${[...about.map((one) => `# ${one.replaceAll(/\s+/g, " ")}`), line(heads), ...rows.map(line)].join("\r\n")}\r\n`;
}

/** Numbers in full, with a point; what is not finite is left empty. Text that could be taken for something else is quoted. */
function cell(value: number | string | null): string {
  if (value === null) return "";
  if (typeof value === "number") return Number.isFinite(value) ? String(Number(value.toPrecision(9))) : "";
  // A text that begins like a formula is one to a spreadsheet.
  const plain = /^[=+\-@]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
