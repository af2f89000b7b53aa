/**
 * How people write units, in lower case, and the spelling the unit library knows. Case is ignored on purpose: nobody
 * planning an antenna means millihertz or megasiemens. A word that is not here is not a unit.
 */
export const unitWords: ReadonlyMap<string, string> = new Map(
  Object.entries({
    m: "m metre metres meter meters",
    cm: "cm centimetre centimetres centimeter centimeters",
    mm: "mm millimetre millimetres millimeter millimeters",
    km: "km kilometre kilometres kilometer kilometers",
    ft: "ft foot feet",
    in: "in inch inches",
    yard: "yd yard yards",
    mile: "mi mile miles",
    Hz: "hz",
    kHz: "khz kc",
    MHz: "mhz mc",
    GHz: "ghz",
    S: "s siemens",
    mS: "ms millisiemens",
    deg: "deg degs degree degrees",
    ohm: "ohm ohms",
    W: "w watt watts",
    kW: "kw kilowatt kilowatts",
    wl: "wl wavelength wavelengths lambda",
    AWG: "awg gauge #",
  }).flatMap(([unit, words]) => words.split(" ").map((word) => [word, unit] as const)),
);
