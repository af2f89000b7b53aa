import { gaussLegendre } from "../quad/gaussLegendre.ts";

/** Most points of a panel. */
export const MOST_POINTS = 10;

/** Consecutive segments of a straight wire. */
export interface Panel {
  /** Segments from `first` to `last` − 1, counted along the wire. */
  readonly first: number;
  readonly last: number;
  /** Where it begins and how long it is, along the wire [m]. */
  readonly from_m: number;
  readonly length_m: number;
  /** First half and second, by the number of segments; only of two segments and more. */
  halves(): readonly [Panel, Panel];
  rule(points: number): PanelRule;
}

/**
 * Carries a smooth function f from Gauss–Legendre points of a panel to its nodes: with ℓ_q the polynomials that are 1 at one
 * point and 0 at the others, f ≈ Σ f(x_q) ℓ_q. Of n segments n + 1 nodes; the functions at its ends count as far as the panel goes.
 */
export interface PanelRule {
  /** Points, along the wire from its start [m]. */
  readonly at_m: Float64Array;
  /** points × nodes: ∫ h_i ℓ_q ds [m], h_i the current that is 1 at node i and falls to 0 at those beside it. */
  readonly hat: Float64Array;
  /** points × nodes: ∫ h'_i ℓ_q ds. */
  readonly slope: Float64Array;
}

/** Wires whose panels are kept. */
const MOST_KEPT = 64;
const kept = new Map<string, Panel>();

/**
 * A straight wire as one panel, kept for wires that are cut alike.
 *
 * @param cutKey   names the cuts (see wireKeys); absent: nothing is kept
 * @param length_m lengths of the wire's segments, in order
 */
export function wirePanels(cutKey: string | undefined, length_m: Float64Array): Panel {
  const known = cutKey === undefined ? undefined : kept.get(cutKey);
  if (known) return known;
  const panel = wholeWire(length_m);
  if (cutKey !== undefined) {
    if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value!);
    kept.set(cutKey, panel);
  }
  return panel;
}

function wholeWire(length_m: Float64Array): Panel {
  const cut_m = new Float64Array(length_m.length + 1);
  for (let s = 0; s < length_m.length; s++) cut_m[s + 1] = cut_m[s]! + length_m[s]!;
  return panelOf(cut_m, 0, length_m.length);
}

function panelOf(cut_m: Float64Array, first: number, last: number): Panel {
  let halves: readonly [Panel, Panel] | undefined;
  const rules: PanelRule[] = [];
  return {
    first,
    last,
    from_m: cut_m[first]!,
    length_m: cut_m[last]! - cut_m[first]!,
    halves() {
      const middle = (first + last) >> 1;
      halves ??= [panelOf(cut_m, first, middle), panelOf(cut_m, middle, last)];
      return halves;
    },
    rule(points) {
      rules[points] ??= ruleOf(cut_m, first, last, points);
      return rules[points];
    },
  };
}

/** ℓ_q(x) = c_q/(x − x_q) / Σ_r c_r/(x − x_r), c_q = (−1)^q √(x_q (1 − x_q) w_q): the barycentric form for Gauss–Legendre points. */
function ruleOf(cut_m: Float64Array, first: number, last: number, points: number): PanelRule {
  const own = gaussLegendre(points);
  const nodes = last - first + 1;
  const from = cut_m[first]!;
  const length = cut_m[last]! - from;
  const at_m = own.node.map((x) => from + x * length);
  const c = own.node.map((x, q) => (q % 2 === 0 ? 1 : -1) * Math.sqrt(x * (1 - x) * own.weight[q]!));
  const hat = new Float64Array(points * nodes);
  const slope = new Float64Array(points * nodes);
  const part = new Float64Array(points);
  // Exact for a polynomial of degree points − 1 times a ramp.
  const { node, weight } = gaussLegendre((points >> 1) + 1);
  for (let s = first; s < last; s++) {
    const L = cut_m[s + 1]! - cut_m[s]!;
    for (let g = 0; g < node.length; g++) {
      const u = node[g]!;
      const x = (cut_m[s]! + u * L - from) / length;
      let sum = 0;
      for (let q = 0; q < points; q++) {
        // Not 0: at a point itself the quotient below is 1 all the same.
        const apart = x - own.node[q]! || Number.MIN_VALUE ** 0.5;
        part[q] = c[q]! / apart;
        sum += part[q]!;
      }
      for (let q = 0; q < points; q++) {
        const value = (weight[g]! * part[q]!) / sum;
        const at = q * nodes + s - first;
        hat[at]! += (1 - u) * L * value;
        hat[at + 1]! += u * L * value;
        slope[at]! -= value;
        slope[at + 1]! += value;
      }
    }
  }
  return { at_m, hat, slope };
}
