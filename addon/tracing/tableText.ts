// Readings of a chart's curves as the text of a long list, as a manual would print it: a row a point, its columns named with their units.
import type { Reading } from './readings';

export interface TracedColumn {
  /** As in a table's heading, such as "pressure altitude". */
  readonly name: string;
  readonly unit: string;
}

export interface TracedCurve {
  /** In the unit of the curves; undefined where the chart has one curve alone. */
  readonly value: number | undefined;
  readonly readings: readonly Reading[];
}

export interface TracedChart {
  readonly curve: TracedColumn | undefined;
  readonly input: TracedColumn;
  readonly figure: TracedColumn;
  readonly curves: readonly TracedCurve[];
}

const heading = ({ name, unit }: TracedColumn): string => `${name}, ${unit}`;

/** Never three figures behind a point, which could be thousands: two at most, as the readings are rounded. */
const shown = (value: number): string => String(Number(value.toFixed(2)));

export function tableText({ curve, input, figure, curves }: TracedChart): string {
  const heads = [...(curve === undefined ? [] : [curve]), input, figure].map(heading);
  const rows = [...curves]
    .sort((one, other) => (one.value ?? 0) - (other.value ?? 0))
    .flatMap(({ value, readings }) =>
      readings.map((one) => [...(value === undefined || curve === undefined ? [] : [value]), one.input, one.figure].map(shown)),
    );
  return [heads, ...rows].map((cells) => cells.join('\t')).join('\n');
}

/** Sentences: why the curves cannot be handed on as they are. */
export function curveProblems({ curve, curves }: Pick<TracedChart, 'curve' | 'curves'>): string[] {
  const values = curves.map(({ value }) => value);
  const twice = values.find((value, index) => values.indexOf(value) !== index);
  return [
    ...(curves.length === 0 ? ['No curve is followed yet.'] : []),
    ...(curve === undefined && curves.length > 1 ? ['Several curves, and none of them has a value: say what the curves are.'] : []),
    ...(curve !== undefined && values.includes(undefined) ? ['A curve has no value yet.'] : []),
    ...(curve !== undefined && twice !== undefined ? [`Two curves have the value ${twice}.`] : []),
    ...curves.flatMap(({ value, readings }) => {
      const name = value === undefined ? 'The curve' : `The curve ${value}`;
      const inputs = readings.map(({ input }) => input);
      const again = inputs.find((input, index) => inputs.indexOf(input) !== index);
      return [
        ...(readings.length < 2 ? [`${name} has ${readings.length === 0 ? 'no points' : 'one point only'}.`] : []),
        ...(again === undefined ? [] : [`${name} has two points at ${again}. Remove one of them.`]),
      ];
    }),
  ];
}
