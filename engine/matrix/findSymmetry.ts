import type { Basis } from "../basis/Basis.ts";
import type { Segments } from "../wires/Segments.ts";
import type { Symmetry } from "./Symmetry.ts";

/** Ends are told apart to this length [m]; wires are joined at 1e-6. */
const GRAIN_M = 1e-7;
/** What wires are made of must agree to this, relative. */
const LIKENESS = 1e-8;
/** Fewer wires are not worth the search. */
const FEWEST_WIRES = 5;

type Move = (x: number, y: number) => readonly [number, number];

/**
 * Looks for the symmetry of wires whose ports stand on one axis or in one upright plane: turns about the one axis by which
 * a ring of radials is carried into itself, or else the mirror image in the plane of the ports. Null where there is none.
 *
 * @param ports port vectors, P columns of 2·N (see portVectors); a symmetry that moves one is none
 * @param portEnd per port: 2·segment + end
 */
export function findSymmetry(
  segments: Segments,
  basis: Basis,
  ports: Float64Array,
  portEnd: Int32Array,
): Symmetry | null {
  const wires = segments.firstOfWire.length - 1;
  if (wires < FEWEST_WIRES || portEnd.length === 0) return null;
  const at = Array.from(portEnd, (end) => {
    const s = end >> 1;
    const along = (end & 1) * segments.length[s]!;
    return [0, 1].map((c) => segments.start[3 * s + c]! + along * segments.tangent[3 * s + c]!) as [number, number];
  });
  const [x0, y0] = at[0]!;
  const far = at.find(([x, y]) => Math.hypot(x - x0, y - y0) > GRAIN_M);
  const candidates: Move[][] = [];
  if (!far) {
    const N = ringSize(segments);
    if (N > 1)
      candidates.push(
        Array.from({ length: N - 1 }, (_, g) => {
          const [c, s] = [Math.cos((2 * Math.PI * (g + 1)) / N), Math.sin((2 * Math.PI * (g + 1)) / N)];
          return (x, y) => [x0 + c * (x - x0) - s * (y - y0), y0 + s * (x - x0) + c * (y - y0)];
        }),
      );
  }
  const angle = far ? Math.atan2(far[1] - y0, far[0] - x0) : 0;
  const [c2, s2] = [Math.cos(2 * angle), Math.sin(2 * angle)];
  candidates.push([(x, y) => [x0 + c2 * (x - x0) + s2 * (y - y0), y0 + s2 * (x - x0) - c2 * (y - y0)]]);

  const ends = wireEnds(segments);
  for (const moves of candidates) {
    const found = tryMoves(segments, basis, ports, portEnd.length, ends, moves);
    if (found) return found;
  }
  return null;
}

function tryMoves(
  segments: Segments,
  basis: Basis,
  ports: Float64Array,
  P: number,
  ends: WireEnds,
  moves: readonly Move[],
): Symmetry | null {
  const N = basis.count;
  const functions = functionsByHalves(basis);
  const images: Int32Array[] = [Int32Array.from({ length: segments.firstOfWire.length - 1 }, (_, w) => w)];
  const carried: { readonly to: Int32Array; readonly sign: Int8Array }[] = [];
  for (const move of moves) {
    const wires = carryWires(segments, ends, move);
    const moved = wires && carryFunctions(segments, basis, functions, wires);
    if (!moved) return null;
    for (let p = 0; p < P; p++)
      for (let n = 0; n < N; n++) {
        const value = ports[2 * (p * N + n)]!;
        if (value !== 0 && ports[2 * (p * N + moved.to[n]!)]! !== value * moved.sign[n]!) return null;
      }
    images.push(wires.to);
    carried.push(moved);
  }

  const classOf = new Int32Array(N).fill(-1);
  const weight = new Float64Array(N);
  let count = 0;
  for (let n = 0; n < N; n++) {
    if (weight[n] !== 0 || classOf[n] !== -1) continue;
    const sign = new Map<number, number>([[n, 1]]);
    let forbidden = false;
    for (const { to, sign: s } of carried) {
      const known = sign.get(to[n]!);
      if (known !== undefined && known !== s[n]!) forbidden = true;
      sign.set(to[n]!, s[n]!);
    }
    for (const [m, s] of sign) {
      weight[m] = s / Math.sqrt(sign.size);
      classOf[m] = forbidden ? -1 : count;
    }
    if (!forbidden) count++;
  }
  return count < N ? { images, count, classOf, weight } : null;
}

interface WireEnds {
  /** 6 per wire: both ends [m]. */
  readonly at: Float64Array;
  /** Wire and direction by its ends. */
  readonly known: ReadonlyMap<string, { readonly wire: number; readonly reversed: boolean }>;
}

const pointKey = (x: number, y: number, z: number) =>
  `${Math.round(x / GRAIN_M)},${Math.round(y / GRAIN_M)},${Math.round(z / GRAIN_M)}`;

function wireEnds(segments: Segments): WireEnds {
  const { firstOfWire, start, tangent, length } = segments;
  const wires = firstOfWire.length - 1;
  const at = new Float64Array(6 * wires);
  const known = new Map<string, { wire: number; reversed: boolean }>();
  for (let w = 0; w < wires; w++) {
    const first = firstOfWire[w]!;
    const last = firstOfWire[w + 1]! - 1;
    for (let c = 0; c < 3; c++) {
      at[6 * w + c] = start[3 * first + c]!;
      at[6 * w + 3 + c] = start[3 * last + c]! + length[last]! * tangent[3 * last + c]!;
    }
    const [p, q] = [0, 3].map((e) => pointKey(at[6 * w + e]!, at[6 * w + e + 1]!, at[6 * w + e + 2]!));
    known.set(`${p}|${q}`, { wire: w, reversed: false });
    known.set(`${q}|${p}`, { wire: w, reversed: true });
  }
  return { at, known };
}

