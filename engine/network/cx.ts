import type { Complex } from "../contract.ts";

/**
 * Arithmetic of single complex numbers, for networks of a few parts; the engine's kernels use interleaved arrays.
 * Division by zero and overflow give numbers that are not finite, as with real numbers; nothing is thrown.
 */
export const cx = {
  zero: { re: 0, im: 0 } as Complex,
  one: { re: 1, im: 0 } as Complex,
  of: (re: number, im = 0): Complex => ({ re, im }),
  add: (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im }),
  sub: (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im }),
  mul: (a: Complex, b: Complex): Complex => ({ re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re }),
  scale: (a: Complex, by: number): Complex => ({ re: a.re * by, im: a.im * by }),
  div: (a: Complex, b: Complex): Complex => {
    const d = b.re * b.re + b.im * b.im;
    return { re: (a.re * b.re + a.im * b.im) / d, im: (a.im * b.re - a.re * b.im) / d };
  },
  inv: (a: Complex): Complex => {
    const d = a.re * a.re + a.im * a.im;
    return { re: a.re / d, im: -a.im / d };
  },
  conj: (a: Complex): Complex => ({ re: a.re, im: -a.im }),
  neg: (a: Complex): Complex => ({ re: -a.re, im: -a.im }),
  abs: (a: Complex): number => Math.hypot(a.re, a.im),
  arg: (a: Complex): number => Math.atan2(a.im, a.re),
  polar: (size: number, angle_rad: number): Complex => ({
    re: size * Math.cos(angle_rad),
    im: size * Math.sin(angle_rad),
  }),
  /** Re(a b*): twice the power of peak phasors a and b. */
  dot: (a: Complex, b: Complex): number => a.re * b.re + a.im * b.im,
  isFinite: (a: Complex): boolean => Number.isFinite(a.re) && Number.isFinite(a.im),
} as const;
