const two = (n: number) => String(n).padStart(2, "0");

/** The day by the person's own clock, year-month-day. */
export function today(now: Date = new Date()): string {
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** Hour:minute by the person's own clock. */
export function timeNow(now: Date = new Date()): string {
  return `${two(now.getHours())}:${two(now.getMinutes())}`;
}
