import { figure } from "./figure.ts";

/** A frequency to the kilohertz: 7.100. */
export const megahertz = (frequency_MHz: number) => figure(frequency_MHz, 3);
