import type { ConnectedBase, ExpectedStep } from "../../../../engine/index.ts";

const said: Readonly<Record<ConnectedBase, string>> = {
  meter: "meter at the base",
  open: "base open",
  joined: "base joined to its radials",
  loaded: "load in the base",
  fed: "base as it is fed",
};

/** "Driven: meter at the base. Reflector: base open." */
export function basesInWords({ bases }: Pick<ExpectedStep, "bases">, nameOf: (elementId: string) => string): string {
  return bases
    .map(({ elementId, base }) => {
      const name = nameOf(elementId);
      return `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${said[base]}.`;
    })
    .join(" ");
}
