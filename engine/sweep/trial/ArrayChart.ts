import { type AxisPiece, inward } from "./ChartAxis.ts";
import type { SampleNumbers } from "./SampleNumbers.ts";

/** Samples between solved ones, over any number of axes. */
export interface ArrayChart {
  /**
   * The sample at one place, a value for each axis left.
   * @throws RangeError outside the axes, or with another number of values
   */
  sampleAt(place: readonly number[]): SampleNumbers;
  /** The chart over the other axes at one value of the first: cheap to read many places of. @throws RangeError outside it */
  fix(value: number): ArrayChart;
  /** The chart with only these numbers of each sample's fields, in this order: quicker where many places are read. */
  pick(fields: readonly number[]): ArrayChart;
}

/** A box of a chart: a polynomial through the tensor of its nodes. */
export interface ChartBox {
  readonly axes: readonly {
    readonly piece: AxisPiece;
    /** How many. */
    readonly nodes: number;
    /** How its nodes weigh at a place (`axisWeights`). */
    readonly weightsAt: (t: number) => Float64Array;
  }[];
  /** One block for each node, the last axis running fastest: impedances, then fields. */
  readonly values: Float64Array;
  /** How many of a block are impedances. */
  readonly impedances: number;
}

/** Values this far outside an axis, in parts of it, are rounding. */
const ROUNDING = 1e-9;

/** A chart of boxes that together cover a range; where one ends and the next begins the later answers. */
export function arrayChart(boxes: readonly ChartBox[]): ArrayChart {
  return {
    sampleAt(place) {
      const axes = boxes[0]!.axes.length;
      if (place.length !== axes) throw new RangeError(`arrayChart: ${place.length} values for ${axes} axes`);
      let left = boxes;
      for (let axis = 0; axis < axes; axis++) left = boxesAt(left, axis, place[axis]!);
      const box = left[0]!;
      let { values } = box;
      for (let axis = 0; axis < axes; axis++) values = contracted(box, axis, place[axis]!, values);
      return { impedance_ohm: values.subarray(0, box.impedances), fields: values.subarray(box.impedances) };
    },
    fix: (value) =>
      arrayChart(
        boxesAt(boxes, 0, value).map((box) => ({
          ...box,
          axes: box.axes.slice(1),
          values: contracted(box, 0, value, box.values),
        })),
      ),
    pick: (fields) => arrayChart(boxes.map((box) => picked(box, fields))),
  };
}

/** The boxes that answer for a value of one axis. */
function boxesAt(boxes: readonly ChartBox[], axis: number, value: number): readonly ChartBox[] {
  let from = Number.NEGATIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const { axes } of boxes) {
    const { piece } = axes[axis]!;
    if (piece.from <= value) from = Math.max(from, piece.from);
    least = Math.min(least, piece.from);
    most = Math.max(most, piece.to);
  }
  const slack = ROUNDING * (most - least);
  if (!(value >= least - slack && value <= most + slack))
    throw new RangeError(`arrayChart: ${value} is outside ${least}..${most}`);
  if (boxes.length === 1) return boxes;
  const chosen = Math.max(from, least);
  return boxes.filter(({ axes }) => axes[axis]!.piece.from === chosen);
}

/** Blocks of the outermost axis that is left, weighed into one. */
function contracted({ axes }: ChartBox, axis: number, value: number, values: Float64Array): Float64Array {
  const { piece, weightsAt } = axes[axis]!;
  const weights = weightsAt(inward(piece, value));
  const size = values.length / weights.length;
  const out = new Float64Array(size);
  for (let n = 0, at = 0; n < weights.length; n++) {
    const weight = weights[n]!;
    for (let i = 0; i < size; i++, at++) out[i]! += weight * values[at]!;
  }
  return out;
}

function picked({ axes, values, impedances }: ChartBox, fields: readonly number[]): ChartBox {
  const nodes = axes.reduce((count, axis) => count * axis.nodes, 1);
  const [from, to] = [values.length / nodes, impedances + fields.length];
  const out = new Float64Array(nodes * to);
  for (let n = 0; n < nodes; n++) {
    out.set(values.subarray(n * from, n * from + impedances), n * to);
    fields.forEach((field, i) => {
      out[n * to + impedances + i] = values[n * from + impedances + field]!;
    });
  }
  return { axes, values: out, impedances };
}
