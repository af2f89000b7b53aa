import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type HalfSpace, halfSpaceOf } from "../../../engine/kernel/halfSpace/HalfSpace.ts";
import { type Placement, placeAcross, placeInAir, placeInSoil } from "../../../engine/kernel/halfSpace/Placement.ts";
import { reflected, reflectedInSoil, transmitted } from "../../../engine/kernel/halfSpace/sommerfeld.ts";
import { spectrum } from "../../../engine/kernel/halfSpace/spectrum.ts";
import { gaussLegendre } from "../../../engine/quad/gaussLegendre.ts";
import { besselJ01 } from "../../../engine/special/besselJ01.ts";

const soils = [
  [3, 0.0001],
  [5, 0.001],
  [13, 0.005],
  [20, 0.03],
  [80, 0.001],
  [81, 5],
] as const;
const frequencies = [1.8e6, 7.1e6, 30e6];
const spaces = soils.flatMap(([er, sigma]) => frequencies.map((f) => halfSpaceOf(f, er, sigma)));

const out = new Float64Array(9);
const air = (h: HalfSpace, rho: number, zeta: number) => Array.from(reflected(out, h, rho, zeta));
const soil = (h: HalfSpace, rho: number, zeta: number) => Array.from(reflectedInSoil(out, h, rho, zeta));
const across = (h: HalfSpace, rho: number, z: number, d: number) => Array.from(transmitted(out, h, rho, z, d));
const wave = (kRe: number, kIm: number, R: number): [number, number] => {
  const size = Math.exp(kIm * R) / R;
  return [size * Math.cos(kRe * R), -size * Math.sin(kRe * R)];
};

describe("at the surface the three sets of integrals meet", () => {
  test.each(spaces)("$frequency_Hz Hz, soil $relativePermittivity / $conductivity_SPerM", (h) => {
    for (const turns of [0.001, 0.05, 0.4, 2]) {
      const rho = (turns * 2 * Math.PI) / h.k0;
      const up = air(h, rho, 0);
      const down = soil(h, rho, 0);
      const through = across(h, rho, 0, 0);
      const inAir = wave(h.k0, 0, rho);
      const inSoil = wave(h.k1Re, h.k1Im, rho);
      const near = (re: number, im: number, k: number) =>
        expect(Math.hypot(re - through[2 * k]!, im - through[2 * k + 1]!) * rho).toBeLessThan(2e-11);
      // Horizontal vector potential.
      near(inAir[0] + up[0]!, inAir[1] + up[1]!, 0);
      near(inSoil[0] + down[0]!, inSoil[1] + down[1]!, 0);
      // Scalar potential; the one in soil is divided by its permittivity.
      near(inAir[0] + up[2]!, inAir[1] + up[3]!, 1);
      const re = inSoil[0] + down[2]!;
      const im = inSoil[1] + down[3]!;
      const size = h.epsRe ** 2 + h.epsIm ** 2;
      near((re * h.epsRe + im * h.epsIm) / size, (im * h.epsRe - re * h.epsIm) / size, 1);
      // G_zx; the vertical axis of the soil case points down.
      near(up[4]!, up[5]!, 2);
      near(-down[4]!, -down[5]!, 2);
    }
  });
});

