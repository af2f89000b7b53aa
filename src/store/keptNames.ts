/** Names on the shelf: the plan at hand, the one a link or file took the place of, and what could not be read. */
export const keptNames = { plan: "plan", earlier: "earlier", aside: "aside" } as const;
