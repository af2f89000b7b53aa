import { corePlan, drivenOf, type Plan, reflectorOf, spacingOf } from "../../../engine/index.ts";
import { groundName } from "../../text/groundName.ts";

/** What sets two plans apart, in a few words to each: what it was, and what it is now. */
export function planDifferences(before: Plan, now: Plan, length: (length_m: number) => string): string[] {
  const found: string[] = [];
  const say = (what: string, was: string, is: string) => {
    if (was !== is) found.push(`${what} ${was}, now ${is}`);
  };
  const sizes = (plan: Plan) => ({
    spacing: spacingOf(plan),
    driven: drivenOf(plan)?.height_m,
    reflector: reflectorOf(plan)?.height_m,
  });
  const [old, fresh] = [sizes(before), sizes(now)];
  const text = (length_m: number | undefined) => (length_m === undefined ? "none" : length(length_m));
  say("driven length", text(old.driven), text(fresh.driven));
  say("reflector length", text(old.reflector), text(fresh.reflector));
  say("spacing", text(old.spacing), text(fresh.spacing));
  say("frequency", `${before.frequency_MHz} MHz`, `${now.frequency_MHz} MHz`);
  say("ground", groundName(before.ground), groundName(now.ground));
  say("radials", radials(before, length), radials(now, length));
  const same = (plan: Plan) => JSON.stringify({ ...corePlan(plan), title: "" });
  if (found.length === 0 && same(before) !== same(now)) found.push("small things");
  return found;
}

function radials(plan: Plan, length: (length_m: number) => string): string {
  const each = plan.elements.map(({ radials: r }) => `${r.count} × ${length(r.length_m)} at ${length(r.height_m)}`);
  return [...new Set(each)].join(" and ");
}
