import {
  type ElementPlan,
  limits,
  radialDirections,
  type SavedPlan,
  wavelength_m,
  withRadials,
} from "../../../../engine/index.ts";
import { Button } from "../../../ui/Button.tsx";
import { QuantityField } from "../../../ui/QuantityField.tsx";
import { elementName } from "../elementName.ts";
import { fieldHand } from "../fieldHand.ts";
import { headingOf } from "../heading.ts";
import type { YardEdits } from "../useYardEdits.ts";
import { bearingOf, directionOf } from "./bearings.ts";

type Single = NonNullable<ElementPlan["radials"]["each"]>[number];

interface Props {
  readonly plan: SavedPlan;
  readonly element: ElementPlan;
  readonly edits: YardEdits;
}

/** The radials of one element, evenly spread or each with its own bearing and length. */
export function SingleRadials({ plan, element, edits }: Props) {
  const name = elementName(plan, element);
  const { each } = element.radials;
  const heading_deg = headingOf(plan);
  const wavelength = wavelength_m(plan.frequency_MHz);
  const lay = (list: readonly Single[] | null) => (p: SavedPlan) => withRadials(p, { each: list }, element.id);
  const change = (at: number, part: Partial<Single>) => (p: SavedPlan) => {
    const now = p.elements.find((one) => one.id === element.id)?.radials.each ?? [];
    return withRadials(p, { each: now.map((one, i) => (i === at ? { ...one, ...part } : one)) }, element.id);
  };

  return (
    <section className="radials__part">
      <h3>{`Radials of the ${name}`}</h3>
      {!each && (
        <p className="radials__row">
          <span>{`${element.radials.count} alike, evenly spread`}</span>
          <Button
            disabled={element.radials.count === 0}
            onClick={() => edits.change(lay(evenly(element)), `lay the ${name} radials one by one`)}
          >
            Lay them one by one
          </Button>
        </p>
      )}
      {each && (
        <>
          <ol className="radials__list">
            {each.map((one, i) => (
              // Radials have no names but their places.
              // biome-ignore lint/suspicious/noArrayIndexKey: see above
              <li key={i} className="radials__single">
                <QuantityField
                  label={`bearing of ${i + 1}`}
                  kind="bearing_deg"
                  value={bearingOf(one.direction_deg, heading_deg)}
                  {...fieldHand(
                    edits,
                    (value) => change(i, { direction_deg: directionOf(value, heading_deg) }),
                    `turn ${name} radial ${i + 1}`,
                    `radial bearing ${element.id} ${i}`,
                  )}
                />
                <QuantityField
                  label={`length of ${i + 1}`}
                  kind="length_m"
                  value={one.length_m}
                  least={limits.radial_wl.least * wavelength}
                  most={Math.min(limits.radial_wl.most * wavelength, limits.length_m)}
                  {...fieldHand(
                    edits,
                    (value) => change(i, { length_m: value }),
                    `change ${name} radial ${i + 1}`,
                    `radial length ${element.id} ${i}`,
                  )}
                />
                <Button
                  aria-label={`Take out ${name} radial ${i + 1}`}
                  disabled={each.length === 1}
                  onClick={() => edits.change(lay(each.filter((_, j) => j !== i)), `take out ${name} radial ${i + 1}`)}
                >
                  Take out
                </Button>
              </li>
            ))}
          </ol>
          <p className="radials__row">
            <Button
              disabled={each.length >= limits.radials.most}
              onClick={() => edits.change(lay([...each, between(each)]), `add a ${name} radial`)}
            >
              Add one in the widest gap
            </Button>
            <Button onClick={() => edits.change(lay(null), `make the ${name} radials alike`)}>Make them alike</Button>
          </p>
        </>
      )}
    </section>
  );
}

function evenly({ radials: { count, length_m } }: ElementPlan): Single[] {
  return radialDirections(count).map((angle) => ({ direction_deg: rounded((angle * 180) / Math.PI), length_m }));
}

/** In the middle of the widest gap, as long as the one before it. */
function between(each: readonly Single[]): Single {
  const around = each
    .map((one) => ({ ...one, direction_deg: ((one.direction_deg % 360) + 360) % 360 }))
    .toSorted((a, b) => a.direction_deg - b.direction_deg);
  let best = { from: around[0]!, gap: 360 };
  if (around.length > 1) best = { from: around[0]!, gap: 0 };
  around.forEach((from, i) => {
    const next = around[(i + 1) % around.length]!;
    const gap = (next.direction_deg - from.direction_deg + 360) % 360;
    if (gap > best.gap) best = { from, gap };
  });
  return { direction_deg: rounded((best.from.direction_deg + best.gap / 2) % 360), length_m: best.from.length_m };
}

const rounded = (deg: number) => Math.round(10 * deg) / 10;
