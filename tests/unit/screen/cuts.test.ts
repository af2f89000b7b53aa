import { describe, expect, test } from "vitest";
import type { RadialScreen } from "../../../engine/index.ts";
import { cellPanels } from "../../../engine/screen/cellPanels.ts";
import { cutRay } from "../../../engine/screen/cutRay.ts";
import { frameGround } from "../../../engine/screen/frameGround.ts";
import { gatherCentres } from "../../../engine/screen/gatherCentres.ts";
import { radialScales } from "../../../engine/screen/radialScales.ts";
import type { ScreenInput } from "../../../engine/screen/ScreenInput.ts";
import { sheetReactance, soilAdmittance } from "../../../engine/screen/surfaceAdmittance.ts";
import { mast } from "../../support/mast.ts";

const k = (2 * Math.PI) / 40;
const omega = k * 299_792_458;
const NEVER = { knee: Number.POSITIVE_INFINITY, wave: Number.POSITIVE_INFINITY };

/** Hubs with 4 radials of 1 mm; lengths in metres, the wavelength is 40 m. */
function hubs(...places: readonly (readonly [x: number, y: number, length: number])[]): ScreenInput {
  return {
    k_radPerM: k,
    omega_radPerS: omega,
    ground: { relativePermittivity: 13, conductivity_SPerM: 0.005 },
    states: 1,
    screens: places.map(([x_m, y_m, length_m]) => ({ x_m, y_m, count: 4, length_m, radius_m: 1e-3 })),
    lines: places.map(([x_m, y_m]) => mast(k, { x_m, y_m, height_m: 10 }, [[1, 0]])),
  };
}

function framed(input: ScreenInput) {
  const centres = gatherCentres(input);
  return { centres, frame: frameGround(input, centres) };
}

function cutsOf(input: ScreenInput, i: number, angle: number, scales = NEVER): number[] {
  const { frame } = framed(input);
  const cuts = new Float64Array(2 * frame.edges.length + 6);
  const count = cutRay(cuts, frame, i, Math.cos(angle), Math.sin(angle), 4e-3, scales);
  return Array.from(cuts.subarray(0, count));
}

describe("cutRay", () => {
  // Hub 0 at −3 with 2 m of radials, hub 1 at +3 with 5 m: the second circle spans −2 … 8 on the axis.
  const pair = hubs([-3, 0, 2], [3, 0, 5]);

  test("from the left hub towards the right one: into its circle, past the own edge, half-way", () => {
    const found = cutsOf(pair, 0, 0);
    [4e-3, 1, 2, 3].forEach((r, i) => {
      expect(found[i]).toBeCloseTo(r, 9);
    });
    expect(found).toHaveLength(4);
  });

  test("away from it: the own edge and the cell circle", () => {
    const { frame } = framed(pair);
    const found = cutsOf(pair, 0, Math.PI);
    expect(found).toHaveLength(3);
    expect(found[1]).toBeCloseTo(2, 9);
    expect(found[2]).toBeCloseTo(frame.cellRadius - 3, 9);
    // It holds both circles, the right one reaching 8 m from the middle.
    expect(frame.cellRadius).toBeGreaterThan(8);
  });

  test("out of a circle that holds the hub", () => {
    // Hub 0 at −3 is inside the 7 m circle about +3; to the left that ends 1 m away.
    expect(cutsOf(hubs([-3, 0, 2], [3, 0, 7]), 0, Math.PI)[1]).toBeCloseTo(1, 9);
  });

  test("the scales of the hub are cuts where they fall inside, and are left out where they do not", () => {
    const found = cutsOf(pair, 0, Math.PI, { knee: 0.3, wave: 1000 });
    expect(found[1]).toBeCloseTo(0.3, 12);
    expect(found).toHaveLength(4);
  });

  test("a ray that starts outside its own cell has no ground", () => {
    const { frame } = framed(pair);
    expect(cutRay(new Float64Array(12), frame, 0, 1, 0, 3.5, NEVER)).toBe(0);
  });
});

