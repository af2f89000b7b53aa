import { describe, expect, test } from "vitest";
import {
  decodePlanLink,
  encodePlanLink,
  loneVertical,
  type SavedPlan,
  withElementHeight,
  withPin,
} from "../../../engine/index.ts";
import { fromBase64url, toBase64url } from "../../../engine/plan/link/base64url.ts";
import { checksum } from "../../../engine/plan/link/checksum.ts";
import { linkWords } from "../../../engine/plan/link/linkWords.ts";
import { packData } from "../../../engine/plan/link/packData.ts";
import { textFromBytes, textToBytes } from "../../../engine/plan/link/textBytes.ts";
import { unpackData } from "../../../engine/plan/link/unpackData.ts";
import { twoElements } from "../../fixtures/plan/twoElements.ts";

const pinned = withPin(
  {
    ...twoElements,
    title: "Zwölf Drähte 🏝 naar het westen",
    site: { heading_deg: 62, ituRegion: 1 },
    band: { label: "40 m", from_MHz: 7, to_MHz: 7.2 },
    interest: { elevation_deg: 8, rearSector_deg: 120, azimuthCutElevation_deg: 10 },
  },
  "One vertical",
  loneVertical(twoElements),
);
const saved: SavedPlan = { ...(pinned.ok ? pinned.value : twoElements), baseline: "pin-1" };
const link = encodePlanLink(saved);
/** `twoElements`, as the first release wrote it. */
const firstLink =
  "#p1=JAjLFQgHgIGCQYMDC0dhcmRlbiBwYWlyhATBBf4DhQgDiIuMTY0EBf0Dho6HBwIICJC2kUCSQJMEgQj-A5RClZaYCAGImaIIBKNQpEWTQJQEEP8DCAiQt5EFVf8DkkCTBLMI_gOUQpWWmAgBiJqiCQI";
const code = (hash: string): string => {
  const result = decodePlanLink(hash);
  return result.ok ? "read" : result.problems[0]!.code;
};

describe("a plan as a link", () => {
  test("comes back exactly, and fits in a message", () => {
    expect(decodePlanLink(link)).toEqual({ ok: true, value: saved });
    expect(link).toMatch(/^#p1=[\w-]+$/);
    expect(link.length).toBeLessThan(1500);
  });
  test("stays short when nothing repeats", () => {
    const different = saved.pins!.map((pin) => ({ ...pin, plan: withElementHeight(pin.plan, "driven", 10.333) }));
    expect(encodePlanLink({ ...saved, pins: different }).length).toBeLessThan(1500);
  });
  test("a link made by the first release is still read", () => {
    // Written out once and never to be changed: it holds the order of linkWords and tags to what is out in the world.
    expect(decodePlanLink(firstLink)).toEqual({ ok: true, value: twoElements });
  });
  test("without #, as a whole address, wrapped by a mail program", () => {
    const wrapped = `${link.slice(0, 70)}\r\n ${link.slice(70)}\n`;
    for (const variant of [link.slice(1), `https://example.org/a#b/${link}`, wrapped])
      expect(decodePlanLink(variant)).toEqual({ ok: true, value: saved });
  });
  test("no plan, a newer form, a damaged one", () => {
    expect(code("")).toBe("no-plan-in-link");
    expect(code("#yard")).toBe("no-plan-in-link");
    expect(code("#p2=AAAA")).toBe("newer-version");
    expect(code("#p1=")).toBe("damaged-link");
    expect(code(`${link}=`)).toBe("damaged-link");
    expect(code(link.slice(0, -1))).toBe("damaged-link");
  });
  test("no single wrong, lost or doubled character passes", () => {
    for (let i = 4; i < link.length; i++) {
      const wrong = link[i] === "A" ? "B" : "A";
      for (const middle of [wrong, "", `${link[i]}${link[i]}`])
        expect(`${i} ${code(link.slice(0, i) + middle + link.slice(i + 1))}`).toBe(`${i} damaged-link`);
    }
  });
  test("what unpacks but is no good plan is checked like a file", () => {
    expect(code(encodePlanLink({ ...saved, frequency_MHz: 0 }))).toBe("out-of-range");
    expect(code(encodePlanLink({ ...saved, frequency_MHz: Number.NaN }))).toBe("wrong-type");
  });
});

/** A list of two of the list before it, forty times over: two to the fortieth values from 160 bytes. */
function bomb(): number[] {
  const again = (n: number): number[] => [9, n];
  const bytes = [7, 41, 7, 0];
  for (let n = 0; n < 40; n++) bytes.push(7, 2, ...again(n), ...again(n));
  return bytes;
}

describe("packed bytes", () => {
  test("the words a link may use fit in one byte and are all different", () => {
    expect(linkWords.length).toBeLessThanOrEqual(126);
    expect(new Set(linkWords).size).toBe(linkWords.length);
  });
  test.each([
    0,
    1,
    63,
    64,
    0.1,
    -0.1,
    -1,
    7.05,
    1e21,
    5e-324,
    1.7976931348623157e308,
    0.30000000000000004,
    123456789012345680000,
    2 ** 53 - 1,
    2 ** 53,
    1 / 3,
    -1 / 3,
  ])("the number %d", (number) => {
    expect(unpackData(packData(number))).toBe(number);
  });
  test("all bytes there are, and texts with lone surrogates", () => {
    const bytes = Array.from({ length: 256 }, (_, i) => i);
    for (const length of [0, 1, 2, 3, 256])
      expect(fromBase64url(toBase64url(bytes.slice(0, length)))).toEqual(bytes.slice(0, length));
    for (const text of ["", "aé€🏝", "\ud83c", "\udfdd\ud83c", "\0"])
      expect(textFromBytes(textToBytes(text))).toBe(text);
    expect(textToBytes("aé€🏝")).toEqual([...new TextEncoder().encode("aé€🏝")]);
  });
  test("CRC-32 of 123456789 is CBF43926, the check value every description of it gives", () => {
    expect(checksum(textToBytes("123456789"))).toEqual([0xcb, 0xf4, 0x39, 0x26]);
  });
  test("a part that occurs again costs two bytes", () => {
    const part = { count: 16, length_m: 3.7 };
    expect(packData([part, { ...part }])).toHaveLength(packData([part]).length + 2);
    expect(unpackData(packData([part, { ...part }]))).toEqual([part, part]);
  });
  test("lists in lists without end do not exhaust the stack", () => {
    const deep = [...Array.from({ length: 200_000 }, (_, i) => (i % 2 ? 1 : 7)), 64];
    expect(unpackData(deep)).toBeUndefined();
  });
  test("bytes that are no text", () => {
    for (const bytes of [[0x80], [0xc3], [0xc3, 0x41], [0xf7, 0xbf, 0xbf, 0xbf]]) {
      expect(textFromBytes(bytes)).toBeUndefined();
      expect(unpackData([3, bytes.length, ...bytes])).toBeUndefined();
    }
  });
  test("bytes of no sense give nothing, and a bomb is counted before it goes off", () => {
    for (const bytes of [
      [],
      [7],
      [7, 255, 255, 255, 255, 127],
      [3, 200, 1],
      [9, 0],
      [8, 1, 0, 0],
      [255],
      [0, 0],
      [6, 1],
      [4, 128],
    ])
      expect({ bytes, unpacked: unpackData(bytes) }).toEqual({ bytes, unpacked: undefined });
    const packed = bomb();
    expect(unpackData(packed)).toHaveLength(41);
    expect(code(`#p1=${toBase64url([...checksum(packed), ...packed])}`)).toBe("too-large");
  });
});
