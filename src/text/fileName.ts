/** A file name that every system takes, from a plan's title: letters and digits of any script, words joined by "-". */
export function fileName(title: string, ending: string): string {
  const words = title.normalize("NFC").match(/[\p{L}\p{N}]+/gu) ?? [];
  const stem = words.join("-").slice(0, 60).replace(/-+$/, "").toLowerCase();
  return `${stem || "plan"}${ending}`;
}
