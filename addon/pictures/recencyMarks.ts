// The marks of the recency picture that its line and its list of next lapses share. Shapes differ, so that it reads in grey print.
import type { Verdict } from '../../core/basics/verdict';
import { verdictTints } from '../../sheets-templates/look';
import { colours, element } from './svg';
import type { DayLine } from './timeLine';

export const margin = 14;
export const lineHeight = 17;

export interface KeyLine {
  readonly text: string;
  /** 24 pixels wide from x, its middle at y. */
  readonly sample: (x: number, y: number) => string;
}
export const keyLine = (text: string, sample: KeyLine['sample']): KeyLine => ({ text, sample });

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Between two days, cut off where the line of days ends. */
export function spanOf({ x, left, right }: DayLine, oneDay: number, otherDay: number): Span {
  const held = (day: number): number => Math.min(right, Math.max(left, x(day)));
  return { from: Math.min(held(oneDay), held(otherDay)), to: Math.max(held(oneDay), held(otherDay)) };
}

/** What is left: full where OK, light with an edge where CHECK, empty with a broken edge else; a broken line for what has lapsed. */
export function bar({ from, to }: Span, y: number, height: number, verdict: Verdict, lapsed: boolean): string {
  if (lapsed)
    return element('line', { x1: from, x2: to, y1: y, y2: y, stroke: colours.entry, 'stroke-width': height / 2, 'stroke-dasharray': '5 4' });
  const look =
    verdict === 'OK'
      ? { fill: colours.wind }
      : verdict === 'CHECK'
        ? { fill: verdictTints.CHECK, stroke: colours.ink, 'stroke-width': 1 }
        : { fill: colours.paper, stroke: colours.ink, 'stroke-width': 1, 'stroke-dasharray': '3 2' };
  return element('rect', { x: from, y: y - height / 2, width: Math.max(0, to - from), height, ...look });
}

/** The last good day. Beyond either end of the line it is an arrow at that end. */
export function diamond(days: Pick<DayLine, 'x'> & Partial<DayLine>, day: number, y: number, size = 6): string {
  const { x, left = -Infinity, right = Infinity } = days;
  const at = Math.min(right, Math.max(left, x(day)));
  const d =
    x(day) > right
      ? `M-${size},-${size}L${size},0L-${size},${size}Z`
      : x(day) < left
        ? `M${size},-${size}L-${size},0L${size},${size}Z`
        : `M0,-${size}L${size},0L0,${size}L-${size},0Z`;
  return element('path', { d, transform: `translate(${at.toFixed(1)},${y.toFixed(1)})`, fill: colours.path, stroke: colours.paper });
}
