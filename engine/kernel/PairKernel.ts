import type { Segments } from "../wires/Segments.ts";

/**
 * Interaction of two straight segments in a given surrounding (free space, over a ground) at one wavenumber.
 * Writes, for unit ramps u, u' along segments s and t,
 *
 *   out[at … at+3], out[at+4 … at+7]: Re and Im of ∫∫ u^p u'^q t·G·t' ds ds', (p,q) = (0,0), (1,0), (0,1), (1,1)  [m]
 *   out[at+8], out[at+9]:             Re and Im of ∫∫ K ds ds'                                                  [m]
 *
 * G is 4π times the vector potential's kernel, tangents taken in; K is 4π times the scalar potential's.
 * Exchanging s and t must exchange u and u' and change nothing else.
 */
export type PairKernel = (out: Float64Array, at: number, segments: Segments, s: number, t: number) => void;

/** Numbers a pair takes. */
export const PAIR_SIZE = 10;
