import { FEW_RADIALS } from "../../plan/edits/layings.ts";
import { limits } from "../../plan/limits.ts";
import { failed, type Note, ok, type Problem, type Result } from "../../result.ts";
import { wavelength_m } from "../../units.ts";
import { isPreview } from "../trial/isPreview.ts";
import type { Known, Trial, TrialAsk } from "../trial/Trial.ts";
import { checkRadialsRequest } from "./checkRadialsRequest.ts";
import { guessOver } from "./guessOver.ts";
import { heightBudget, loudest } from "./heightBudget.ts";
import { LayingTable } from "./LayingTable.ts";
import { layingReader } from "./layingReader.ts";
import { countsToTry, type Lay, LONGEST_wl, lengthsToTry, SHORTEST_wl, toCentimetre } from "./layingsToTry.ts";
import type { HeightBudget, RadialsPicture } from "./RadialsPicture.ts";
import type { RadialsRequest } from "./RadialsRequest.ts";

/** Lengths of wire at which the curve is drawn, as parts of what was asked. */
const CURVE = [0.15, 0.25, 0.4, 0.55, 0.7, 0.85, 1, 1.25, 1.5];
/** The fed element's share in the splits tried. */
const SPLITS = [0.3, 0.4, 0.5, 0.6, 0.7];
const KNEE_dBPer10m = 0.1;
const MOST_RADIALS = 60;
/** Beyond this an upright is not in tune with its radials. */
const UNTUNED_SWR = 2;
/** Guesses that are solved for each length of wire, and for each element of a split. */
const TRIED = 2;

/**
 * How to lay a length of wire as radials: how many, how long, how much under each element; in every height asked about.
 *
 * For each height: equal fields of many counts and lengths are solved, then those that these make look best for each length of
 * wire, then splits made of what is best for each element's share. Every figure shown is a solve of that very plan; the curve is
 * the best of all solved that the wire suffices for, so it never falls. Uprights stay as they are cut: radials that detune them,
 * raised ones most of all, are told with what that costs, and a note says so.
 *
 * Problems: see `checkRadialsRequest`; those of the solves when none succeeds.
 */
export function radialsTrial(candidate: RadialsRequest): Result<Trial<RadialsPicture>> {
  const checked = checkRadialsRequest(candidate);
  if (!checked.ok) return checked;
  const request = checked.value;
  const { plan, wire_m } = request;
  const isQuick = isPreview(plan);
  const heights = [...new Set(request.heights_m)].filter((height_m) => !isQuick || height_m <= limits.previewHeight_m);
  if (heights.length === 0)
    return failed({
      code: "raised-needs-full-wave",
      where: "heights_m",
      message: `Radials raised ${request.heights_m.join(", ")} m need the full-wave soil model; the preview takes up to ${limits.previewHeight_m} m.`,
    });
  const reader = layingReader(request.look);
  const table = new LayingTable(plan, reader);
  const own = reader.ask(plan);

  return ok((known) => {
    const before = table.count;
    const found = heights.map((height_m) => search(request, height_m, table, known));
    const ownSample = known(own);
    const asks = [...(ownSample ? [] : [own]), ...found.flatMap(({ asks: wanted }) => wanted)];
    const budgets = found.flatMap(({ budget }) => budget ?? []);
    if (asks.length === 0 && budgets.length === 0) return failed(...unique(table.refused(known)));
    const part = found.reduce((sum, one) => sum + one.part, 0) / found.length;
    if (budgets.length === 0) return ok({ asks, picture: null, part });
    const ownLay: Lay = {
      height_m: plan.elements[0]!.radials.height_m,
      fields: plan.elements.map(({ id, radials: { count, length_m } }) => ({ elementId: id, count, length_m })),
    };
    const picture: RadialsPicture = {
      kind: "radials",
      isPreview: isQuick,
      wire_m,
      own: ownSample?.ok ? reader.read(plan, ownLay, ownSample.value) : null,
      heights: budgets,
      knee_dBPer10m: request.knee_dBPer10m ?? KNEE_dBPer10m,
      best: loudest(budgets.map(({ best }) => best))!,
      solves: Math.max(before, table.count) + (ownSample ? 1 : 0),
      notes: notesOn(request, heights, budgets),
    };
    return ok({ asks, picture, part });
  });
}

