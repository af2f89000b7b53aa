import { figure } from "../../charts/figure.ts";
import { Button } from "../../ui/Button.tsx";
import type { EngineAnswers } from "./useEngineAnswers.ts";

interface Props {
  readonly answers: EngineAnswers;
  /** Something is shown already, which a better answer will take the place of. */
  readonly isShown: boolean;
}

/** How far the engine is with what this part has asked of it. */
export function Progress({ answers: { done, total, part, fault, retry }, isShown }: Props) {
  if (fault !== null)
    return (
      <div className="fr-problem" role="alert">
        <p>The engine stopped: {fault}.</p>
        <Button onClick={retry}>Try again</Button>
      </div>
    );
  return (
    <p className="fr-progress" role="status">
      {done < total &&
        `${isShown ? "A better answer is being solved" : "Being solved"}: ${done} of ${total} so far${part > 0 ? `, and ${figure(100 * part, 0)} % of the next` : ""}.`}
    </p>
  );
}
