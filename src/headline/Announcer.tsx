import { useEffect, useState } from "react";
import { useProblems } from "../store/useProblems.ts";
import type { useComparison } from "./useComparison.ts";

/** Long enough for a drag or a run of arrow keys to have ended. */
const quiet_ms = 900;

/** Tells a screen reader the headline once a change has settled. */
export function Announcer({ comparison }: { readonly comparison: ReturnType<typeof useComparison> }) {
  const problems = useProblems();
  const [said, setSaid] = useState("");
  const now = problems[0]
    ? `The figures are old. ${problems.map((problem) => problem.message).join(" ")}`
    : (comparison?.figures.map((one) => `${one.value} ${one.unit} ${one.label}`).join(". ") ?? "");

  useEffect(() => {
    const timer = setTimeout(() => setSaid(now), quiet_ms);
    return () => clearTimeout(timer);
  }, [now]);

  return (
    <p className="visually-hidden" role="status">
      {said}
    </p>
  );
}
