/**
 * Products of two rows with two others, no conjugate: Σ_t a_p b_u, Σ a_p b_v, Σ a_q b_u, Σ a_q b_v over t < n.
 *
 * Four sums at a time, so that every number that is loaded serves twice and no sum waits for the one before it. A row may be
 * its own partner: each sum comes out the same, digit by digit, whatever it is formed together with.
 *
 * @param out 8 numbers, written: re and im of the four
 * @param p,q where the rows of a begin; u, v those of b
 */
export function rowProducts(
  out: Float64Array,
  aRe: Float64Array,
  aIm: Float64Array,
  p: number,
  q: number,
  bRe: Float64Array,
  bIm: Float64Array,
  u: number,
  v: number,
  n: number,
): void {
  let pur = 0;
  let pui = 0;
  let pvr = 0;
  let pvi = 0;
  let qur = 0;
  let qui = 0;
  let qvr = 0;
  let qvi = 0;
  for (let t = 0; t < n; t++) {
    const pr = aRe[p + t]!;
    const pi = aIm[p + t]!;
    const qr = aRe[q + t]!;
    const qi = aIm[q + t]!;
    const ur = bRe[u + t]!;
    const ui = bIm[u + t]!;
    const vr = bRe[v + t]!;
    const vi = bIm[v + t]!;
    pur += pr * ur - pi * ui;
    pui += pr * ui + pi * ur;
    pvr += pr * vr - pi * vi;
    pvi += pr * vi + pi * vr;
    qur += qr * ur - qi * ui;
    qui += qr * ui + qi * ur;
    qvr += qr * vr - qi * vi;
    qvi += qr * vi + qi * vr;
  }
  out[0] = pur;
  out[1] = pui;
  out[2] = pvr;
  out[3] = pvi;
  out[4] = qur;
  out[5] = qui;
  out[6] = qvr;
  out[7] = qvi;
}
