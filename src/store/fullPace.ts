/**
 * When the full answer keeps pace with a drag, so that it is asked for every frame and no preview is. Times are the
 * worker's own: the page's frames go on beside it.
 */
export const fullPace = {
  /** At rest, a full answer that takes no longer than this will do … */
  quick_ms: 12,
  /** … and in a drag, answers that usually take longer than this will not. */
  slow_ms: 16,
  /** The preview steps in where a full answer keeps the hand waiting for so long. */
  standIn_ms: 50,
  /** So few radials, in all fields together, are thought quick before their answer was timed. */
  fewRadials: 16,
};
