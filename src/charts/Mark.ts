/** A number or word on a chart's sheet. */
export interface Mark {
  readonly id: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  /** Which part of the text stands at x. */
  readonly side: "start" | "middle" | "end";
  readonly kind: "number" | "path" | "live" | "word";
}
