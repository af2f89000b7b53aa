/** When the full answer keeps pace with a drag, so that it is asked for every frame and no preview is. */
export const fullPace = {
  /** A full answer that takes no longer than this does … */
  quick_ms: 10,
  /** … and one that takes longer than this, in a drag, does not. */
  slow_ms: 16,
  /** The preview steps in where a full answer keeps the hand waiting for so long. */
  standIn_ms: 50,
  /** So few radials, in all fields together, are thought quick before their answer was timed. */
  fewRadials: 16,
};
