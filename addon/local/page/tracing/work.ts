// What clicks do to the curves once the axes are settled: lines followed, points set, moved and removed.
import { followLine } from '../../../tracing/followLine';
import type { Place } from '../../../tracing/greyPicture';
import type { ChartFrame } from '../../../tracing/knownPoints';
import {
  disagreement,
  finestOf,
  isWithin,
  lineValues,
  pointOf,
  readingsOf,
  roundedTo,
  type CurvePoint,
  type InputAxis,
  type Reading,
} from '../../../tracing/readings';
import { straightened, type Straightened } from '../../../tracing/straightened';
import { withoutGrid, type WithoutGrid } from '../../../tracing/withoutGrid';
import type { ChartPicture } from './chartPicture';
import { frameOf, inputAxisOf, mayHaveEnds, typedNumber, type CurveDraft, type Draft } from './draft';
import { followedSentence, frameSentence, startSentences } from './words';

export interface ChartWork {
  readonly frame: ChartFrame;
  readonly flat: Straightened;
  readonly picture: WithoutGrid;
  readonly axis: InputAxis;
  /** Small printed steps. */
  readonly minor: { readonly input: number; readonly figure: number };
}

export interface Done {
  readonly draft: Draft;
  readonly said: string;
}

export function chartWork({ grey }: ChartPicture, draft: Draft): ChartWork {
  const found = frameOf(draft);
  const axis = inputAxisOf(draft);
  if ('problem' in found) throw new Error(frameSentence(found.problem));
  if (axis === undefined) throw new Error('One axis must be a figure of the table, and the other one an input.');
  const flat = straightened(grey, found.frame);
  const [own, other] = axis === 'across' ? [draft.axes.across, draft.axes.up] : [draft.axes.up, draft.axes.across];
  const minor = { input: typedNumber(own.minor) ?? 1, figure: typedNumber(other.minor) ?? 1 };
  return { frame: found.frame, flat, picture: withoutGrid(flat.ink), axis, minor };
}

/** Straightened pixels up to which the line of the frame hides the end of a curve. */
const hiddenEnd = 6;
/** Small steps of the figure by which two lines of one curve may differ. */
const mayDiffer = 0.5;

const withCurve = (draft: Draft, change: (curve: CurveDraft) => CurveDraft): Draft => ({
  ...draft,
  curves: draft.curves.map((curve, index) => (index === draft.current ? change(curve) : curve)),
});
const currentOf = ({ curves, current }: Draft): CurveDraft => curves[current] ?? { value: '', lines: [], readings: [] };

const outside = 'That is outside of the known points, and nothing is read there.';

export const unitAt = (draft: Draft, axis: InputAxis): string => draft.axes[axis].unit;

/** New readings where the curve has none within a third of a step; what is there stays. */
function merged(before: readonly Reading[], found: readonly Reading[], step: number): Reading[] {
  return [...before, ...found.filter(({ input }) => before.every((one) => Math.abs(one.input - input) > step / 3))];
}

export function followFrom(work: ChartWork, draft: Draft, place: Place): Done {
  const { frame, flat, picture, axis, minor } = work;
  const value = frame.valueAt(place);
  const step = typedNumber(draft.step);
  if (value === undefined || !isWithin(frame.range, value)) return { draft, said: outside };
  if (step === undefined || step <= 0) return { draft, said: 'Type first at which steps points are wanted.' };
  const followed = followLine(picture, flat.pixelOf(value));
  if ('problem' in followed) return { draft, said: startSentences[followed.problem] };
  const { points, turnsBack } = lineValues(followed.line, flat, axis);
  const [first, last] = [points[0], points[points.length - 1]];
  if (first === undefined || last === undefined || points.length < 6) return { draft, said: startSentences.noLine };
  if (currentOf(draft).lines.some((line) => disagreement(points, line) > mayDiffer * minor.figure))
    return { draft, said: 'This line runs beside the one that this curve has already, so it was not taken. Choose another curve for it.' };
  const pixel = Math.abs(pointOf(flat.valueOf({ x: 1, y: 1 }), axis).input - pointOf(flat.valueOf({ x: 0, y: 0 }), axis).input);
  const found = readingsOf(points, { step, minor, ends: mayHaveEnds(draft), beneath: hiddenEnd * pixel });
  const rises = pointOf(flat.valueOf(followed.line.points[0] ?? { x: 0, y: 0 }), axis).input <= (first.input + last.input) / 2;
  const ends = rises ? followed.line.ends : ([followed.line.ends[1], followed.line.ends[0]] as const);
  const worded = (input: number): string => `${roundedTo(input, finestOf(minor.input))} ${unitAt(draft, axis)}`;
  return {
    draft: withCurve(draft, (curve) => ({ ...curve, lines: [...curve.lines, points], readings: merged(curve.readings, found, step) })),
    said: followedSentence(ends, worded(first.input), worded(last.input), turnsBack),
  };
}

function readingAt({ frame, axis, minor }: ChartWork, place: Place): Reading | undefined {
  const value = frame.valueAt(place);
  if (value === undefined || !isWithin(frame.range, value)) return undefined;
  const { input, figure } = pointOf(value, axis);
  return { input: roundedTo(input, finestOf(minor.input)), figure: roundedTo(figure, finestOf(minor.figure)), how: 'hand' };
}

export function pointSet(work: ChartWork, draft: Draft, place: Place): Done {
  const reading = readingAt(work, place);
  if (reading === undefined) return { draft, said: outside };
  return { draft: withCurve(draft, (curve) => ({ ...curve, readings: [...curve.readings, reading] })), said: 'A point was set.' };
}

export function pointMoved(work: ChartWork, draft: Draft, index: number, place: Place): Done {
  const reading = readingAt(work, place);
  if (reading === undefined) return { draft, said: outside };
  const readings = (curve: CurveDraft): Reading[] => curve.readings.map((one, at) => (at === index ? reading : one));
  return { draft: withCurve(draft, (curve) => ({ ...curve, readings: readings(curve) })), said: '' };
}

/** A line that has no reading left goes with the last one. */
export function pointRemoved(draft: Draft, index: number): Draft {
  return withCurve(draft, (curve) => {
    const readings = curve.readings.filter((_, at) => at !== index);
    return { ...curve, readings, lines: readings.length === 0 ? [] : curve.lines };
  });
}

export const rising = <Point extends CurvePoint>(points: readonly Point[]): Point[] => [...points].sort((one, other) => one.input - other.input);
