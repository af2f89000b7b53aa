import type { Centre } from "./gatherCentres.ts";
import type { ScreenInput } from "./ScreenInput.ts";
import { perfectRadius_m } from "./surfaceAdmittance.ts";

/** A circle on the ground where the surface impedance jumps, in the frame of `GroundFrame`. */
export interface Edge {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Where the integration over the ground happens: coordinates about the middle of the centres, x along their line. */
export interface GroundFrame {
  /** Middle in world coordinates, and direction of the frame's x axis. */
  readonly originX: number;
  readonly originY: number;
  readonly cos: number;
  readonly sin: number;
  /** Centres in the frame. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** All conductors and radials lie mirror-symmetric about the frame's x axis: half the plane tells all. */
  readonly mirrored: boolean;
  /** Only one centre: nothing depends on the direction. */
  readonly round: boolean;
  readonly edges: readonly Edge[];
  /** Circle about the origin that holds every centre and edge: cells inside, rings outside. */
  readonly cellRadius: number;
  /** From here on outward the soil is bare and the path of integration leaves the real axis. */
  readonly tailRadius: number;
}

/** Lays the frame and finds the circles at which the integrand breaks. */
export function frameGround(input: ScreenInput, centres: readonly Centre[]): GroundFrame {
  const n = centres.length;
  const sloping = input.sloping;
  const hasSloping = sloping !== undefined && sloping.radius_m.length > 0;

  // Axis through the two centres farthest apart; middle between them.
  let far = -1;
  let a = 0;
  let b = 0;
  for (let i = 0; i < n; i++)
    for (let j = i; j < n; j++) {
      const d = (centres[i]!.x_m - centres[j]!.x_m) ** 2 + (centres[i]!.y_m - centres[j]!.y_m) ** 2;
      if (d > far) {
        far = d;
        a = i;
        b = j;
      }
    }
  const span = Math.sqrt(Math.max(far, 0));
  const originX = n === 0 ? 0 : 0.5 * (centres[a]!.x_m + centres[b]!.x_m);
  const originY = n === 0 ? 0 : 0.5 * (centres[a]!.y_m + centres[b]!.y_m);
  const cos = span > 0 ? (centres[b]!.x_m - centres[a]!.x_m) / span : 1;
  const sin = span > 0 ? (centres[b]!.y_m - centres[a]!.y_m) / span : 0;
  const toX = (x: number, y: number) => (x - originX) * cos + (y - originY) * sin;
  const toY = (x: number, y: number) => (y - originY) * cos - (x - originX) * sin;
  const x = Float64Array.from(centres, (c) => toX(c.x_m, c.y_m));
  const y = Float64Array.from(centres, (c) => toY(c.x_m, c.y_m));
  const inLine = y.every((v) => Math.abs(v) <= 1e-9 * span);
  if (inLine) y.fill(0);

  const edges: Edge[] = [];
  let reach = 0;
  for (const s of input.screens) {
    if (!(s.count > 0 && s.length_m > 0)) continue;
    const ex = toX(s.x_m, s.y_m);
    const ey = inLine ? 0 : toY(s.x_m, s.y_m);
    edges.push({ x: ex, y: ey, radius: s.length_m });
    reach = Math.max(reach, Math.sqrt(ex * ex + ey * ey) + s.length_m);
    const perfect = Math.min(perfectRadius_m(s), s.length_m);
    // The perfect middle breaks the neighbour's cell only when it is large enough to enter it.
    for (let i = 0; i < n; i++) {
      const d = Math.sqrt((x[i]! - ex) ** 2 + (y[i]! - ey) ** 2);
      if (d > 1e-6 && perfect > 0.5 * d) {
        edges.push({ x: ex, y: ey, radius: perfect });
        break;
      }
    }
  }

  // The tail's path needs room from the conductors' images in the complex plane, which lie one height away.
  let centreReach = 0;
  for (let i = 0; i < n; i++) centreReach = Math.max(centreReach, Math.sqrt(x[i]! ** 2 + y[i]! ** 2));
  let height = 0;
  for (const line of input.lines) height = Math.max(height, line.z_m[line.z_m.length - 1] ?? 0);
  if (hasSloping)
    for (let i = 0; i < sloping.radius_m.length; i++)
      for (const end of [sloping.from_m, sloping.to_m]) {
        const ex = toX(end[3 * i]!, end[3 * i + 1]!);
        const ey = toY(end[3 * i]!, end[3 * i + 1]!);
        centreReach = Math.max(centreReach, Math.sqrt(ex * ex + ey * ey));
        height = Math.max(height, end[3 * i + 2]!);
      }
  const wavelength = (2 * Math.PI) / input.k_radPerM;
  const cellRadius = Math.max(1.05 * reach, 1.6 * centreReach, 0.1 * wavelength);
  return {
    originX,
    originY,
    cos,
    sin,
    x,
    y,
    mirrored: inLine && !hasSloping,
    round: n <= 1 && !hasSloping,
    edges,
    cellRadius,
    tailRadius: Math.max(cellRadius, height, 0.25 * wavelength),
  };
}
