/**
 * When the full answer keeps pace with a drag, so that it is asked for every frame and no preview is. Times are the
 * worker's own: the page's frames go on beside it.
 */
export const fullPace = {
  /** At rest, a full answer that takes no longer than this will do … */
  quick_ms: 8,
  /** … and in a drag, answers will not do of which more than half take longer than this. */
  slow_ms: 33,
  /** So many of the last ones count: a worker that has solved little is slow until its code is compiled. */
  judged: 15,
  /** The preview steps in where a full answer keeps the hand waiting for so long. */
  standIn_ms: 150,
  /** So few radials, in all fields together, are thought quick before their answer was timed. */
  fewRadials: 16,
};
