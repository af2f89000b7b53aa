/** How finely the ground is covered; the defaults are the measured compromise, larger values serve as a check. */
export interface Fineness {
  /** Points per radian of direction within a panel, and the least number. */
  readonly perRadian: number;
  readonly leastAngle: number;
  /** Points per interval along a ray: least number, more per radian of phase and per e-fold of distance. */
  readonly leastRay: number;
  readonly perPhase: number;
  readonly perFold: number;
  /** Points along the complex tail. */
  readonly tail: number;
  /** Directions of the rings and the tail over half a turn: this many and 2 per radian of the array's extent. */
  readonly ringAngles: number;
}

export const usualFineness: Fineness = {
  perRadian: 5,
  leastAngle: 5,
  leastRay: 4,
  perPhase: 1.5,
  perFold: 1.5,
  tail: 8,
  ringAngles: 8,
};
