/** A frame of 60 Hz and a half: a longer gap means that a frame did not come. */
const late_ms = 25;
/** What is remembered: late ones as a part of about the last thirty frames. */
const weight = 1 / 30;
/** Two late ones within half a second are a shortage, one in a second is none. */
const begins = 0.04;
/** It is over after half a second without one. */
const ends = 0.015;

export interface FrameShortage {
  /** Whether frames are short, with this one. */
  frame(now_ms: number): boolean;
  /** The frames that follow do not belong to those before. */
  pause(): void;
}

/** Says from the times of frames whether a browser keeps up, at 60 frames a second or what its screen has beyond. */
export function frameShortage(): FrameShortage {
  let before_ms: number | undefined;
  let late = 0;
  let isShort = false;
  return {
    frame(now_ms) {
      if (before_ms !== undefined) late += weight * ((now_ms - before_ms > late_ms ? 1 : 0) - late);
      before_ms = now_ms;
      isShort = late > (isShort ? ends : begins);
      return isShort;
    },
    pause() {
      before_ms = undefined;
    },
  };
}
