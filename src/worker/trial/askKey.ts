import type { Plan, TrialAsk } from "../../../engine/index.ts";
import { corePlan } from "../../../engine/index.ts";

/** Names are asked for again and again while a trial makes up its mind; most of its asks share plan and directions. */
const written = new WeakMap<object, string>();

function text(one: object, write: () => string): string {
  let found = written.get(one);
  if (found === undefined) {
    found = write();
    written.set(one, found);
  }
  return found;
}

/** The name an ask's answer is kept by. The plan's title changes no figure. */
export function askKey({ plan, frequency_MHz, directions }: TrialAsk): string {
  const own = text(plan, () => JSON.stringify({ ...corePlan(plan), title: "" }));
  return `${frequency_MHz} ${own} ${text(directions, () => JSON.stringify(directions))}`;
}

/** Names the soil's tables that an ask takes, dear to build and kept by the worker that built them; "" where it takes none. */
export function tablesKey({ plan, frequency_MHz }: Pick<TrialAsk, "plan" | "frequency_MHz">): string {
  return takesTables(plan) ? `${frequency_MHz} ${JSON.stringify(plan.ground)}` : "";
}

export function takesTables(plan: Plan): boolean {
  return plan.ground.kind === "soil" && plan.soilModel === "full-wave";
}
