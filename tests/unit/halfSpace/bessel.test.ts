import { describe, expect, test } from "vitest";
import { BESSEL_J_SWITCH, besselJ01 } from "../../../engine/special/besselJ01.ts";
import { HANKEL_SWITCH, hankelFirst01 } from "../../../engine/special/hankelFirst01.ts";
import { hankelSecond01 } from "../../../engine/special/hankelSecond01.ts";
import { MACDONALD_SWITCH } from "../../../engine/special/macdonald01.ts";
import { macdonaldRules } from "../../../engine/special/macdonaldRules.ts";

type Pair = readonly [number, number];
const mul = (a: Pair, b: Pair): Pair => [a[0] * b[0] - a[1] * b[1], a[0] * b[1] + a[1] * b[0]];
const div = (a: Pair, b: Pair): Pair => {
  const n = b[0] * b[0] + b[1] * b[1];
  return [(a[0] * b[0] + a[1] * b[1]) / n, (a[1] * b[0] - a[0] * b[1]) / n];
};
const exp = (a: Pair): Pair => [Math.exp(a[0]) * Math.cos(a[1]), Math.exp(a[0]) * Math.sin(a[1])];
const sqrt = (a: Pair): Pair => {
  const r = Math.sqrt(0.5 * (Math.hypot(a[0], a[1]) + Math.abs(a[0])));
  const other = 0.5 * (a[1] / r);
  return a[0] >= 0 ? [r, other] : [Math.abs(other), a[1] < 0 ? -r : r];
};
const apart = (a: Pair, b: Pair) => Math.hypot(a[0] - b[0], a[1] - b[1]);
const size = (a: Pair) => Math.hypot(a[0], a[1]);

/** (1/π) ∫₀^π cos(z sin t − nt) dt by the trapezoidal rule, which converges faster than any power for a periodic f. */
function besselByIntegral(n: number, z: Pair): Pair {
  const steps = 400;
  let re = 0;
  let im = 0;
  for (let i = 0; i < 2 * steps; i++) {
    const t = (Math.PI * i) / steps;
    const a = z[0] * Math.sin(t) - n * t;
    const b = z[1] * Math.sin(t);
    re += Math.cos(a) * Math.cosh(b);
    im -= Math.sin(a) * Math.sinh(b);
  }
  return [re / (2 * steps), im / (2 * steps)];
}

/** K_n(w) = e^{−w} ∫_{−∞}^{∞} e^{−s²} (1 + s²/w)ⁿ (2w + s²)^{−1/2} ds, n = 0, 1, by the trapezoidal rule. */
function macdonaldByIntegral(n: 0 | 1, w: Pair): Pair {
  const h = 0.02;
  let sum: Pair = [0, 0];
  for (let i = -320; i <= 320; i++) {
    const s2 = (i * h) ** 2;
    let f: Pair = div([Math.exp(-s2) * h, 0], sqrt([2 * w[0] + s2, 2 * w[1]]));
    if (n === 1) {
      const ratio = div([s2, 0], w);
      f = mul(f, [1 + ratio[0], ratio[1]]);
    }
    sum = [sum[0] + f[0], sum[1] + f[1]];
  }
  return mul(exp([-w[0], -w[1]]), sum);
}

/** H⁽¹⁾_n(z) = (2/π) j^{−n−1} K_n(−jz). */
function hankelByIntegral(n: 0 | 1, z: Pair): Pair {
  const k = macdonaldByIntegral(n, [z[1], -z[0]]);
  return n === 0 ? [(2 / Math.PI) * k[1], (-2 / Math.PI) * k[0]] : [(-2 / Math.PI) * k[0], (-2 / Math.PI) * k[1]];
}

const out = new Float64Array(4);
const both = (f: typeof besselJ01, z: Pair): [Pair, Pair] => {
  f(out, z[0], z[1]);
  return [
    [out[0]!, out[1]!],
    [out[2]!, out[3]!],
  ];
};
const polar = (r: number, degrees: number): Pair => [
  Math.max(0, r * Math.cos((degrees * Math.PI) / 180)),
  r * Math.sin((degrees * Math.PI) / 180),
];

// Both sides of every switch, and far from them.
const sizes = [
  0.02,
  0.7,
  HANKEL_SWITCH - 0.01,
  HANKEL_SWITCH + 0.01,
  5,
  MACDONALD_SWITCH - 0.01,
  MACDONALD_SWITCH + 0.01,
  11,
  17,
  30,
  60,
];
const angles = [-90, -60, -20, -3, 0, 3, 20, 40, 60, 90];
const points = sizes.flatMap((r) => angles.map((a) => polar(r, a)));

