/** What is wrong with a day as typed, or null: it has to be one of the calendar, year-month-day. */
export function dayOrWhy(text: string): string | null {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return "A day is written year-month-day, such as 2026-05-31.";
  const [year, month, day] = parts.slice(1).map(Number) as [number, number, number];
  const at = new Date(Date.UTC(year, month - 1, day));
  // A day that the month does not have is one of another month.
  if (at.getUTCMonth() === month - 1) return null;
  return `The calendar has no ${text}.`;
}