function search(
  { plan, wire_m, mostRadials, knee_dBPer10m = KNEE_dBPer10m }: RadialsRequest,
  height_m: number,
  table: LayingTable,
  known: Known,
): { asks: TrialAsk[]; budget: HeightBudget | null; part: number } {
  const elements = plan.elements.length;
  const wavelength = wavelength_m(plan.frequency_MHz);
  const even = (count: number, length_m: number): Lay => ({
    height_m,
    fields: plan.elements.map(({ id }) => ({ elementId: id, count, length_m })),
  });
  const most_m = (CURVE.at(-1)! * wire_m) / elements;
  const counts = countsToTry(mostRadials ?? MOST_RADIALS, most_m, wavelength);
  const grid = counts.flatMap((count) =>
    lengthsToTry(wavelength)
      .filter((length_m) => count * length_m <= most_m)
      .map((length_m) => even(count, length_m)),
  );
  const first = table.look(grid, known);
  const amounts = CURVE.map((part) => part * wire_m).filter(
    (amount_m) => amount_m / elements >= counts[0]! * SHORTEST_wl * wavelength,
  );
  if (first.asks.length > 0) {
    const budget = heightBudget(first.solved, [], [], amounts, wire_m, height_m, knee_dBPer10m);
    return { asks: first.asks, budget, part: (0.6 * first.solved.length) / grid.length };
  }

  // At the wire asked for, every count to its full length and at its top; elsewhere only what looks best.
  const share_m = wire_m / elements;
  const all = guessOver(first.solved, share_m, wavelength);
  const refined = [
    ...all.map(({ count, length_m }) => even(count, length_m)),
    ...amounts.flatMap((amount_m) =>
      guessOver(first.solved, amount_m / elements, wavelength)
        .slice(0, TRIED)
        .map(({ count, length_m }) => even(count, length_m)),
    ),
  ];
  const second = table.look(refined, known);
  const evens = [...new Set([...first.solved, ...second.solved])];
  const full = second.solved.filter(({ fields }) => {
    const { count, length_m } = fields[0]!;
    return length_m === toCentimetre(Math.min(share_m / count, LONGEST_wl * wavelength));
  });
  if (second.asks.length > 0)
    return {
      asks: second.asks,
      budget: heightBudget(evens, full, [], amounts, wire_m, height_m, knee_dBPer10m),
      part: 0.6,
    };

  const parts = elements < 2 ? [] : SPLITS.filter((part) => part !== 0.5);
  const splits = parts.map((firstPart) => {
    const choices = (part: number) => guessOver(evens, part * wire_m, wavelength).slice(0, TRIED);
    const fed = choices(firstPart);
    const others = choices((1 - firstPart) / (elements - 1));
    const driven = plan.elements.findIndex(({ base }) => base.kind === "fed");
    const lays = fed.flatMap((a) =>
      others.map(
        (b): Lay => ({
          height_m,
          fields: plan.elements.map(({ id }, i) => {
            const { count, length_m } = i === driven ? a : b;
            return { elementId: id, count, length_m };
          }),
        }),
      ),
    );
    return { firstPart, ...table.look(lays, known) };
  });
  const asks = splits.flatMap((split) => split.asks);
  const budget = heightBudget(evens, full, splits, amounts, wire_m, height_m, knee_dBPer10m);
  return { asks, budget, part: asks.length > 0 ? 0.85 : 1 };
}

function unique(problems: readonly Problem[]): Problem[] {
  return [...new Map(problems.map((problem) => [`${problem.code} ${problem.message}`, problem])).values()].slice(0, 20);
}

function notesOn({ heights_m }: RadialsRequest, heights: readonly number[], budgets: readonly HeightBudget[]): Note[] {
  const notes: Note[] = [];
  for (const height_m of new Set(heights_m))
    if (!heights.includes(height_m))
      notes.push({
        code: "height-left-out",
        message: `Radials raised ${height_m} m are left out: the preview takes up to ${limits.previewHeight_m} m.`,
        measured: height_m,
      });
  const few = budgets
    .flatMap(({ best }) => best.fields.map(({ count }) => count))
    .filter((count) => count < FEW_RADIALS);
  if (few.length > 0)
    notes.push({
      code: "few-radials",
      message: `A best laying has only ${Math.min(...few)} radials; with fewer than ${FEW_RADIALS} much depends on how close to the soil they come to lie.`,
      measured: Math.min(...few),
    });
  for (const { height_m, best } of budgets)
    if (best.swr50 > UNTUNED_SWR)
      notes.push({
        code: "wants-retrimming",
        message: `With the best laying at ${height_m} m the SWR is ${best.swr50.toFixed(1)}: the uprights are as in the plan and want retrimming, after which gain and front to back are others.`,
        measured: best.swr50,
      });
  return notes;
}
