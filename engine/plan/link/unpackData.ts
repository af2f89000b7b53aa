import { limits } from "../limits.ts";
import type { PlainData } from "../plainCopy.ts";
import { linkWords } from "./linkWords.ts";
import { tags } from "./tags.ts";
import { textFromBytes } from "./textBytes.ts";

/**
 * What `packData` packed, or undefined when the bytes are not of its making. Repeated parts come back as one shared
 * object; `checkSavedPlan` copies them apart and counts them.
 */
export function unpackData(bytes: readonly number[]): PlainData | undefined {
  const seen: PlainData[] = [];
  let at = 0;
  let sound = true;

  const bad = (): null => {
    sound = false;
    at = bytes.length;
    return null;
  };
  const byte = (): number => bytes[at++] ?? bad() ?? 0;
  const count = (): number => {
    let total = 0;
    for (let scale = 1; scale <= 2 ** 49; scale *= 0x80) {
      const next = byte();
      total += (next & 0x7f) * scale;
      if (next < 0x80) return total;
    }
    return bad() ?? 0;
  };
  const textOf = (tag: number): string | null => {
    if (tag >= tags.word) return linkWords[tag - tags.word] ?? bad();
    if (tag !== tags.text) return bad();
    const length = count();
    // A length that lies takes `at` past the end, where nothing more is sound.
    const text = textFromBytes(bytes.slice(at, at + length));
    at += length;
    return text ?? bad();
  };

  const unpack = (depth: number): PlainData => {
    const tag = byte();
    if (tag >= tags.word || tag === tags.text) return textOf(tag);
    if (tag >= tags.small) return tag - tags.small;
    if (tag === tags.null) return null;
    if (tag === tags.true || tag === tags.false) return tag === tags.true;
    if (tag === tags.decimal || tag === tags.negative) {
      const size = Number(`${count()}e${count() - 512}`);
      return tag === tags.negative ? -size : size;
    }
    if (tag === tags.double) {
      const view = new DataView(new ArrayBuffer(8));
      for (let i = 0; i < 8; i++) view.setUint8(i, byte());
      return view.getFloat64(0);
    }
    if (tag === tags.again) return seen[count()] ?? bad();
    if ((tag !== tags.list && tag !== tags.fields) || depth >= limits.depth) return bad();

    const items: PlainData[] = [];
    const entries: [string, PlainData][] = [];
    const total = count();
    for (let i = 0; i < total && sound; i++)
      if (tag === tags.list) items.push(unpack(depth + 1));
      else entries.push([textOf(byte()) ?? "", unpack(depth + 1)]);
    const whole = tag === tags.list ? items : Object.fromEntries(entries);
    seen.push(whole);
    return whole;
  };

  const data = unpack(0);
  return sound && at === bytes.length ? data : undefined;
}
