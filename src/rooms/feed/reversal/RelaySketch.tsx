import type { SolvedState } from "./reversalState.ts";

interface Props {
  readonly solved: SolvedState;
  /** As it stands under the load: coil, stub … */
  readonly loadName: string;
}

const frontX = 400;
const backX = 120;
const middleX = 260;
const base = 96;

/** The wiring of a pair that can be turned round, with its contacts as they stand; the beam to the right. */
export function RelaySketch({ solved: { state }, loadName }: Props) {
  const [front, back] = state.elements;
  return (
    <svg className="fr-wiring" viewBox="0 0 520 214" role="img" aria-label={`Wiring, ${state.name}. ${said(state)}`}>
      <One x={frontX} inward={-1} contacts={front!.contacts} name="front" loadName={loadName} />
      <One x={backX} inward={1} contacts={back!.contacts} name="back" loadName={loadName} />
      <path className={wire(back!.contacts.feed)} d={`M${backX + 86},${base}H${middleX}`} />
      <path className={wire(front!.contacts.feed)} d={`M${frontX - 86},${base}H${middleX}`} />
      <path className={wire(true)} d={`M${middleX},${base}V186`} />
      <circle className="fr-joint" cx={middleX} cy={base} r="3" />
      <text className="fr-wiring-text" x={middleX} y="204" textAnchor="middle">
        from the rig
      </text>
      {state.id !== "single" && (
        <path
          className="fr-beam"
          d={state.id === "forward" ? "M440,34h52m-10,-6l10,6l-10,6" : "M80,34h-52m10,-6l-10,6l10,6"}
        />
      )}
    </svg>
  );
}

const said = (state: SolvedState["state"]) =>
  state.elements
    .map(({ contacts }, i) => {
      const closed = Object.entries(contacts).filter(([, isClosed]) => isClosed);
      return `${i === 0 ? "Front" : "Back"}: ${closed.length > 0 ? closed.map(([job]) => `${job} contact closed`).join(", ") : "all contacts open"}.`;
    })
    .join(" ");

interface OneProps {
  readonly x: number;
  /** Which way the line lies. */
  readonly inward: 1 | -1;
  readonly contacts: { readonly feed: boolean; readonly load: boolean; readonly ground: boolean };
  readonly name: string;
  readonly loadName: string;
}

/** One mast with its three contacts: to the line, to its load, to the radials. */
function One({ x, inward, contacts, name, loadName }: OneProps) {
  const out = x - inward * 54;
  return (
    <g>
      <path className="fr-mast" d={`M${x},14V${base}`} />
      <text className="fr-wiring-text" x={x + inward * 8} y="24" textAnchor={inward > 0 ? "start" : "end"}>
        {name}
      </text>
      <path className={wire(contacts.feed)} d={`M${x},${base}h${inward * 50}${level(inward, contacts.feed)}`} />
      <path className={wire(contacts.load)} d={`M${x},${base}V118${upright(contacts.load)}`} />
      <path className={wire(contacts.load)} d={`M${x},142v4q9,3 0,6q9,3 0,6q9,3 0,6v10`} />
      <path
        className={wire(contacts.ground)}
        d={`M${x},${base}H${out}V118${upright(contacts.ground)}M${out},142V174`}
      />
      {[x, out].map((at) => (
        <path key={at} className="fr-wire" d={`M${at - 9},174h18M${at - 6},178h12M${at - 3},182h6`} />
      ))}
      <circle className="fr-joint" cx={x} cy={base} r="4" />
      {/* Where the contacts are: a blade between two of these. */}
      {[
        [x + inward * 50, base],
        [x + inward * 86, base],
        [x, 118],
        [x, 142],
        [out, 118],
        [out, 142],
      ].map(([cx, cy]) => (
        <circle key={`${cx} ${cy}`} className="fr-terminal" cx={cx} cy={cy} r="3" />
      ))}
      <text className="fr-wiring-text" x={x + inward * 14} y="158" textAnchor={inward > 0 ? "start" : "end"}>
        {loadName}
      </text>
      <text className="fr-wiring-text" x={out} y="200" textAnchor="middle">
        radials
      </text>
    </g>
  );
}

const wire = (isClosed: boolean) => (isClosed ? "fr-wire fr-wire--closed" : "fr-wire");

/** A contact, closed straight or open askew, drawn on from where the pen is. */
const level = (way: 1 | -1, isClosed: boolean) => (isClosed ? `h${way * 36}` : `l${way * 32},-14`);
const upright = (isClosed: boolean) => (isClosed ? "v24" : "l-13,20");
