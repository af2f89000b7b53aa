import type { Section } from "./Ladder.ts";
import type { Match } from "./Match.ts";

/**
 * A name by which a match is known again when the antenna has changed and its values with it: the kind, the parts in
 * their order with the cables they are cut from, and its place among those alike. A retrim is no part of the name: once
 * the element has been recut it is gone.
 *
 * @param among all matches of one design, in the order `designMatches` gives them
 */
export function matchKey(match: Match, among: readonly Match[]): string {
  const own = bareKey(match);
  const alike = among.filter((other) => bareKey(other) === own);
  const place = alike.indexOf(match);
  return place > 0 ? `${own}#${place + 1}` : own;
}

const bareKey = ({ kind, ladder }: Match) =>
  [kind, ...ladder.filter((section) => section.kind !== "retrim").map(sectionKey)].join("/");

function sectionKey(section: Section): string {
  if (section.kind === "line") return `line.${section.line.id}.${section.parallel}`;
  if (section.kind === "stub") return `${section.end}.${section.line.id}`;
  return section.kind;
}
