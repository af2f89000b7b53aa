export type PaperSize = "a4" | "letter";

export const paperSizes: readonly { readonly value: PaperSize; readonly label: string }[] = [
  { value: "a4", label: "A4" },
  { value: "letter", label: "Letter" },
];