describe("besselJ01", () => {
  test("agrees with the trigonometric integral to 1e-12 of the larger of J0, J1", () => {
    let worst = 0;
    for (const z of points) {
      const [j0, j1] = both(besselJ01, z);
      const scale = Math.max(size(j0), size(j1));
      worst = Math.max(worst, apart(j0, besselByIntegral(0, z)) / scale, apart(j1, besselByIntegral(1, z)) / scale);
    }
    expect(worst).toBeLessThan(1e-12);
  });

  test("is smooth across its switch: both methods agree there", () => {
    for (const y of [0, 0.5, 4, 20]) {
      // |z| − |y| = 8 at x = √(64 + 16 y).
      const x = Math.sqrt(BESSEL_J_SWITCH * (BESSEL_J_SWITCH + 2 * y));
      const [a] = both(besselJ01, [x * (1 - 1e-13), y]);
      const [b] = both(besselJ01, [x * (1 + 1e-13), y]);
      expect(apart(a, b) / Math.exp(y)).toBeLessThan(2e-12);
    }
  });
});

describe("Hankel functions", () => {
  test("the first kind agrees with the modified-Bessel integral to 2e-12 in the upper half plane", () => {
    let worst = 0;
    for (const z of points) {
      if (z[1] < 0 || size(z) < 0.5) continue;
      const [h0, h1] = both(hankelFirst01, z);
      const r0 = hankelByIntegral(0, z);
      const r1 = hankelByIntegral(1, z);
      worst = Math.max(worst, apart(h0, r0) / size(r0), apart(h1, r1) / size(r1));
    }
    expect(worst).toBeLessThan(2e-12);
  });

  test("J1 H0 − J0 H1 = ±2j/(πz), to 1e-12 of the products", () => {
    for (const z of points) {
      const [j0, j1] = both(besselJ01, z);
      for (const [f, sign] of [
        [hankelFirst01, 1],
        [hankelSecond01, -1],
      ] as const) {
        const [h0, h1] = both(f, z);
        const a = mul(j1, h0);
        const b = mul(j0, h1);
        const want = div([0, (2 * sign) / Math.PI], z);
        expect(apart([a[0] - b[0], a[1] - b[1]], want)).toBeLessThan(2e-12 * (size(a) + size(b)));
      }
    }
  });

  test("the two kinds add up to 2J in the lower half plane as in the upper", () => {
    for (const z of points) {
      const [j0, j1] = both(besselJ01, z);
      const [a0, a1] = both(hankelFirst01, z);
      const [b0, b1] = both(hankelSecond01, z);
      expect(apart([a0[0] + b0[0], a0[1] + b0[1]], [2 * j0[0], 2 * j0[1]])).toBeLessThan(2e-12 * (size(a0) + size(b0)));
      expect(apart([a1[0] + b1[0], a1[1] + b1[1]], [2 * j1[0], 2 * j1[1]])).toBeLessThan(2e-12 * (size(a1) + size(b1)));
    }
  });
});

/** The three points of each sixteen-point rule that the table leaves out: below 1e-16 of the value, but not of its high moments. */
const leftOut = [
  {
    x: [17.319777753964622, 20.998369298168463, 25.87878123124976],
    c: [-9.410055857565847e-16, -7.554179936140858e-19, -6.230407440947888e-23],
  },
  {
    x: [17.218669618808313, 20.897010330133558, 25.777197068409407],
    c: [1.1847413127862865e-15, 9.469847440210333e-19, 7.780242771879089e-23],
  },
] as const;

test("the rules reproduce the moments that define them, Hankel's asymptotic coefficients", () => {
  const { coarse, fine } = macdonaldRules;
  for (const [x, c, nu, count] of [
    [[...coarse.x0], [...coarse.c0], 0, 16],
    [[...coarse.x1], [...coarse.c1], 1, 16],
    [[...fine.x0, ...leftOut[0].x], [...fine.c0, ...leftOut[0].c], 0, 32],
    [[...fine.x1, ...leftOut[1].x], [...fine.c1, ...leftOut[1].c], 1, 32],
  ] as const) {
    let a = 1;
    for (let k = 0; k < count; k++) {
      a *= (4 * nu * nu - (2 * k + 1) ** 2) / (8 * (k + 1));
      const sum = x.reduce((total, at, i) => total + c[i]! * (-at) ** k, 0);
      expect(Math.abs(sum / a - 1), `moment ${k} of order ${nu}`).toBeLessThan(1e-12);
    }
  }
});
