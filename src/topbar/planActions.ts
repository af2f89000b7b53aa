import { checkSavedPlan, decodePlanLink, readPlanFile, writePlanFile } from "../../engine/index.ts";
import { demoPlan } from "../store/demoPlan.ts";
import { keptNames } from "../store/keptNames.ts";
import { openPlan } from "../store/openPlan.ts";
import { readKeptPlan } from "../store/readKeptPlan.ts";
import { pageShelf } from "../store/shelf.ts";
import { planStore } from "../store/usePlan.ts";
import { fileName } from "../text/fileName.ts";
import { download } from "../ui/download.ts";
import { say } from "../ui/say.ts";

const ending = ".hindwire.json";
const undo = { label: "Undo", run: () => planStore.getState().undo() };

/** The example, in place of what is there. */
export function newFromDemo(): void {
  openPlan(planStore.getState(), pageShelf, { ok: true, value: demoPlan }, "open the example");
  say("The example is open. Your earlier plan is one Undo away.", { action: undo });
}

/** A file holds only plans that can be opened again; an unfinished one stays in this browser's keeping. */
export function savePlan(): void {
  // A figure still being typed is taken first, as if the field had been left.
  const field = document.activeElement;
  if (field instanceof HTMLInputElement) {
    field.blur();
    field.focus();
  }
  const { plan } = planStore.getState();
  const checked = checkSavedPlan(plan);
  if (!checked.ok) {
    say(`Not saved yet. ${checked.problems[0]?.message}`, { isTrouble: true });
    return;
  }
  const name = fileName(plan.title, ending);
  download(name, writePlanFile(plan), "application/json");
  say(`Saved as ${name}.`);
}

export async function openPlanFile(file: File): Promise<void> {
  let text: string;
  try {
    text = await file.text();
  } catch {
    say(`${file.name} could not be read from the disk.`, { isTrouble: true });
    return;
  }
  const read = readPlanFile(text);
  if (!read.ok) {
    refuse(file.name, read.problems);
    return;
  }
  openPlan(planStore.getState(), pageShelf, read, `open ${file.name}`);
  say(`${file.name} is open.`, { action: undo });
}

/**
 * Opens the plan in the address, if there is one, and takes it out of the address, so that a reload brings back the
 * work and not the link once more.
 */
export function openAddress(): void {
  const { hash, pathname, search } = location;
  if (!/^#p\d+=/.test(hash)) return;
  history.replaceState(null, "", pathname + search);
  const read = decodePlanLink(hash);
  if (!read.ok) {
    refuse("The link", read.problems);
    return;
  }
  openPlan(planStore.getState(), pageShelf, read, "open the link");
  say("The plan from the link is open. Your earlier work is one Undo away, and in the Plan menu.", { action: undo });
}

export function hasEarlierWork(): boolean {
  return readKeptPlan(pageShelf.read(keptNames.earlier)).kind === "plan";
}

/** The plan that a link, a file or the example took the place of; they change places. */
export function openEarlierWork(): void {
  const earlier = readKeptPlan(pageShelf.read(keptNames.earlier));
  if (earlier.kind !== "plan") {
    say("There is no earlier work.");
    return;
  }
  openPlan(planStore.getState(), pageShelf, { ok: true, value: earlier.plan }, "go back to earlier work");
  say("Your earlier work is open.", { action: undo });
}

/** What autosave found and this page cannot read, as the file it is. */
export function saveAside(text: string): void {
  download(`set-aside${ending}`, text, "application/json");
}

function refuse(what: string, problems: readonly { readonly where: string; readonly message: string }[]): void {
  const [first, ...more] = problems;
  const rest = more.length > 0 ? ` (and ${more.length} more)` : "";
  const where = first?.where ? `${first.where}: ` : "";
  say(`${what} was not opened; your plan is untouched. ${where}${first?.message ?? ""}${rest}`, { isTrouble: true });
}