/** The same spectra with J along a line just above the real axis, as far as e^{−uζ} lets them go: no Hankel rays, no cuts. */
function alongLine(place: Placement, rho: number, zeta: number): Float64Array {
  const { node, weight } = gaussLegendre(12);
  const F = new Float64Array(10);
  const J = new Float64Array(4);
  const sum = new Float64Array(8);
  const { k0 } = place.halfSpace;
  const lift = Math.min(0.3 * k0, 2 / rho);
  const end = place.kRe + 38 / zeta;
  const { k1Re, k1Im } = place.halfSpace;
  const panel = (fromRe: number, fromIm: number, dRe: number, dIm: number) => {
    for (let i = 0; i < 12; i++) {
      const x = node[i]!;
      const [re, im] = [fromRe + x * dRe, fromIm + x * dIm];
      spectrum(F, place, re, im, false);
      besselJ01(J, re * rho, im * rho);
      const size = Math.exp(-F[8]! * zeta) * weight[i]!;
      const [eRe, eIm] = [size * Math.cos(F[9]! * zeta), -size * Math.sin(F[9]! * zeta)];
      const [wRe, wIm] = [eRe * dRe - eIm * dIm, eRe * dIm + eIm * dRe];
      for (let k = 0; k < 8; k += 2) {
        const [cRe, cIm] = k === 4 ? [J[2]!, J[3]!] : [J[0]!, J[1]!];
        const [aRe, aIm] = [F[k]! * cRe - F[k + 1]! * cIm, F[k]! * cIm + F[k + 1]! * cRe];
        sum[k]! += aRe * wRe - aIm * wIm;
        sum[k + 1]! += aRe * wIm + aIm * wRe;
      }
    }
  };
  panel(0, 0, 0, lift);
  // Panels half as long as the nearest branch point is far, and six radians at most.
  for (let x = 0; x < end; ) {
    const away = Math.min(Math.hypot(x - k0, lift), Math.hypot(x - k1Re, lift - k1Im));
    const step = Math.min(0.6 * away, 6 / (rho + zeta));
    panel(x, lift, step, 0);
    x += step;
  }
  return sum;
}

test.each(spaces)(
  "any path gives the same: $frequency_Hz Hz, soil $relativePermittivity / $conductivity_SPerM",
  (h) => {
    const wavelength = (2 * Math.PI) / h.k0;
    for (const turns of [0.02, 0.3, 2.5])
      for (const slope of [0.12, 0.26, 0.5, 1, 2]) {
        const rho = turns * wavelength;
        const zeta = slope * rho;
        const R = Math.hypot(rho, zeta);
        const got = air(h, rho, zeta);
        alongLine(placeInAir(h), rho, zeta).forEach((x, i) => {
          expect(Math.abs(x - got[i]!) * R).toBeLessThan(1e-10);
        });
        const depth = Math.min(0.3, 0.5 * zeta);
        const through = across(h, rho, zeta - depth, depth);
        alongLine(placeAcross(h, depth), rho, zeta).forEach((x, i) => {
          expect(Math.abs(x - through[i]!) * R).toBeLessThan(1e-10);
        });
        // In soil all dies away over a metre or so; compare where something is left.
        const nearRho = Math.min(rho, 3);
        const buried = soil(h, nearRho, slope * nearRho);
        alongLine(placeInSoil(h), nearRho, slope * nearRho).forEach((x, i) => {
          expect(Math.abs(x - buried[i]!) * nearRho).toBeLessThan(1e-10);
        });
      }
  },
);

test("soil that is air reflects nothing and passes everything", () => {
  const h = halfSpaceOf(7.1e6, 1, 0);
  for (const [rho, zeta] of [
    [3, 1],
    [0, 2],
    [20, 0],
  ] as const) {
    for (const x of air(h, rho, zeta).slice(0, 8)) expect(Math.abs(x)).toBeLessThan(1e-13);
    const t = across(h, rho, 0.75 * zeta, 0.25 * zeta);
    const [re, im] = wave(h.k0, 0, Math.hypot(rho, zeta));
    for (const k of [0, 1]) expect(Math.hypot(t[2 * k]! - re, t[2 * k + 1]! - im)).toBeLessThan(1e-12);
    expect(Math.hypot(t[4]!, t[5]!)).toBeLessThan(1e-13);
  }
});