describe("cellPanels", () => {
  const has = (panels: readonly number[], angle: number) => panels.some((p) => Math.abs(p - angle) < 1e-6);

  test("crossings of edges with each other and with the half-way line, and rays that touch an edge", () => {
    // Middle lines at x = 0 between −3 and 3; circles of 5 m cross there at y = 4: direction atan2(4, 3).
    const same = framed(hubs([-3, 0, 5], [3, 0, 5]));
    expect(same.frame.mirrored).toBe(true);
    expect(has(cellPanels(same.frame, 0), Math.atan2(4, 3))).toBe(true);
    // Seen from −3, a circle of 5 m about +3 is touched at sin⁻¹(5/6), √11 away, which lies in the cell.
    const unlike = framed(hubs([-3, 0, 2], [3, 0, 5]));
    const panels = cellPanels(unlike.frame, 0);
    expect(has(panels, Math.asin(5 / 6))).toBe(true);
    // The circles cross where 4 − 25 = 12 x: x = −1.75, y = √(4 − 1.25²) above the hub's own axis.
    expect(has(panels, Math.atan2(Math.sqrt(4 - 1.25 ** 2), 1.25))).toBe(true);
    expect(panels[0]).toBe(0);
    expect(panels[panels.length - 1]).toBe(Math.PI);
  });

  test("the corner where three cells meet", () => {
    const { frame, centres } = framed(hubs([0, 0, 1], [8, 0, 1], [3, 6, 1]));
    expect(frame.mirrored).toBe(false);
    // As far from all three: x = 4, then 16 + y² = 1 + (6 − y)², y = 21/12.
    const corner = Math.atan2(21 / 12, 4) - Math.atan2(frame.sin, frame.cos);
    const i = centres.findIndex((c) => c.x_m === 0 && c.y_m === 0);
    expect(has(cellPanels(frame, i), (corner + 2 * Math.PI) % (2 * Math.PI))).toBe(true);
  });

  test("a lone hub needs no directions", () => {
    expect(cellPanels(framed(hubs([5, 7, 9])).frame, 0)).toEqual([0, Math.PI]);
  });
});

describe("radialScales", () => {
  const centre = (screen: RadialScreen) => ({ ...screen, inner_m: screen.count * screen.radius_m, bare: false });
  const sea = soilAdmittance(omega, { relativePermittivity: 81, conductivity_SPerM: 5 });
  const omegaMu = omega * 4e-7 * Math.PI;

  test("the knee is where radials and soil are equal", () => {
    const screen = { x_m: 0, y_m: 0, count: 4, length_m: 10, radius_m: 1e-3 };
    const { knee, wave } = radialScales(centre(screen), [screen], sea, omegaMu, k);
    const impedance = 1 / Math.hypot(sea.re, sea.im);
    // "Near enough for a cut": four rounds of a fixed point.
    expect(sheetReactance(omegaMu, 4, 1e-3, knee) / impedance).toBeCloseTo(1, 1);
    expect(wave).toBeGreaterThan(knee);
  });

  test("where the knee is far out the hub needs no further cuts; a bare foot has no knee", () => {
    const screen = { x_m: 0, y_m: 0, count: 120, length_m: 10, radius_m: 1e-3 };
    const soil = soilAdmittance(omega, { relativePermittivity: 5, conductivity_SPerM: 0.001 });
    expect(radialScales(centre(screen), [screen], soil, omegaMu, k)).toEqual(NEVER);
    const bare = radialScales({ x_m: 0, y_m: 0, inner_m: 1e-3, bare: true }, [], soil, omegaMu, k);
    expect(bare.knee).toBe(Number.POSITIVE_INFINITY);
    expect(bare.wave).toBeLessThan(40);
  });
});

test("soil admittance: √(ε_r)/η₀ without loss, and a phase of 45° when conduction rules", () => {
  const dry = soilAdmittance(omega, { relativePermittivity: 9, conductivity_SPerM: 0 });
  expect(dry.re).toBeCloseTo(3 / 376.730_313, 9);
  expect(dry.im).toBeCloseTo(0, 15);
  const metal = soilAdmittance(omega, { relativePermittivity: 1, conductivity_SPerM: 1e6 });
  expect(metal.re / -metal.im).toBeCloseTo(1, 6);
  // |Z| = √(ωμ₀/σ).
  expect(1 / Math.hypot(metal.re, metal.im)).toBeCloseTo(Math.sqrt((omega * 4e-7 * Math.PI) / 1e6), 9);
});
