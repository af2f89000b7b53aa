import { fileName } from "../../../text/fileName.ts";
import { download } from "../../../ui/download.ts";
import { say } from "../../../ui/say.ts";

/** Hands a text out as a file named after what it is, and says so. */
export function saveAs(what: string, ending: string, text: string, type: string): void {
  const name = fileName(what, ending);
  download(name, text, type);
  say(`Saved as ${name}.`);
}
