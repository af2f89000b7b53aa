import type { LTopology } from "../../../../engine/index.ts";
import { useSettings } from "../../../store/useSettings.ts";
import { sectionWords } from "./sectionWords.ts";

/** The eight ways to lay one part in series and one across, drawn, each with its values or why it cannot be. */
export function LNetworks({ networks }: { readonly networks: readonly LTopology[] }) {
  const units = useSettings((s) => s.units);
  const made = networks.filter((one) => one.match.ok).length;
  return (
    <section aria-label="The eight L networks">
      <h3>L networks: {made} of 8 can be made here</h3>
      <ul className="fr-networks">
        {networks.map((one) => {
          const { shuntAt, series, shunt, match } = one;
          const name = `${series} in series, ${shunt} across at the ${shuntAt}’s side`;
          return (
            <li key={name} data-made={match.ok || undefined}>
              <NetworkSketch topology={one} />
              <div>
                <p>{name}</p>
                <p className="fr-values">
                  {match.ok
                    ? match.value.ladder.map((part) => sectionWords(part, units)).join(", ")
                    : because(match.problems[0]!.message)}
                </p>
              </div>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** The name stands above already. */
const because = (message: string) =>
  `cannot be made: ${message.slice(message.indexOf(": ", message.indexOf("side")) + 2)}`;

const coil = (x: number, y: number, across: boolean) =>
  across ? `M${x},${y}v4q7,2.5 0,5q7,2.5 0,5q7,2.5 0,5v5` : `M${x},${y}h4q2.5,-7 5,0q2.5,-7 5,0q2.5,-7 5,0h5`;
const capacitor = (x: number, y: number, across: boolean) =>
  across
    ? `M${x},${y}v10M${x - 6},${y + 10}h12M${x - 6},${y + 14}h12M${x},${y + 14}v10`
    : `M${x},${y}h10M${x + 10},${y - 6}v12M${x + 14},${y - 6}v12M${x + 14},${y}h10`;

/** Rig at the left, antenna at the right. */
function NetworkSketch({ topology: { shuntAt, series, shunt } }: { readonly topology: LTopology }) {
  const part = { coil, capacitor };
  const at = shuntAt === "rig" ? 18 : 62;
  return (
    <svg className="fr-sketch" width="84" height="44" viewBox="0 0 84 44" aria-hidden="true">
      <path d={`M4,10H28M52,10H80M4,34H80${part[series](28, 10, false)}${part[shunt](at, 10, true)}`} />
      <circle cx="4" cy="10" r="2.5" />
      <circle cx="4" cy="34" r="2.5" />
      <path d="M80,10v-7M76,6l4,-4l4,4" />
    </svg>
  );
}
