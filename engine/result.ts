/** Every gate answers with a value or with all the problems at once; nothing a person can put right is thrown. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Something a person can put right.
 * `where` is a path into the input, such as `elements[1].height_m`; `message` names the value and the limit.
 */
export interface Problem {
  readonly code: string;
  readonly where: string;
  readonly message: string;
}

/** A caution that rides on an answer: a measured figure that weakens it. */
export interface Note {
  readonly code: string;
  readonly message: string;
  readonly measured?: number;
}

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });
export const failed = (
  ...problems: readonly Problem[]
): { readonly ok: false; readonly problems: readonly Problem[] } => ({
  ok: false,
  problems,
});
