import type { LineType } from "./LineType.ts";

const FEET100_PER_100m = 100 / 30.48;
const per100ft = (frequency_MHz: number, loss_dB: number) => ({
  frequency_MHz,
  loss_dBPer100m: loss_dB * FEET100_PER_100m,
});
const per100m = (frequency_MHz: number, loss_dBPer100m: number) => ({ frequency_MHz, loss_dBPer100m });

const COUNTY =
  "loss at 10, 30 and 50 MHz read in a table printed to 0.1 dB/100 ft (Santa Clara County ARES/RACES, “Coaxial Cable”)";
const FITTED =
  "loss constants read in an open-source radio-detector simulation that carries a fit of the maker's data sheet (file analog_components.py, commit 0b38be7a); the data sheet itself was not seen";
const SHEET = "P. Harden, “Coaxial Cable Specifications”, velocity-factor column";

/**
 * Cables in common use, by military or trade designation where there is one, else by what they are made of. Typical
 * figures, not a maker's promise: where sources of one type were seen to differ, it was by up to a fifth of the loss.
 * "Read" and "from memory" are said for each.
 */
export const lineTypes: readonly LineType[] = [
  {
    id: "rg-58c",
    name: "RG-58C/U, 5 mm, solid polyethylene",
    impedance_ohm: 50,
    velocityFactor: 0.66,
    loss: [per100m(10, 4.6), per100m(50, 10.8)],
    source: `loss at 50 MHz read (3.30 dB/100 ft: Codan Radio, Radio Repeater Systems Training Guide, Appendix H), at 10 MHz from memory (1.1 to 1.4 dB/100 ft are quoted, the upper taken); velocity factor read (${SHEET})`,
  },
  {
    id: "rg-213",
    name: "RG-213/U, 10 mm, solid polyethylene",
    impedance_ohm: 50,
    velocityFactor: 0.66,
    loss: [per100m(10, 1.9), per100m(50, 4.9)],
    source: `loss at 50 MHz read (1.50 dB/100 ft: Codan Radio, Radio Repeater Systems Training Guide, Appendix H; another reading of the military sheet has 1.2), at 10 MHz from memory (0.55 to 0.6 dB/100 ft); velocity factor read (${SHEET})`,
  },
  {
    id: "rg-8x",
    name: "RG-8X, 6 mm, foam",
    impedance_ohm: 50,
    velocityFactor: 0.78,
    loss: [per100ft(10, 1.0), per100ft(30, 2.0), per100ft(50, 2.3)],
    source: `${COUNTY}, where its 30 MHz entry is higher than losses of this law can be beside the other two; velocity factor read (${SHEET}, foam)`,
  },
  {
    id: "foam-6-50",
    name: "6 mm foam, foil and braid, 50 ohm",
    impedance_ohm: 50,
    velocityFactor: 0.84,
    loss: {
      root_dBPer100m: 0.24208 * FEET100_PER_100m,
      linear_dBPer100m: 0.00033 * FEET100_PER_100m,
    },
    source: `${FITTED}; velocity factor from memory`,
  },
  {
    id: "foam-10-50",
    name: "10 mm foam, foil and braid, 50 ohm",
    impedance_ohm: 50,
    velocityFactor: 0.85,
    loss: {
      root_dBPer100m: 0.12229 * FEET100_PER_100m,
      linear_dBPer100m: 0.00026 * FEET100_PER_100m,
    },
    source: `${FITTED}; velocity factor from memory`,
  },
  {
    id: "foam-15-50",
    name: "15 mm foam, foil and braid, 50 ohm",
    impedance_ohm: 50,
    velocityFactor: 0.87,
    loss: [per100ft(10, 0.2), per100ft(30, 0.4), per100ft(50, 0.5)],
    source: `${COUNTY}; velocity factor from memory`,
  },
  {
    id: "air-10-50",
    name: "10 mm semi-air dielectric, 50 ohm",
    impedance_ohm: 50,
    velocityFactor: 0.84,
    loss: [per100ft(10, 0.5), per100ft(30, 0.8), per100ft(50, 1.0)],
    source: `${COUNTY}; velocity factor read (${SHEET})`,
  },
  {
    id: "rg-59b",
    name: "RG-59B/U, 6 mm, solid polyethylene, 75 ohm",
    impedance_ohm: 75,
    velocityFactor: 0.66,
    loss: [per100m(10, 3.6), per100m(50, 7.9)],
    source: `loss from memory; velocity factor read (${SHEET})`,
  },
  {
    id: "rg-11a",
    name: "RG-11A/U, 10 mm, solid polyethylene, 75 ohm",
    impedance_ohm: 75,
    velocityFactor: 0.66,
    loss: [per100m(10, 2.2), per100m(50, 5.2)],
    source: `loss from memory; velocity factor read (${SHEET})`,
  },
  {
    id: "rg-6",
    name: "RG-6/U, 7 mm, foam, 75 ohm",
    impedance_ohm: 75,
    velocityFactor: 0.82,
    loss: [per100m(10, 2.0), per100m(50, 4.6)],
    source: "loss and velocity factor from memory",
  },
];
