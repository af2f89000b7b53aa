/** A circle in the plane of Γ; radius infinite: a straight line through the centre given (the real axis). */
export interface SmithCircle {
  readonly re: number;
  readonly im: number;
  readonly radius: number;
}

/**
 * Circles of the reflection chart, for values relative to the reference (r = R/Z₀ and so on).
 *
 *   r constant: centre r/(1 + r), radius 1/(1 + r)      x constant: centre 1 + j/x, radius 1/|x|
 *   g constant: centre −g/(1 + g), radius 1/(1 + g)     b constant: centre −1 − j/b, radius 1/|b|
 *   SWR S: centre 0, radius (S − 1)/(S + 1)
 *
 * Reactance and susceptance 0 are the real axis: radius and centre infinite. r, g ≥ 0, S ≥ 1 are the caller's to keep.
 * Source: the reflection chart of every textbook of lines; each follows from Γ = (z − 1)/(z + 1).
 */
export const smithCircles = {
  resistance: (r: number): SmithCircle => ({ re: r / (1 + r), im: 0, radius: 1 / (1 + r) }),
  reactance: (x: number): SmithCircle => ({ re: 1, im: 1 / x, radius: 1 / Math.abs(x) }),
  conductance: (g: number): SmithCircle => ({ re: -g / (1 + g), im: 0, radius: 1 / (1 + g) }),
  susceptance: (b: number): SmithCircle => ({ re: -1, im: -1 / b, radius: 1 / Math.abs(b) }),
  swr: (s: number): SmithCircle => ({ re: 0, im: 0, radius: (s - 1) / (s + 1) }),
} as const;
