import { describe, expect, test } from "vitest";
import type { LabelWish } from "../../../src/rooms/yard/placeLabels.ts";
import { boxAround, isCrowded, overlap, placeLabels } from "../../../src/rooms/yard/placeLabels.ts";
import { fitPlanFrame, toSheet } from "../../../src/rooms/yard/planFrame.ts";
import { dimensionLine, planLabels, sideToward, spacingText } from "../../../src/rooms/yard/planLabels.ts";
import { driven, frequency_MHz, reflector, yardPlan } from "./yardPlan.ts";

const sheet = { width: 400, height: 300 };
const wish = (id: string, x: number, y: number, prefer?: LabelWish["prefer"]): LabelWish => ({
  id,
  text: "reflector 10.65 m",
  anchor: { x, y },
  gap_px: 12,
  ...(prefer ? { prefer } : {}),
});

describe("placeLabels", () => {
  test("with room, a label goes to the side it likes, at its gap", () => {
    const [right, above] = placeLabels([wish("a", 100, 100), wish("b", 200, 200, ["above"])], [], sheet, 13);
    expect(right).toMatchObject({ textAnchor: "start", x: 112, isFar: false });
    expect(above).toMatchObject({ textAnchor: "middle", x: 200, isFar: false });
    expect(above!.box.y + above!.box.height).toBeCloseTo(188, 9);
  });

  test("an obstacle, another label or the edge sends it to another side", () => {
    const blocked = placeLabels([wish("a", 200, 150)], [{ x: 205, y: 100, width: 190, height: 100 }], sheet, 13)[0]!;
    expect(blocked.textAnchor).not.toBe("start");
    const two = placeLabels([wish("a", 200, 150), wish("b", 204, 152)], [], sheet, 13);
    expect(overlap(two[0]!.box, two[1]!.box)).toBe(0);
    const edge = placeLabels([wish("a", 390, 150)], [], sheet, 13)[0]!;
    expect(edge.box.x + edge.box.width).toBeLessThanOrEqual(400);
  });

  test("where everything near is taken it goes far, and says so", () => {
    const label = placeLabels([wish("a", 200, 150)], [boxAround({ x: 200, y: 150 }, 35)], sheet, 13)[0]!;
    expect(label.isFar).toBe(true);
    expect(overlap(label.box, boxAround({ x: 200, y: 150 }, 35))).toBe(0);
  });

  test("isCrowded sees labels on each other, on obstacles and over the edge", () => {
    const clear = placeLabels([wish("a", 100, 100)], [], sheet, 13);
    expect(isCrowded(clear, [], sheet)).toBe(false);
    expect(isCrowded([...clear, ...clear], [], sheet)).toBe(true);
    expect(isCrowded(clear, [boxAround({ x: 130, y: 100 }, 5)], sheet)).toBe(true);
    expect(isCrowded(clear, [], { width: 150, height: 300 })).toBe(true);
  });
});

describe("labels of the view from above", () => {
  const plan = (heading_deg: number) => yardPlan({ site: { heading_deg, ituRegion: 1 } });

  // 274 px is what a phone of 320 leaves; 437 the column of a wide screen.
  test.each([274, 344, 437])("at %i px, no label lies on another or hangs over the edge, at any heading", (width) => {
    const height = Math.max(270, width * 0.86);
    for (let heading = 0; heading < 360; heading += 5) {
      const frame = fitPlanFrame(plan(heading), width, height);
      const { wishes, obstacles } = planLabels(frame, plan(heading), "metric", [], width < 340);
      const labels = placeLabels(wishes, obstacles, { width, height }, 13);
      expect(labels.map((label) => label.id)).toEqual([
        "heading",
        "spacing",
        "element front",
        "element back",
        "radials",
      ]);
      expect(isCrowded(labels, [], { width, height }), `heading ${heading}`).toBe(false);
    }
  });

  test("the dimension line runs on the right hand of the beam, as long as the spacing", () => {
    for (const heading of [0, 62, 200, 305]) {
      const frame = fitPlanFrame(plan(heading), 400, 340);
      const line = dimensionLine(frame, heading, driven, reflector);
      expect(Math.hypot(line.to.x - line.from.x, line.to.y - line.from.y)).toBeCloseTo(8.4 * frame.pxPerM, 9);
      const right = toSheet(frame, heading, 0, -24 / frame.pxPerM);
      expect(line.from.x).toBeCloseTo(right.x, 9);
      expect(line.from.y).toBeCloseTo(right.y, 9);
    }
  });

  test("elements on one spot do not break the drawing", () => {
    const frame = fitPlanFrame(plan(0), 400, 340);
    const line = dimensionLine(frame, 0, driven, { ...reflector, forward_m: 0 });
    for (const n of [line.from.x, line.from.y, line.to.x, line.to.y]) expect(n).toSatisfy(Number.isFinite);
  });

  test("unlike radials are said with each element", () => {
    const unlike = yardPlan({
      elements: [driven, { ...reflector, radials: { ...reflector.radials, count: 8 } }],
    });
    const { wishes } = planLabels(fitPlanFrame(unlike, 400, 340), unlike, "metric", [], false);
    const texts = wishes.map((w) => w.text);
    expect(texts).toContain("driven, 16 × 4.00 m");
    expect(texts).toContain("reflector, 8 × 4.00 m");
    expect(wishes.some((w) => w.id === "radials")).toBe(false);
  });
});

test("spacingText says length and wavelengths", () => {
  expect(spacingText(8.4, frequency_MHz, "metric")).toBe("8.40 m, 0.200 λ");
  expect(spacingText(8.4, frequency_MHz, "imperial")).toBe("27 ft 6 3/4 in, 0.200 λ");
});

test.each([
  [0, "above"],
  [44, "above-right"],
  [90, "right"],
  [-90, "left"],
  [180, "below"],
  [340, "above"],
  [700, "above"],
] as const)("bearing %i is %s", (bearing, side) => {
  expect(sideToward(bearing)).toBe(side);
});
