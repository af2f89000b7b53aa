/** What can be asked of the answers that follow the plan. */
export interface Follower {
  /** Breaks off the full answer to the plan on screen: what is shown stays. */
  stopFull(): void;
  /** Takes it up again. */
  goOn(): void;
  /** After a fault: start the engine again and ask for what is on screen. */
  retry(): void;
  stop(): void;
}
