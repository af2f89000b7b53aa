/**
 * What a meter at the rig reads of an SWR at the antenna: the reflection comes back weaker by the matched loss, twice,
 * ρ 10^(−loss/10). For a line of real impedance.
 */
export function swrAtRig(matchedLoss_dB: number, antennaSwr: number): number {
  const rho = ((antennaSwr - 1) / (antennaSwr + 1)) * 10 ** (-matchedLoss_dB / 10);
  return (1 + rho) / (1 - rho);
}
