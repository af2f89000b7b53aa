import type { ElementPlan, Plan } from "../../contract.ts";
import { corePlan } from "../../plan/edits/corePlan.ts";
import { drivenOf } from "../../plan/edits/drivenOf.ts";
import { reflectorOf } from "../../plan/edits/reflectorOf.ts";
import { withElementHeight } from "../../plan/edits/withElementHeight.ts";
import { withSpacing } from "../../plan/edits/withSpacing.ts";

/** What of a pair is changed; absent: as in the plan. */
export interface PairChange {
  readonly spacing_m?: number;
  readonly drivenHeight_m?: number;
  readonly reflectorHeight_m?: number;
}

/**
 * A plan's driven and reflector elsewhere or cut otherwise, radials laid anew, other elements as they are. Only what the
 * solver needs is kept.
 *
 * @throws RangeError when the plan lacks one of the two
 */
export function pairAt(plan: Plan, { spacing_m, drivenHeight_m, reflectorHeight_m }: PairChange): Plan {
  const { driven, reflector } = pairOf(plan);
  let changed = corePlan(plan);
  // Moved last: "the reflector" is found by where it stands.
  if (drivenHeight_m !== undefined) changed = withElementHeight(changed, driven.id, drivenHeight_m);
  if (reflectorHeight_m !== undefined) changed = withElementHeight(changed, reflector.id, reflectorHeight_m);
  return spacing_m === undefined ? changed : withSpacing(changed, spacing_m);
}

function pairOf(plan: Plan): { readonly driven: ElementPlan; readonly reflector: ElementPlan } {
  const driven = drivenOf(plan);
  const reflector = reflectorOf(plan);
  if (!driven || !reflector) throw new RangeError("pairAt: the plan has no fed element, or none that is not");
  return { driven, reflector };
}