test("the better the conductor, the nearer to a perfect image: as σ^−½", () => {
  const [rho, zeta] = [8, 3];
  const R = Math.hypot(rho, zeta);
  const off = [1e2, 1e4, 1e6].map((sigma) => {
    const h = halfSpaceOf(7.1e6, 10, sigma);
    const i = air(h, rho, zeta);
    const [re, im] = wave(h.k0, 0, R);
    return Math.max(
      Math.hypot(i[0]! + re, i[1]! + im),
      Math.hypot(i[2]! + re, i[3]! + im),
      Math.hypot(i[4]!, i[5]!),
      Math.hypot(i[6]! - re, i[7]! - im),
    );
  });
  expect(off[1]! / off[0]!).toBeCloseTo(0.1, 2);
  expect(off[2]! / off[1]!).toBeCloseTo(0.1, 2);
  expect(off[2]! * R).toBeLessThan(1e-3);
});

test("the quasi-static images are what is left close by", () => {
  const h = halfSpaceOf(3.5e6, 13, 0.005);
  const [rho, zeta] = [4e-3, 3e-3];
  const R = 5e-3;
  const d = (h.epsRe + 1) ** 2 + h.epsIm ** 2;
  const cRe = (h.epsRe ** 2 - 1 + h.epsIm ** 2) / d;
  const cIm = (2 * h.epsIm) / d;
  const i = air(h, rho, zeta);
  // The next term is of order |k1| against 1/R.
  expect(Math.hypot(i[2]! * R + cRe, i[3]! * R + cIm)).toBeLessThan(5e-3);
  expect(Math.hypot(i[6]! * R - 2 * cRe, i[7]! * R - 2 * cIm)).toBeLessThan(1e-2);
  const angle = (R - zeta) / rho;
  expect(Math.hypot(i[4]! * R + cRe * angle, i[5]! * R + cIm * angle)).toBeLessThan(5e-3);
});

describe("error estimate", () => {
  const spot = fc.record({
    space: fc.constantFrom(...spaces),
    // R from 6 mm to three wavelengths, any elevation of the image.
    size: fc.double({ min: 0, max: 1, noNaN: true }),
    turn: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  const place = (s: { space: HalfSpace; size: number; turn: number }): [number, number] => {
    const R = 6e-3 * ((6 * Math.PI) / s.space.k0 / 6e-3) ** s.size;
    return [R * Math.cos((Math.PI / 2) * s.turn), R * Math.sin((Math.PI / 2) * s.turn)];
  };

  test("stays below 1e-6/R in air and across the surface", () => {
    fc.assert(
      fc.property(spot, (s) => {
        const [rho, zeta] = place(s);
        const R = Math.hypot(rho, zeta);
        expect(air(s.space, rho, zeta)[8]! * R).toBeLessThan(1e-6);
        expect(across(s.space, rho, 0.5 * zeta, Math.min(0.3, 0.5 * zeta))[8]! * R).toBeLessThan(1e-6);
      }),
      { seed: 20, numRuns: 60 },
    );
  });

  test("I1, I2 and I4 satisfy the wave equation ∂²K/∂ρ² + (1/ρ)∂K/∂ρ + ∂²K/∂ζ² + k0² K = 0 to the error of the differences", () => {
    const h = halfSpaceOf(14.1e6, 13, 0.005);
    const [rho, zeta] = [2.3, 1.1];
    const step = 0.02;
    const at = (a: number, b: number) => air(h, rho + a * step, zeta + b * step);
    const mid = at(0, 0);
    const [e, w, n, s] = [at(1, 0), at(-1, 0), at(0, 1), at(0, -1)];
    for (const k of [0, 1, 2, 3, 6, 7]) {
      const laplacian = (e[k]! + w[k]! + n[k]! + s[k]! - 4 * mid[k]!) / step ** 2 + (e[k]! - w[k]!) / (2 * step * rho);
      expect(Math.abs(laplacian + h.k0 ** 2 * mid[k]!)).toBeLessThan(2e-4);
    }
  });
});

test("points on one spot or below the surface are a programmer's mistake", () => {
  const h = halfSpaceOf(7e6, 13, 0.005);
  expect(() => reflected(out, h, 0, 0)).toThrow(RangeError);
  expect(() => reflected(out, h, 1, -0.1)).toThrow(RangeError);
});
