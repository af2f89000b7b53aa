import { memo } from "react";
import { useAnswer } from "../store/useAnswer.ts";
import { useProblems } from "../store/useProblems.ts";
import { keepUnits } from "../text/keepUnits.ts";
import { Button } from "../ui/Button.tsx";
import { Icon } from "../ui/Icon.tsx";
import { Popover } from "../ui/Popover.tsx";

interface Props {
  readonly sentence: string | null;
  onRetry(): void;
}

/**
 * The place of words in the headline: the sentence when the answer is good; else what has to be put right, in the
 * same space, so that nothing moves under a dragging hand.
 */
export const Words = memo(function Words({ sentence, onRetry }: Props) {
  const problems = useProblems();
  const fault = useAnswer((s) => s.fault);
  const hasAnswer = useAnswer((s) => s.readout !== null);

  if (fault !== null)
    return (
      <div className="words words--trouble" role="alert">
        <p>
          <Icon name="warn" /> The engine stopped: {fault}. The plan is untouched
          {hasAnswer ? "; the figures are the last good ones." : "."}
        </p>
        <Button onClick={onRetry}>Try again</Button>
      </div>
    );

  const [first, ...more] = problems;
  if (first)
    return (
      <div className="words words--trouble">
        <p>
          <Icon name="warn" /> <strong>Last good answer.</strong> {first.message}
        </p>
        {more.length > 0 && (
          <Popover label={`and ${more.length} more`} title="To put right" buttonClass="button button--quiet" end>
            {() => (
              <ul className="words__list">
                {problems.map((problem) => (
                  <li key={`${problem.where} ${problem.code}`}>{problem.message}</li>
                ))}
              </ul>
            )}
          </Popover>
        )}
      </div>
    );

  return (
    <div className="words">
      <p>{sentence === null ? "Working out the first answer …" : keepUnits(sentence)}</p>
    </div>
  );
});
