import { failed, type Result } from "../result.ts";
import { checkSavedPlan } from "./checkSavedPlan.ts";
import { fromBase64url, toBase64url } from "./link/base64url.ts";
import { checksum } from "./link/checksum.ts";
import { packData } from "./link/packData.ts";
import { unpackData } from "./link/unpackData.ts";
import type { PlainData } from "./plainCopy.ts";
import type { SavedPlan } from "./SavedPlan.ts";

/** The whole plan as the hash of an address, "#p1=…": it travels in the link itself and reaches no server. */
export function encodePlanLink(plan: SavedPlan): string {
  // A SavedPlan is plain data: every field of it is a number, text, list or group.
  const bytes = packData(plan as unknown as PlainData);
  return `#p1=${toBase64url([...checksum(bytes), ...bytes])}`;
}

/**
 * The plan in a link: the hash alone, with or without "#", or a whole address. Blanks and line breaks that a mail
 * program put in are skipped.
 */
export function decodePlanLink(hash: string): Result<SavedPlan> {
  const text = hash.slice(hash.lastIndexOf("#") + 1).replace(/\s+/g, "");
  const [, form, coded] = /^p(\d{1,6})=(.*)$/.exec(text) ?? [];
  if (form === undefined || coded === undefined)
    return failed({
      code: "no-plan-in-link",
      where: "",
      message: "The link holds no plan; one that does has #p1= in it.",
    });
  if (form !== "1")
    return failed({
      code: "newer-version",
      where: "",
      message: `The link is of form ${form}; this page reads form 1. Open it with a newer page.`,
    });

  const bytes = fromBase64url(coded);
  const packed = bytes?.slice(4);
  const sound = packed && checksum(packed).every((byte, i) => byte === bytes?.[i]);
  const data = sound ? unpackData(packed) : undefined;
  if (data === undefined)
    return failed({
      code: "damaged-link",
      where: "",
      message: `The link is damaged: its ${coded.length} characters after #p1= do not agree with each other. Copy it again, whole.`,
    });
  return checkSavedPlan(data);
}
