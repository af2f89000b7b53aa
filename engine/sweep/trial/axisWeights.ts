/**
 * Weights wᵢ(t) by which values at nodes tᵢ make the polynomial through them: Lagrange's in barycentric form,
 * exact at the nodes. Σ wᵢ = 1.
 *
 * J.-P. Berrut and L. N. Trefethen, "Barycentric Lagrange interpolation", SIAM Review 46 (2004) 501-517.
 *
 * @param nodes distinct places on [−1, 1]
 */
export function axisWeights(nodes: readonly number[]): (t: number) => Float64Array {
  const barycentric = nodes.map((node, i) => {
    let product = 1;
    // Half the interval's length over its capacity: products then neither grow nor shrink with their number.
    for (const [j, other] of nodes.entries()) if (j !== i) product *= 2 * (node - other);
    return 1 / product;
  });
  return (t) => {
    const out = new Float64Array(nodes.length);
    const at = nodes.indexOf(t);
    if (at >= 0) {
      out[at] = 1;
      return out;
    }
    let sum = 0;
    for (let i = 0; i < nodes.length; i++) {
      out[i] = barycentric[i]! / (t - nodes[i]!);
      sum += out[i]!;
    }
    for (let i = 0; i < nodes.length; i++) out[i]! /= sum;
    return out;
  };
}