interface CarriedWires {
  readonly to: Int32Array;
  readonly reversed: Uint8Array;
}

function carryWires(segments: Segments, { at, known }: WireEnds, move: Move): CarriedWires | null {
  const wires = segments.firstOfWire.length - 1;
  const to = new Int32Array(wires);
  const reversed = new Uint8Array(wires);
  for (let w = 0; w < wires; w++) {
    const [p, q] = [0, 3].map((e) => {
      const [x, y] = move(at[6 * w + e]!, at[6 * w + e + 1]!);
      // Rounding may fall either side of a grain: look for the nearest of the few.
      return [x, y, at[6 * w + e + 2]!] as const;
    });
    const image = lookUp(known, p!, q!);
    if (!image || !areAlike(segments, w, image.wire, image.reversed)) return null;
    to[w] = image.wire;
    reversed[w] = image.reversed ? 1 : 0;
  }
  return { to, reversed };
}

/** Are two wires cut alike, of one thickness, metal and sheath, the second taken from its last segment where it is reversed? */
function areAlike(
  { firstOfWire, length, radius, internal_ohmPerM, sheath }: Segments,
  v: number,
  w: number,
  reversed: boolean,
): boolean {
  if (v === w && !reversed) return true;
  const count = firstOfWire[v + 1]! - firstOfWire[v]!;
  if (firstOfWire[w + 1]! - firstOfWire[w]! !== count) return false;
  const same = (a: number, b: number) => Math.abs(a - b) <= LIKENESS * Math.abs(a);
  for (let i = 0; i < count; i++) {
    const s = firstOfWire[v]! + i;
    const t = reversed ? firstOfWire[w + 1]! - 1 - i : firstOfWire[w]! + i;
    if (!same(length[s]!, length[t]!) || !same(radius[s]!, radius[t]!)) return false;
    if (!same(internal_ohmPerM[2 * s]!, internal_ohmPerM[2 * t]!) || !same(sheath[2 * s]!, sheath[2 * t]!))
      return false;
  }
  return true;
}

type Point = readonly [number, number, number];

/** The wire whose ends are within a grain of p and q. */
function lookUp(known: WireEnds["known"], p: Point, q: Point): { wire: number; reversed: boolean } | undefined {
  const exact = known.get(`${pointKey(...p)}|${pointKey(...q)}`);
  if (exact) return exact;
  const near = ([x, y, z]: Point) => {
    const keys: string[] = [];
    for (const i of [0, -0.4, 0.4])
      for (const j of [0, -0.4, 0.4]) keys.push(pointKey(x + i * GRAIN_M, y + j * GRAIN_M, z));
    return new Set(keys);
  };
  const qs = near(q);
  for (const a of near(p))
    for (const b of qs) {
      const image = known.get(`${a}|${b}`);
      if (image) return image;
    }
  return undefined;
}

/** Basis function and flow by the segment ends it is 1 at: those of its first and second half. */
function functionsByHalves(basis: Basis): { ofPair: Map<string, number>; halves: Int32Array } {
  const halves = new Int32Array(2 * basis.count).fill(-1);
  const signs = new Int8Array(2 * basis.count);
  for (let h = 0; h < basis.halfCount; h++) {
    const n = basis.halfBasis[h]!;
    const slot = halves[2 * n] === -1 ? 2 * n : 2 * n + 1;
    halves[slot] = 2 * basis.halfSegment[h]! + basis.halfEnd[h]!;
    signs[slot] = basis.halfSign[h]!;
  }
  const ofPair = new Map<string, number>();
  for (let n = 0; n < basis.count; n++) ofPair.set(`${halves[2 * n]} ${halves[2 * n + 1]}`, n);
  return { ofPair, halves };
}

function carryFunctions(
  segments: Segments,
  basis: Basis,
  { ofPair, halves }: ReturnType<typeof functionsByHalves>,
  wires: CarriedWires,
): { to: Int32Array; sign: Int8Array } | null {
  const { wire, firstOfWire } = segments;
  const carryEnd = (end: number): number => {
    if (end < 0) return -1;
    const s = end >> 1;
    const w = wire[s]!;
    const v = wires.to[w]!;
    const along = s - firstOfWire[w]!;
    return wires.reversed[w]
      ? 2 * (firstOfWire[v + 1]! - 1 - along) + 1 - (end & 1)
      : 2 * (firstOfWire[v]! + along) + (end & 1);
  };
  const to = new Int32Array(basis.count);
  const sign = new Int8Array(basis.count);
  for (let n = 0; n < basis.count; n++) {
    const p = carryEnd(halves[2 * n]!);
    const q = carryEnd(halves[2 * n + 1]!);
    // The current flows in through the first end and out through the second, whichever way the segments run.
    const same = ofPair.get(`${p} ${q}`);
    const turned = ofPair.get(`${q} ${p}`);
    if (same === undefined && turned === undefined) return null;
    to[n] = same ?? turned!;
    sign[n] = same !== undefined ? 1 : -1;
  }
  return { to, sign };
}

/** How many wires share the commonest make and height among those that are level. */
function ringSize(segments: Segments): number {
  const { firstOfWire, tangent, start, length } = segments;
  const counts = new Map<string, number>();
  for (let w = 0; w + 1 < firstOfWire.length; w++) {
    const s = firstOfWire[w]!;
    if (Math.abs(tangent[3 * s + 2]!) > 1e-12) continue;
    let L = 0;
    for (let t = s; t < firstOfWire[w + 1]!; t++) L += length[t]!;
    const key = `${L.toPrecision(8)} ${start[3 * s + 2]!.toPrecision(8)}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return Math.max(0, ...counts.values());
}
