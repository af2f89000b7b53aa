/** What 100 W would have to become for the same change in signal, to two figures: "240 W", "1.2 kW", "61 W". */
export function powerInWords(change_dB: number): string {
  const power_W = 100 * 10 ** (change_dB / 10);
  const step = 10 ** (Math.floor(Math.log10(power_W)) - 1);
  const rounded_W = Math.round(power_W / step) * step;
  if (rounded_W >= 1000) return `${Number((rounded_W / 1000).toPrecision(2))} kW`;
  return `${Number(rounded_W.toPrecision(2))} W`;
}
