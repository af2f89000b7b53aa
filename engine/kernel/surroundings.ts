import { C0_mPerS } from "../constants.ts";
import type { WireInput, WireProblem } from "../contract.ts";
import type { BlockStore } from "../matrix/BlockStore.ts";
import { keptBlocks } from "../matrix/keptBlocks.ts";
import { imagesCurrents } from "../wires/imagesCurrents.ts";
import { freeSpaceKernel } from "./freeSpaceKernel.ts";
import { type Burial, keptKernels } from "./halfSpace/keptKernels.ts";
import { keptTable } from "./halfSpace/keptTable.ts";
import { halfSpaceKernel } from "./halfSpaceKernel.ts";
import { halfSpacePanels } from "./halfSpacePanels.ts";
import type { PairKernel } from "./PairKernel.ts";
import type { PanelKernel } from "./PanelKernel.ts";
import { panelsOverImage } from "./panelsOverImage.ts";
import { perfectGroundKernel } from "./perfectGroundKernel.ts";

/** Up to this many wires, looking for pairs of one geometry costs more than it saves. */
const FEW_WIRES = 6;

export interface Surroundings {
  readonly kernel: PairKernel;
  /** The same between points, over soil and in its preview. */
  readonly panels?: PanelKernel | undefined;
  readonly store?: BlockStore;
}

/**
 * The kernel of a problem's surroundings, and where its blocks are kept.
 *
 * @param reach_m largest distance between a wire and the image of another [m]
 */
export function surroundings(problem: WireProblem, reach_m: number): Surroundings {
  const { frequency_Hz, ground } = problem;
  const k = (2 * Math.PI * frequency_Hz) / C0_mPerS;
  if (ground.kind === "soil" && !imagesCurrents(problem)) {
    const { relativePermittivity, conductivity_SPerM } = ground;
    const table = keptTable(frequency_Hz, relativePermittivity, conductivity_SPerM, reach_m);
    const burial = burialOf(problem.wires);
    const buried = burial && keptKernels(frequency_Hz, relativePermittivity, conductivity_SPerM, reach_m, burial);
    return {
      kernel: halfSpaceKernel(table, buried),
      panels: halfSpacePanels(table, buried),
      store: keptBlocks(`${frequency_Hz}|${relativePermittivity}|${conductivity_SPerM}`),
    };
  }
  // The preview over soil: a plan under a moving finger, and no reference.
  if (ground.kind === "soil")
    return { kernel: perfectGroundKernel(k), panels: panelsOverImage(k), store: keptBlocks(`${frequency_Hz}`) };
  const kernel = imagesCurrents(problem) ? perfectGroundKernel(k) : freeSpaceKernel(k);
  return problem.wires.length > FEW_WIRES ? { kernel, store: new Map() } : { kernel };
}

/** How deep the wires in soil lie; undefined where none is in soil. */
function burialOf(wires: readonly WireInput[]): Burial | undefined {
  const depths = wires
    .map(({ from_m, to_m }) => [-from_m[2], -to_m[2]] as const)
    .filter(([a, b]) => Math.max(a, b) > 0);
  if (depths.length === 0) return undefined;
  const level = depths.filter(([a, b]) => a === b).map(([a]) => a);
  return {
    deepest_m: depths.reduce((most, [a, b]) => Math.max(most, a, b), 0),
    level_m: [...new Set(level)],
    sloping: level.length < depths.length,
  };
}
