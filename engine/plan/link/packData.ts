import { isFields } from "../Findings.ts";
import { orderedKeys } from "../orderedKeys.ts";
import type { PlainData } from "../plainCopy.ts";
import { linkWords } from "./linkWords.ts";
import { tags } from "./tags.ts";
import { textToBytes } from "./textBytes.ts";

const placeOfWord = new Map(linkWords.map((word, place) => [word, place]));

/**
 * Plain data as few bytes (see `tags`): known words are one byte, decimals keep their digits rather than their bits,
 * and a list or group that occurs again is a reference. Exact for every finite number and every text.
 */
export function packData(data: PlainData): number[] {
  /** Number of each list and group packed so far, by its content. */
  const seen = new Map<string, number>();

  const pack = (value: PlainData): number[] => {
    // As in a file, a number that is not finite becomes null (and the check names it on the way back).
    if (value === null || (typeof value === "number" && !Number.isFinite(value))) return [tags.null];
    if (typeof value === "boolean") return [value ? tags.true : tags.false];
    if (typeof value === "number") return packNumber(value);
    if (typeof value === "string") return packText(value);
    const content = JSON.stringify(value);
    const earlier = seen.get(content);
    if (earlier !== undefined) return [tags.again, ...packCount(earlier)];
    const bytes = isFields(value) ? packFields(value) : packList(value as readonly PlainData[]);
    seen.set(content, seen.size);
    return bytes;
  };
  const packList = (items: readonly PlainData[]): number[] => [
    tags.list,
    ...packCount(items.length),
    ...items.flatMap(pack),
  ];
  const packFields = (fields: { readonly [key: string]: PlainData }): number[] => {
    const keys = orderedKeys(fields);
    return [
      tags.fields,
      ...packCount(keys.length),
      ...keys.flatMap((key) => [...packText(key), ...pack(fields[key]!)]),
    ];
  };
  return pack(data);
}

/** Seven bits a byte, low ones first, the top bit set on all but the last. */
function packCount(count: number): number[] {
  const bytes: number[] = [];
  let rest = count;
  for (; rest >= 0x80; rest = Math.floor(rest / 0x80)) bytes.push((rest % 0x80) | 0x80);
  return [...bytes, rest];
}

function packText(text: string): number[] {
  const place = placeOfWord.get(text);
  if (place !== undefined) return [tags.word + place];
  const bytes = textToBytes(text);
  return [tags.text, ...packCount(bytes.length), ...bytes];
}

function packNumber(value: number): number[] {
  if (Number.isInteger(value) && value >= 0 && value < 64) return [tags.small + value];
  // The shortest decimal that reads back as this number, as the language prints it: digits and a power of ten.
  const [, digits, exponent] = /^(.*)e(.*)$/.exec(Math.abs(value).toExponential())!;
  const [whole, fraction = ""] = digits!.split(".");
  const mantissa = Number(whole! + fraction);
  if (!Number.isSafeInteger(mantissa)) {
    const view = new DataView(new ArrayBuffer(8));
    view.setFloat64(0, value);
    return [tags.double, ...new Uint8Array(view.buffer)];
  }
  return [
    value < 0 ? tags.negative : tags.decimal,
    ...packCount(mantissa),
    ...packCount(Number(exponent) - fraction.length + 512),
  ];
}
