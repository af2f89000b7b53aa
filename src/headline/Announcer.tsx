import { useEffect, useState } from "react";
import { useProblems } from "../store/useProblems.ts";
import { useAnswerLabel } from "./useAnswerLabel.ts";
import type { useComparison } from "./useComparison.ts";

/** Long enough for a drag or a run of arrow keys to have ended. */
const quiet_ms = 900;

/** Tells a screen reader the headline once a change has settled. */
export function Announcer({ comparison }: { readonly comparison: ReturnType<typeof useComparison> }) {
  const problems = useProblems();
  const label = useAnswerLabel();
  const [said, setSaid] = useState("");
  const figures = comparison?.figures.map((one) => `${one.value} ${one.unit} ${one.label}`).join(". ");
  // A preview that will give way to the full answer is not worth interrupting anyone for.
  const now = problems[0]
    ? `The figures are old. ${problems.map((problem) => problem.message).join(" ")}`
    : label?.kind === "coming" || figures === undefined
      ? null
      : [...(label ? [sentence(label.text)] : []), figures].join(" ");

  useEffect(() => {
    if (now === null) return;
    const timer = setTimeout(() => setSaid(now), quiet_ms);
    return () => clearTimeout(timer);
  }, [now]);

  return (
    <p className="visually-hidden" role="status">
      {said}
    </p>
  );
}

const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
