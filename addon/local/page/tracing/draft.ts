// What the user has said and clicked so far of a chart, and what follows from it. Plain data; the picture alone is more.
import { roleWords, sideRoles, unitChoices, unitOfRole, type SideRole, type TableKind } from '../../../workbook/pasted/tableKinds';
import { meaningOf } from '../../../workbook/pasted/numberText';
import type { Place } from '../../../tracing/greyPicture';
import { chartFrame, type ChartFrame, type ChartValue, type FrameFound, type Heading, type KnownPoint } from '../../../tracing/knownPoints';
import type { InputAxis, Reading, SeenPoint } from '../../../tracing/readings';

export interface AxisDraft {
  /** A role of an input, or "figure: " and a figure's name; '' while open. */
  readonly role: string;
  readonly unit: string;
  /** As typed: the values at its left or lower end and at the other one, and its smallest printed step. */
  readonly start: string;
  readonly end: string;
  readonly minor: string;
}

export interface CurveDraft {
  /** As typed. */
  readonly value: string;
  readonly lines: readonly (readonly SeenPoint[])[];
  /** In the order in which they came. */
  readonly readings: readonly Reading[];
}

export interface FurtherPoint {
  readonly at: Place;
  readonly value: ChartValue;
}

export interface Draft {
  readonly axes: { readonly across: AxisDraft; readonly up: AxisDraft };
  /** In the order of `corners`. */
  readonly corners: readonly (Place | undefined)[];
  readonly further: readonly FurtherPoint[];
  /** The user says that axes which grow another way than was typed are so in the picture. */
  readonly headingsSeen: boolean;
  /** The axes are settled, and curves are followed. */
  readonly settled: boolean;
  readonly curveRole: string;
  readonly curveUnit: string;
  readonly step: string;
  readonly curves: readonly CurveDraft[];
  /** Which curve clicks belong to. */
  readonly current: number;
}

const noAxis: AxisDraft = { role: '', unit: '', start: '', end: '', minor: '' };
export const noCurve: CurveDraft = { value: '', lines: [], readings: [] };
export const emptyDraft: Draft = {
  axes: { across: noAxis, up: noAxis },
  corners: [undefined, undefined, undefined, undefined],
  further: [],
  headingsSeen: false,
  settled: false,
  curveRole: '',
  curveUnit: '',
  step: '',
  curves: [noCurve],
  current: 0,
};

/** Which ends of the axes meet there. */
export const corners = [
  { across: 'start', up: 'start' },
  { across: 'end', up: 'start' },
  { across: 'end', up: 'end' },
  { across: 'start', up: 'end' },
] as const;

/** A typed number; one that can be read in two ways is none. */
export function typedNumber(text: string): number | undefined {
  const meaning = meaningOf(text);
  return meaning.kind === 'number' && meaning.unit === '' && meaning.marks === '' ? meaning.value : undefined;
}

const figureMark = 'figure: ';
export const figureIn = (role: string): string | undefined => (role.startsWith(figureMark) ? role.slice(figureMark.length) : undefined);
const sideIn = (role: string): SideRole | undefined => sideRoles.find((one) => one === role);
export const nameOf = (role: string): string => figureIn(role) ?? (sideIn(role) === undefined ? '' : roleWords[sideIn(role) as SideRole]);

export const inputChoices = sideRoles.map((role) => ({ value: role as string, label: roleWords[role] }));
export const axisChoices = ({ figures }: TableKind) => [
  ...inputChoices,
  ...figures.map(({ name }) => ({ value: `${figureMark}${name}`, label: name })),
];
export function unitsOf(role: string, kind: TableKind): readonly string[] {
  const side = sideIn(role);
  if (side === undefined) return figureIn(role) === undefined ? [] : kind.figureUnits;
  const of = unitOfRole[side];
  return of === 'figure' ? kind.figureUnits : unitChoices[of];
}

/** The axis that the table is entered with. Undefined while the other one is not the figure. */
export function inputAxisOf({ axes: { across, up } }: Draft): InputAxis | undefined {
  const [one, other] = [figureIn(across.role), figureIn(up.role)];
  if (other !== undefined && sideIn(across.role) !== undefined) return 'across';
  return one !== undefined && sideIn(up.role) !== undefined ? 'up' : undefined;
}

export function cornerValue({ axes }: Draft, index: number): ChartValue | undefined {
  const ends = corners[index];
  const [across, up] = [typedNumber(axes.across[ends?.across ?? 'start']), typedNumber(axes.up[ends?.up ?? 'start'])];
  return across === undefined || up === undefined ? undefined : { across, up };
}

export function knownPoints(draft: Draft): KnownPoint[] {
  const own = draft.corners.flatMap((at, index): KnownPoint[] => {
    const value = cornerValue(draft, index);
    return at === undefined || value === undefined ? [] : [{ at, value }];
  });
  return [...own, ...draft.further];
}

/** Sentences: what of the axes is open. */
export function axisProblems({ axes, ...draft }: Draft, kind: TableKind): string[] {
  const open = (['across', 'up'] as const).flatMap((which) => {
    const { role, unit, start, end, minor } = axes[which];
    const name = which === 'across' ? 'The axis across the page' : 'The axis up the page';
    const [first, last, small] = [start, end, minor].map(typedNumber);
    return [
      ...(role === '' || !unitsOf(role, kind).includes(unit) ? [`${name}: say what it is, and its unit.`] : []),
      ...(first === undefined || last === undefined ? [`${name}: type the values at its two ends, with figures only.`] : []),
      ...(first !== undefined && first === last ? [`${name}: its two ends have the same value.`] : []),
      ...(small === undefined || small <= 0 ? [`${name}: type its smallest printed step.`] : []),
      ...(small !== undefined && first !== undefined && last !== undefined && small > Math.abs(last - first)
        ? [`${name}: its smallest step is larger than the whole axis.`]
        : []),
    ];
  });
  const roles = axes.across.role !== '' && axes.up.role !== '' && inputAxisOf({ axes, ...draft }) === undefined;
  return [...open, ...(roles ? ['One axis must be a figure of the table, and the other one an input.'] : [])];
}

export const frameOf = (draft: Draft): FrameFound => chartFrame(knownPoints(draft));

/** Where each axis grows in the picture, where that is another way than was typed: points were confused, or the picture lies on its side. */
export function oddHeadings(draft: Draft, grows: ChartFrame['grows']): { readonly which: 'across' | 'up'; readonly heading: Heading }[] {
  const rises = ({ start, end }: AxisDraft): boolean => (typedNumber(end) ?? 0) > (typedNumber(start) ?? 0);
  const expected = { across: rises(draft.axes.across) ? 'right' : 'left', up: rises(draft.axes.up) ? 'up' : 'down' };
  return (['across', 'up'] as const).flatMap((which) => (grows[which] === expected[which] ? [] : [{ which, heading: grows[which] }]));
}

/** Inputs in the order in which a table is entered: only along the last of them may each curve have points of its own. */
const rank: Readonly<Record<SideRole, number>> = {
  weight: 0,
  'pressure altitude': 1,
  'density altitude': 1,
  headwind: 2,
  temperature: 3,
  'isa deviation': 3,
};
export function mayHaveEnds(draft: Draft): boolean {
  const axis = inputAxisOf(draft);
  const input = axis === undefined ? undefined : sideIn(draft.axes[axis].role);
  const curve = sideIn(draft.curveRole);
  return curve === undefined || input === undefined || rank[input] > rank[curve];
}
