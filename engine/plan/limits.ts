/**
 * What `checkPlan` accepts. Lengths marked "wl" are in wavelengths at the plan's own frequency. These are the limits
 * of the model and of good sense; whether a plan is a good antenna is for notes and warnings to say.
 */
export const limits = {
  frequency_MHz: { least: 1, most: 60 },
  elements: { least: 1, most: 4 },
  title_characters: 200,
  id_characters: 64,
  remark_characters: 20_000,

  /** Upright conductor, and radials when there are any. */
  height_wl: { least: 0.01, most: 4 },
  radial_wl: { least: 0.01, most: 1 },
  length_m: 200,
  position_m: 1000,

  /** The thin-wire equation takes the current as even round the wire: radius up to a hundredth of a wavelength … */
  diameter_wl: { least: 2e-6, most: 0.02 },
  /** … and wires at least this many times as long as they are thick. */
  lengthOverDiameter: 10,

  radials: { least: 0, most: 120 },
  /** Bases and radials: buried to here, raised to a wavelength. */
  radialDepth_m: 0.3,
  radialHeight_wl: 1,
  /** The soil preview knows no height: up to here radials count as lying on the soil. */
  previewHeight_m: 0.05,

  /** A radial laid by itself may point anywhere, once or twice round. */
  direction_deg: 720,
  /** A rod in the soil. */
  stake_m: { least: 0.1, most: 2 },
  stakeDiameter_mm: { least: 1, most: 60 },

  insulationDiameter_mm: 100,
  insulationPermittivity: { least: 1, most: 10 },
  soilPermittivity: { least: 1, most: 100 },
  soilConductivity_SPerM: { least: 0, most: 10 },

  currentMagnitude: 1e6,
  load_ohm: 1e6,
  series_ohm: { least: -1000, most: 1000 },

  /** The line to the rig, and what is chosen about matches, a fed pair and reversal. */
  feedline: {
    length_m: { least: 0.1, most: 1000 },
    impedance_ohm: { least: 5, most: 1000 },
    velocityFactor: { least: 0.1, most: 1 },
    loss_dBPer100m: { least: 0, most: 300 },
    lossFrequency_MHz: { least: 0.1, most: 3000 },
    power_W: { least: 0.001, most: 100_000 },
    swrLimit: { least: 1.01, most: 10 },
    q: { least: 1, most: 100_000 },
    ratio: { least: 0.01, most: 100 },
    phase_deg: { least: -180, most: 180 },
    match_characters: 300,
  },

  /** Building and measuring. */
  bench: {
    allowance_percent: { least: 0, most: 15 },
    leadLength_m: { least: 0, most: 1000 },
    readings: 200,
    pointsEach: 2001,
    reading_ohm: 1e6,
    logEntries: 5000,
    pairs: 2000,
    level_dB: { least: -300, most: 300 },
    swr: { least: 1, most: 10_000 },
    lengthFactor: { least: 0.5, most: 2 },
    mutualScale: { least: 0.01, most: 100 },
    declination_deg: { least: -180, most: 180 },
    latitude_deg: { least: -90, most: 90 },
    longitude_deg: { least: -180, most: 180 },
    text_characters: 2000,
  },

  pins: 4,
  elevation_deg: { least: 0.5, most: 90 },
  sector_deg: { least: 0, most: 360 },
  heading_deg: { least: 0, most: 360 },

  /** Whole plan: values (numbers, texts, lists, objects), characters of text, and lists within lists. */
  values: 200_000,
  characters: 10_000_000,
  depth: 32,
} as const;
