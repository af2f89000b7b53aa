import type { VerticalLine } from "../../engine/screen/ScreenInput.ts";

/** An upright line whose current is amplitude × sin k(h − z)/sin kh in every state, sampled at equal steps. */
export function mast(
  k: number,
  place: { readonly x_m: number; readonly y_m: number; readonly height_m: number; readonly radius_m?: number },
  amplitude: readonly (readonly [re: number, im: number])[],
  nodes = 17,
): VerticalLine {
  const h = place.height_m;
  const z_m = Float64Array.from({ length: nodes }, (_, n) => (h * n) / (nodes - 1));
  const current = new Float64Array(2 * nodes * amplitude.length);
  amplitude.forEach(([re, im], s) => {
    z_m.forEach((z, n) => {
      const shape = Math.sin(k * (h - z)) / Math.sin(k * h);
      current[2 * (s * nodes + n)] = re * shape;
      current[2 * (s * nodes + n) + 1] = im * shape;
    });
  });
  return { x_m: place.x_m, y_m: place.y_m, radius_m: place.radius_m ?? 1e-3, z_m, current };
}
