import type { Problem } from "../../../engine/index.ts";
import { Button } from "../../ui/Button.tsx";

interface Props {
  readonly name: string;
  readonly problems: readonly Problem[];
  onDismiss(): void;
}

/** So many of a file's problems are read by a person before the file is mended. */
const read = 8;

/** A file that was not taken, and why, line by line. */
export function RefusedFile({ name, problems, onDismiss }: Props) {
  return (
    <div className="fr-problem" role="alert">
      <p>{name} was not taken; nothing has changed.</p>
      <ul>
        {problems.slice(0, read).map((problem) => (
          <li key={`${problem.where} ${problem.message}`}>{problem.message}</li>
        ))}
      </ul>
      {problems.length > read && <p>And {problems.length - read} more.</p>}
      <Button look="quiet" onClick={onDismiss}>
        Dismiss
      </Button>
    </div>
  );
}
