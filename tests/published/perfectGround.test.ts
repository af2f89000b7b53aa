import { expect, test } from "vitest";
import { solveWires } from "../../engine/index.ts";
import fixture from "../fixtures/perfectGround.json" with { type: "json" };
import { compareCase } from "../support/compareCase.ts";
import { findRoot } from "../support/findRoot.ts";
import { okValue } from "../support/okValue.ts";
import type { ReferenceCase } from "../support/ReferenceCase.ts";
import { uprights } from "../support/uprights.ts";

/*
 * Against an independent, converged solution of Hallén's equation with the exact kernel of a tube (computed, not
 * published). Tolerances are the spread between models of the source and of the kernel, by thickness of the wire; see
 * the fixture.
 */
const cases = (fixture.cases as unknown as ReferenceCase[]).filter((c) => !c.freeSpace);

test("every kind of case is there", () => {
  expect(cases).toHaveLength(23);
  const bases = new Set(cases.flatMap((c) => c.elements.map((e) => e.base)));
  expect([...bases].sort()).toEqual(["current source", "driven", "load", "open", "short"]);
});

test.each(cases.map((c) => [c.id, c] as const))("%s", (_, reference) => {
  const all = compareCase(reference, fixture.tolerances);
  expect(all.length).toBeGreaterThan(0);
  expect(all.filter((c) => !(c.error <= c.limit))).toEqual([]);
});

const thicknesses = fixture.resonantMonopoles.map((r) => [r.length_over_diameter, r] as const);

test.each(thicknesses)("height at which a monopole %d times as high as thick resonates, and R there", (ratio, row) => {
  const frequency_Hz = 299_792_458;
  const impedance = (height: number) => {
    const one = { length_m: height, radius_m: row.length_wl / ratio / 2 };
    return okValue(solveWires(uprights(frequency_Hz, { kind: "perfect" }, [one]))).ports[0]!.impedance_ohm;
  };
  const height = findRoot((h) => impedance(h).im, 0.225, 0.25, 1e-7);
  const may = fixture.tolerances.find((t) => 2 * ratio >= t.leastLengthOverRadius)!;
  expect(Math.abs(height - row.length_wl)).toBeLessThanOrEqual(may.resonant_length_wl);
  expect(Math.abs(impedance(height).re - row.R_ohm)).toBeLessThanOrEqual(may.Z_near_resonance_ohm);
});
