type Pair = readonly [number, number];

export interface ReferenceElement {
  readonly name: string;
  readonly length_m: number;
  readonly radius_m: number;
  readonly x_m: number;
  readonly y_m: number;
  readonly base: string;
  readonly load_ohm?: Pair;
  readonly base_current?: Pair;
  readonly conductivity_S_per_m?: number | null;
}

/** One case of tests/fixtures/perfectGround.json. */
export interface ReferenceCase {
  readonly id: string;
  readonly frequency_hz: number;
  readonly freeSpace: boolean;
  readonly elements: readonly ReferenceElement[];
  readonly results: {
    readonly feed_R_ohm?: number;
    readonly feed_X_ohm?: number;
    readonly feed_impedance_each_ohm?: readonly Pair[];
    readonly base_current_ratio?: readonly Pair[];
    readonly elevation_deg?: readonly number[];
    readonly directivity_dBi_forward?: readonly number[];
    readonly directivity_dBi_backward?: readonly number[];
    readonly Z_matrix_ohm?: readonly (readonly Pair[])[];
    readonly radiation_efficiency?: number;
    readonly gain_dBi_forward?: readonly number[];
  };
}
