// The curves as the text that the panel takes, with what is known of them: each curve has points of its own, and where they come from.
import type { TracedText } from '../../../panel/host';
import { pointOf } from '../../../tracing/readings';
import { curveProblems, tableText, type TracedChart } from '../../../tracing/tableText';
import type { ChartPicture } from './chartPicture';
import { nameOf, typedNumber, type AxisDraft, type Draft } from './draft';
import { rising, type ChartWork } from './work';

const columnOf = ({ role, unit }: Pick<AxisDraft, 'role' | 'unit'>) => ({ name: nameOf(role), unit });

export function tracedChart({ axis }: ChartWork, { axes, curveRole, curveUnit, curves }: Draft): TracedChart {
  const used = curves.filter(({ readings, value }) => readings.length > 0 || value !== '');
  return {
    curve: curveRole === '' ? undefined : columnOf({ role: curveRole, unit: curveUnit }),
    input: columnOf(axes[axis]),
    figure: columnOf(axes[axis === 'across' ? 'up' : 'across']),
    curves: used.map(({ value, readings }) => ({ value: typedNumber(value), readings: rising(readings) })),
  };
}

/** Sentences: why the points cannot be taken over yet. */
export function handOverProblems(work: ChartWork, draft: Draft): string[] {
  const chart = tracedChart(work, draft);
  const roles = [draft.curveRole, draft.axes.across.role, draft.axes.up.role].filter((role) => role !== '');
  return [
    ...(new Set(roles).size < roles.length ? ['The curves and an axis cannot be the same.'] : []),
    ...(draft.curveRole !== '' && draft.curveUnit === '' ? ['Say in which unit the values of the curves are.'] : []),
    ...curveProblems(chart),
  ];
}

/** How far apart two neighbouring pixels of the picture are in the figure, about the middle of the chart. */
export function pixelOfFigure({ frame, axis }: ChartWork): number {
  const { least, most } = frame.range;
  const middle = frame.placeOf({ across: (least.across + most.across) / 2, up: (least.up + most.up) / 2 });
  const [one, other] = middle === undefined ? [] : [frame.valueAt(middle), frame.valueAt({ x: middle.x + 1, y: middle.y + 1 })];
  return one === undefined || other === undefined ? NaN : Math.abs(pointOf(one, axis).figure - pointOf(other, axis).figure);
}

/** Signs of the hash that stand in the table's note: enough to know the picture by. */
const signs = 16;

export function sourceNote(work: ChartWork, draft: Draft, { name, hash }: ChartPicture): string {
  const { unit } = draft.axes[work.axis === 'across' ? 'up' : 'across'];
  const size = Number(pixelOfFigure(work).toPrecision(2));
  return `traced from the picture "${name}" (SHA-256 ${hash.slice(0, signs)}), a pixel of it is ${size} ${unit}`;
}

export const handedOver = (work: ChartWork, draft: Draft, picture: ChartPicture): TracedText => ({
  text: tableText(tracedChart(work, draft)),
  answers: { points: 'curve', note: sourceNote(work, draft, picture) },
});
