import type { ChartError, TrialPicture } from "../../../engine/index.ts";
import { figure } from "../../charts/figure.ts";

/** How a result came about and how far off it was where that was checked; "" where nothing can be said yet. */
export function errorWords(picture: TrialPicture): string {
  switch (picture.kind) {
    case "pace":
    case "map":
    case "band":
      return chartWords(picture.error);
    case "best": {
      const { error, solves } = picture;
      if (!error) return `searched through ${solves} solves; the designs shown are still being solved one by one`;
      return `searched through ${solves} solves; solved one by one, the designs shown were off by ${off(error.forward_dB, "dB ahead")}, ${off(error.frontToBack_dB, "dB in front-to-back")}, ${off(error.swr, "in SWR")} at most, and the solved figures stand here`;
    }
    case "radials":
      return `each laying solved by itself, ${picture.solves} in all`;
    case "tolerance": {
      const { error, solves } = picture;
      if (!error) return `${solves} solves; not yet held against designs drawn at random`;
      return `${solves} solves; ${error.solved} designs drawn at random and solved were off by ${off(error.forward_dB, "dB ahead")}, ${off(error.frontToBack_dB, "dB in front-to-back")}, ${off(error.impedance_ohm, "Ω")} at most`;
    }
  }
}

function chartWords(error: ChartError): string {
  const { nodes, checks, error_ohm, error_dB, errorBehind, goal, isAgreed } = error;
  if (checks === 0) return `through ${nodes} solves, not checked yet`;
  const words = `through ${nodes} solves; ${checks} more beside them were off by ${off(error_dB, "dB ahead")}, ${off(100 * errorBehind, "% of that in the field behind")}, ${off(error_ohm, "Ω")} at most`;
  if (isAgreed) return words;
  return `${words}, short of the goal of ${goal.dB} dB, ${figure(100 * goal.behind, 0)} %, ${goal.ohm} Ω`;
}

const off = (value: number, unit: string) =>
  `${value > 0 && value < 0.005 ? "less than 0.01" : figure(value, 2)} ${unit}`;
