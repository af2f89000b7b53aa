import type { PortInput } from "../contract.ts";
import { solveGeneral } from "../linalg/solveGeneral.ts";

/**
 * Admittance matrix of a port network with an impedance in series with each port, as seen from outside of them:
 * V' = V + S I with I = Y V, so Y' = (1 + Y S)⁻¹ Y. The matrix itself where no port has one.
 *
 * @param admittance P × P complex, row-major, symmetric [S]
 */
export function withSeries(admittance: Float64Array, ports: readonly PortInput[]): Float64Array {
  if (!ports.some((port) => port.series_ohm)) return admittance;
  const P = ports.length;
  const left = new Float64Array(2 * P * P);
  for (let i = 0; i < P; i++)
    ports.forEach(({ series_ohm }, j) => {
      const at = 2 * (i * P + j);
      const { re, im } = series_ohm ?? { re: 0, im: 0 };
      left[at] = (i === j ? 1 : 0) + admittance[at]! * re - admittance[at + 1]! * im;
      left[at + 1] = admittance[at]! * im + admittance[at + 1]! * re;
    });
  // Columns of a symmetric matrix are its rows, of Y as of Y'.
  return solveGeneral(left, P, admittance, P);
}

/** Voltages inside of the series impedances, V = V' − S I [V]. */
export function insideSeries(volts: Float64Array, amperes: Float64Array, ports: readonly PortInput[]): Float64Array {
  if (!ports.some((port) => port.series_ohm)) return volts;
  const inside = volts.slice();
  ports.forEach(({ series_ohm }, i) => {
    if (!series_ohm) return;
    const { re, im } = series_ohm;
    inside[2 * i]! -= re * amperes[2 * i]! - im * amperes[2 * i + 1]!;
    inside[2 * i + 1]! -= re * amperes[2 * i + 1]! + im * amperes[2 * i]!;
  });
  return inside;
}
