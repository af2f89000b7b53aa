import type { GroundFrame } from "./frameGround.ts";

/**
 * Directions, seen from centre i, between which the cuts along a ray change smoothly.
 *
 *        edge of j's radials
 *      ⌒
 *    /    \   the pattern of cuts changes where two of {edges, half-way lines, cell circle} cross,
 *   i──────   and where a ray just touches an edge
 *
 * @returns ascending angles [rad]; 0…π when the ground is mirrored, else a full turn (first and last are one direction)
 */
export function cellPanels(frame: GroundFrame, i: number): number[] {
  const { x, y, edges, cellRadius, mirrored } = frame;
  const turn = mirrored ? Math.PI : 2 * Math.PI;
  if (frame.round) return [0, turn];
  const ox = x[i]!;
  const oy = y[i]!;
  const slack = 1e-9 * cellRadius;
  const angles: number[] = [];

  /** Keeps the direction of a point if it lies in the cell (or on its border). */
  const keep = (px: number, py: number): void => {
    if (mirrored && py < -slack) return;
    if (px * px + py * py > (cellRadius + slack) ** 2) return;
    const own = Math.sqrt((px - ox) ** 2 + (py - oy) ** 2);
    if (own < slack) return;
    for (let j = 0; j < x.length; j++) if (own > Math.sqrt((px - x[j]!) ** 2 + (py - y[j]!) ** 2) + slack) return;
    const angle = Math.atan2(py - oy, px - ox);
    angles.push(angle < 0 ? (mirrored ? 0 : angle + turn) : angle);
  };

  const circles = [...edges, { x: 0, y: 0, radius: cellRadius }];
  circles.forEach((a, m) => {
    for (let n = 0; n < m; n++) meetCircles(a, circles[n]!, keep);
    // Rays that touch: at distance √(d² − R²) and R/d off the direction of the circle's middle.
    const dx = a.x - ox;
    const dy = a.y - oy;
    const d2 = dx * dx + dy * dy;
    const reach2 = d2 - a.radius * a.radius;
    if (reach2 > 0) {
      const across = (a.radius * Math.sqrt(reach2)) / d2;
      keep(ox + (dx * reach2) / d2 - dy * across, oy + (dy * reach2) / d2 + dx * across);
      keep(ox + (dx * reach2) / d2 + dy * across, oy + (dy * reach2) / d2 - dx * across);
    }
    // Half-way lines.
    for (let j = 0; j < x.length; j++) if (j !== i) meetHalfway(ox, oy, x[j]!, y[j]!, a, keep);
  });
  for (let j = 0; j < x.length; j++)
    for (let l = 0; l < j; l++)
      if (j !== i && l !== i) meetHalfways(ox, oy, x[j]! - ox, y[j]! - oy, x[l]! - ox, y[l]! - oy, keep);

  angles.sort((p, q) => p - q);
  const panels = [0];
  for (const angle of angles) if (angle > panels[panels.length - 1]! + 1e-6 && angle < turn - 1e-6) panels.push(angle);
  panels.push(turn);
  return panels;
}

interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

type Keep = (px: number, py: number) => void;

function meetCircles(a: Circle, b: Circle, keep: Keep): void {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const d2 = dx * dx + dy * dy;
  if (d2 === 0) return;
  const along = 0.5 * (1 + (a.radius * a.radius - b.radius * b.radius) / d2);
  const across2 = (a.radius * a.radius) / d2 - along * along;
  if (!(across2 >= 0)) return;
  const across = Math.sqrt(across2);
  keep(a.x + along * dx - across * dy, a.y + along * dy + across * dx);
  keep(a.x + along * dx + across * dy, a.y + along * dy - across * dx);
}

/** Where the line half-way between (ox, oy) and (jx, jy) crosses a circle. */
function meetHalfway(ox: number, oy: number, jx: number, jy: number, a: Circle, keep: Keep): void {
  const dx = jx - ox;
  const dy = jy - oy;
  const d = Math.sqrt(dx * dx + dy * dy);
  const nx = dx / d;
  const ny = dy / d;
  const mx = 0.5 * (ox + jx);
  const my = 0.5 * (oy + jy);
  const off = (mx - a.x) * nx + (my - a.y) * ny;
  const under = a.radius * a.radius - off * off;
  if (!(under >= 0)) return;
  const root = Math.sqrt(under);
  keep(a.x + off * nx - root * ny, a.y + off * ny + root * nx);
  keep(a.x + off * nx + root * ny, a.y + off * ny - root * nx);
}

/** Where the lines half-way to two neighbours cross: the point as far from all three. */
function meetHalfways(ox: number, oy: number, ax: number, ay: number, bx: number, by: number, keep: Keep): void {
  const det = ax * by - ay * bx;
  if (Math.abs(det) < 1e-12 * (ax * ax + ay * ay + bx * bx + by * by)) return;
  const a2 = 0.5 * (ax * ax + ay * ay);
  const b2 = 0.5 * (bx * bx + by * by);
  keep(ox + (a2 * by - b2 * ay) / det, oy + (b2 * ax - a2 * bx) / det);
}
