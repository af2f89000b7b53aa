import { figure } from "../../../charts/figure.ts";
import { RoomTable } from "../RoomTable.tsx";
import { jobs, places } from "./relayNetwork.ts";
import type { SolvedState } from "./reversalState.ts";

const jobNames = { feed: "to the line", load: "to the load", ground: "to the radials" } as const;

/** What every contact carries when closed and stands off when open, in each state. */
export function ContactTable({
  states,
  power_W,
}: {
  readonly states: readonly SolvedState[];
  readonly power_W: number;
}) {
  return (
    <RoomTable
      caption={`Contacts at ${figure(power_W, power_W < 10 ? 1 : 0)} W, all of it arriving: closed ones carry (rms), open ones stand off (peak)`}
      heads={["contact", ...states.map(({ state }) => state.id)]}
      rows={[
        ...places.flatMap((place) =>
          jobs.map((job) => [
            `${place}, ${jobNames[job]}`,
            ...states.map(({ state, contacts }) => {
              const contact = contacts.find((one) => one.id === `${job} ${place}`)!;
              const isClosed = state.elements[places.indexOf(place)]!.contacts[job];
              return isClosed
                ? `closed, ${figure(contact.current_Arms, 2)} A`
                : `open, ${figure(contact.voltage_Vpeak, 0)} V`;
            }),
          ]),
        ),
        [
          "load behind: current, voltage",
          ...states.map(({ load }) => {
            const most = [...load].sort((a, b) => b.current_Arms - a.current_Arms)[0]!;
            return most.current_Arms < 1e-9
              ? "idle"
              : `${figure(most.current_Arms, 2)} A, ${figure(most.voltage_Vpeak, 0)} V, warms by ${figure(most.dissipated_W, 1)} W`;
          }),
        ],
      ]}
    />
  );
}
