import { type BenchAllowance, layRadials, type SavedPlan } from "../../../../engine/index.ts";
import { elementName } from "../../yard/elementName.ts";
import { cutLength_m } from "../refit/asCut.ts";
import { benchOf } from "../useBenchEdit.ts";

/** One kind of piece that is cut. */
export interface CutPiece {
  readonly part: string;
  readonly count: number;
  /** Copper, aluminium, or as the builder has it; with its thickness. */
  readonly conductor: string;
  readonly diameter_mm: number;
  /** What it is to act as, electrically. */
  readonly acts_m: number;
  /** What it is to be in the end, by the tape. */
  readonly finished_m: number;
  /** What is cut from the reel at first. */
  readonly cut_m: number;
  readonly isRadial: boolean;
}

/** Lengths nearer than this are cut as one. */
const same_m = 0.0005;

/**
 * Everything that is cut from wire or tube, element by element: uprights, radials as they are laid (those that end at a
 * neighbour's field are shorter), buses and bonds, rods. Allowances are added to uprights and radials.
 */
export function cutList(plan: SavedPlan, allowance: BenchAllowance): readonly CutPiece[] {
  const { asMeasured } = benchOf(plan);
  const laid = layRadials(
    plan,
    plan.elements.map(() => 0),
  );
  const pieces = plan.elements.flatMap((element, i): CutPiece[] => {
    const name = elementName(plan, element);
    const isFed = element.base.kind === "fed";
    const finished_m = cutLength_m(asMeasured, element.id, element.height_m);
    const longer = (isFed ? allowance.driven_percent : allowance.reflector_percent) / 100;
    const conductor = element.conductor === "perfect" ? "wire" : element.conductor;
    return [
      {
        part: `${name}, upright`,
        count: 1,
        conductor,
        diameter_mm: element.diameter_mm,
        acts_m: element.height_m,
        finished_m,
        cut_m: finished_m * (1 + longer),
        isRadial: false,
      },
      ...grouped(laid.filter((wire) => wire.kind === "radial" && wire.element === i).map(lengthOf)).map(
        ({ length_m, count }): CutPiece => ({
          part: `${name}, radials`,
          count,
          conductor: element.radials.insulation ? "insulated wire" : "bare wire",
          diameter_mm: element.radials.diameter_mm,
          acts_m: length_m,
          finished_m: length_m,
          cut_m: length_m * (1 + allowance.radial_percent / 100),
          isRadial: true,
        }),
      ),
      ...(element.stake
        ? [
            {
              part: `${name}, rod in the soil`,
              count: 1,
              conductor: "rod",
              diameter_mm: element.stake.diameter_mm,
              acts_m: element.stake.length_m,
              finished_m: element.stake.length_m,
              cut_m: element.stake.length_m,
              isRadial: false,
            },
          ]
        : []),
    ];
  });
  // The engine lays these joint by joint; they are cut as one wire each.
  const joining = (["bus", "bond"] as const).flatMap((kind) =>
    plan.elements.flatMap((_, i): CutPiece[] => {
      const lengths = laid.filter((wire) => wire.kind === kind && wire.element === i).map(lengthOf);
      const length_m = lengths.reduce((sum, one) => sum + one, 0);
      if (lengths.length === 0) return [];
      return [
        {
          part: kind === "bus" ? "bus between the fields" : "bond from base to base",
          count: 1,
          conductor: "bare wire",
          diameter_mm: plan.elements[i]!.radials.diameter_mm,
          acts_m: length_m,
          finished_m: length_m,
          cut_m: length_m,
          isRadial: true,
        },
      ];
    }),
  );
  return [...pieces, ...joining];
}

const lengthOf = ({ from_m, to_m }: { readonly from_m: readonly number[]; readonly to_m: readonly number[] }) =>
  Math.hypot(...from_m.map((v, axis) => to_m[axis]! - v));

/** Lengths that are alike counted together, longest first. */
function grouped(lengths_m: readonly number[]): { readonly length_m: number; readonly count: number }[] {
  const found: { length_m: number; count: number }[] = [];
  for (const length_m of lengths_m.toSorted((a, b) => b - a)) {
    const last = found.at(-1);
    if (last && last.length_m - length_m < same_m) last.count++;
    else found.push({ length_m, count: 1 });
  }
  return found;
}

/** Wire and tube to buy, by what it is: the sum of all that is cut. */
export function materials(pieces: readonly CutPiece[]): readonly {
  readonly conductor: string;
  readonly diameter_mm: number;
  readonly pieces: number;
  readonly total_m: number;
}[] {
  const byKind = new Map<string, { conductor: string; diameter_mm: number; pieces: number; total_m: number }>();
  for (const { conductor, diameter_mm, count, cut_m } of pieces) {
    const key = `${conductor} ${diameter_mm}`;
    const kind = byKind.get(key) ?? { conductor, diameter_mm, pieces: 0, total_m: 0 };
    kind.pieces += count;
    kind.total_m += count * cut_m;
    byKind.set(key, kind);
  }
  return [...byKind.values()];
}
