/**
 * Total loss of a line whose far end has a given SWR: 10 log[(a² − ρ²)/(a(1 − ρ²))], a = 10^(matched loss/10),
 * ρ = (S − 1)/(S + 1) [dB]. For a line of real impedance; exact then, whatever its length.
 *
 * Source: the standard expression of the trade's handbooks (from memory).
 */
export function lossWithSwr_dB(matchedLoss_dB: number, antennaSwr: number): number {
  const a = 10 ** (matchedLoss_dB / 10);
  const rho = (antennaSwr - 1) / (antennaSwr + 1);
  return 10 * Math.log10((a * a - rho * rho) / (a * (1 - rho * rho)));
}
