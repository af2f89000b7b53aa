import { demoPlan } from "./store/demoPlan.ts";
import { keepWork } from "./store/keepWork.ts";
import { restoreWork } from "./store/restoreWork.ts";
import { pageShelf } from "./store/shelf.ts";
import { planStore } from "./store/usePlan.ts";
import { openAddress, saveAside, savePlan } from "./topbar/planActions.ts";
import { applyTheme } from "./ui/applyTheme.ts";
import { say } from "./ui/say.ts";

/** Everything that happens before the first drawing: theme, the work of the last visit, a plan in the address. */
export function startPage(): void {
  applyTheme(document.documentElement);

  const { plan, unreadable, mayKeep } = restoreWork(pageShelf);
  planStore.getState().start(plan ?? demoPlan);
  if (unreadable)
    say(`The plan of your last visit cannot be read by this page and was put aside untouched. ${unreadable.why}`, {
      isTrouble: true,
      action: { label: "Save it as a file", run: () => saveAside(unreadable.text) },
    });
  if (mayKeep) keepOn();

  openAddress();
  addEventListener("hashchange", openAddress);
}

function keepOn(): void {
  const keeper = keepWork(planStore, pageShelf, (why) =>
    say(`Your work is not being kept: ${why}. Save it as a file before you leave.`, {
      isTrouble: true,
      action: { label: "Save as a file", run: savePlan },
    }),
  );
  addEventListener("pagehide", () => keeper.flush());
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") keeper.flush();
  });
  let isToldOfOthers = false;
  addEventListener("storage", (event) => {
    if (event.key === null || !event.key.endsWith(".plan") || !event.key.startsWith("hindwire.") || isToldOfOthers)
      return;
    isToldOfOthers = true;
    say("This page is open in another window too. Both keep their plan in the same place, and the last change wins.", {
      isTrouble: true,
      action: { label: "Save this one as a file", run: savePlan },
    });
  });
}
