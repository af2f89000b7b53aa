/** An amateur band in one ITU region. */
export interface AmateurBand {
  readonly label: string;
  readonly ituRegion: 1 | 2 | 3;
  readonly from_MHz: number;
  readonly to_MHz: number;
  /** Where the edges come from. National rules govern and differ in places: they are a start, to be edited. */
  readonly source: string;
}

const memory = "from memory; national rules govern";
const plan1 = "IARU Region 1 HF band plan of 16 October 2020; national rules govern";
const pages1 = "IARU Region 1 spectrum pages; national rules govern";
const national =
  "from memory (5351.5 to 5366.5 kHz is the international minimum); national rules govern and differ widely";

/** Edges in kHz, region 1, 2, 3; then the source for region 1 where it is better than memory. */
const table: readonly (readonly [string, readonly [number, number][], string?])[] = [
  [
    "160 m",
    [
      [1810, 2000],
      [1800, 2000],
      [1800, 2000],
    ],
    plan1,
  ],
  [
    "80 m",
    [
      [3500, 3800],
      [3500, 4000],
      [3500, 3900],
    ],
    pages1,
  ],
  [
    "60 m",
    [
      [5351.5, 5366.5],
      [5351.5, 5366.5],
      [5351.5, 5366.5],
    ],
    plan1,
  ],
  [
    "40 m",
    [
      [7000, 7200],
      [7000, 7300],
      [7000, 7200],
    ],
    pages1,
  ],
  [
    "30 m",
    [
      [10100, 10150],
      [10100, 10150],
      [10100, 10150],
    ],
    pages1,
  ],
  [
    "20 m",
    [
      [14000, 14350],
      [14000, 14350],
      [14000, 14350],
    ],
  ],
  [
    "17 m",
    [
      [18068, 18168],
      [18068, 18168],
      [18068, 18168],
    ],
  ],
  [
    "15 m",
    [
      [21000, 21450],
      [21000, 21450],
      [21000, 21450],
    ],
  ],
  [
    "12 m",
    [
      [24890, 24990],
      [24890, 24990],
      [24890, 24990],
    ],
  ],
  [
    "10 m",
    [
      [28000, 29700],
      [28000, 29700],
      [28000, 29700],
    ],
  ],
  [
    "6 m",
    [
      [50000, 52000],
      [50000, 54000],
      [50000, 54000],
    ],
  ],
];

/** Every band in every region, from long waves to short. */
export const amateurBands: readonly AmateurBand[] = table.flatMap(([label, regions, source1 = memory]) =>
  regions.map(([from_kHz, to_kHz], index): AmateurBand => {
    const ituRegion = (index + 1) as 1 | 2 | 3;
    const source = ituRegion === 1 ? source1 : label === "60 m" ? national : memory;
    return { label, ituRegion, from_MHz: from_kHz / 1000, to_MHz: to_kHz / 1000, source };
  }),
);
