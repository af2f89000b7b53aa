/**
 * Conventions, once for the whole engine: time factor e^{+jωt}; phasors are peak values; power is ½ Re(V I*);
 * x forward along the beam, y left of it, z up, ground surface at z = 0; elevation above the horizon; azimuth
 * counter-clockwise from +x seen from above; gain is 4π × radiation intensity / net input power (IEEE Std 145 "gain").
 */

/** Speed of light in vacuum [m/s]; exact by definition of the metre (SI, 1983). */
export const C0_mPerS = 299_792_458;

/** Magnetic constant [H/m], the pre-2019 exact value; the 2019 SI differs by 2e-10 of itself, far below use here. */
export const MU0_HPerM = 4e-7 * Math.PI;

/** Electric constant [F/m]: 1/(μ₀c²) = 8.854187817…e-12. */
export const EPS0_FPerM = 1 / (MU0_HPerM * C0_mPerS * C0_mPerS);

/** Impedance of free space [ohm]: μ₀c = 376.730313… */
export const ETA0_ohm = MU0_HPerM * C0_mPerS;
