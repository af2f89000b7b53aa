/** The numbers of a sample, solved or interpolated; layout as in `ArraySample`. */
export interface SampleNumbers {
  readonly impedance_ohm: ArrayLike<number>;
  readonly fields: ArrayLike<number>;
}
