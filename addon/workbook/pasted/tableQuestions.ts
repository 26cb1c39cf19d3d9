// What is asked about a pasted table before anything of it is written: only what its own words and units leave open. What was understood
// stands as the answer, to be looked at and changed.
import { unitOfStandard } from './numberText';
import type { PasteAnswers } from './readPasted';
import {
  columnsOf,
  figureInHeading,
  isSide,
  roleInHeads,
  roleInUnits,
  unitFound,
  unitOf,
  unitsFor,
  weightsIn,
  type ColumnRole,
  type PastedColumn,
} from './tableSides';
import { columnOfRole, roleWords, sideRoles, type SideRole, type TableKind, type UnitOf } from './tableKinds';
import type { PrintedNumber, TableShape } from './tableShape';

export interface TableQuestion {
  readonly id: string;
  readonly label: string;
  /** None: a text is typed. */
  readonly choices?: readonly { readonly value: string; readonly label: string }[];
  /** What the text itself tells; it stands as the answer until another is given. */
  readonly understood: string | undefined;
  /** May stay without an answer. */
  readonly optional?: boolean;
}

/** By the questions' ids. */
export type TableAnswers = Readonly<Record<string, string | undefined>>;

export const answerTo = (question: TableQuestion | undefined, answers: TableAnswers): string | undefined =>
  question === undefined ? undefined : (answers[question.id] ?? question.understood);

const figureMark = 'figure: ';
const textOfRole = (role: ColumnRole): string => (typeof role === 'string' ? role : `${figureMark}${role.figure}`);
export function roleOfText(text: string | undefined): ColumnRole | undefined {
  if (text === undefined) return undefined;
  if (text.startsWith(figureMark)) return { figure: text.slice(figureMark.length) };
  return text === 'nothing' ? 'nothing' : sideRoles.find((role) => role === text);
}

const choice = (role: ColumnRole): { readonly value: string; readonly label: string } => ({
  value: textOfRole(role),
  label: role === 'nothing' ? 'leave it out' : isSide(role) ? roleWords[role] : typeof role === 'string' ? role : role.figure,
});

/** The first numbers and the last, for the user to know a column by. */
export function inShort(numbers: readonly PrintedNumber[]): string {
  const values = numbers.map(({ value, unit }) => `${unit === unitOfStandard ? 'ISA ' : ''}${value}`);
  const short = [...new Set(values)];
  return short.length > 4 ? `${short.slice(0, 2).join(', ')} ... ${short[short.length - 1] ?? ''}` : short.join(', ');
}

const wordsAbove = ({ blocks }: TableShape): string => blocks.flatMap(({ heading }) => heading).join(' ');

function columnQuestion(shape: TableShape, column: PastedColumn, label: string, kind: TableKind): TableQuestion {
  const told = roleInHeads(column, kind) ?? roleInUnits(column, wordsAbove(shape));
  const isList = shape.side === 0;
  const understood = told !== undefined && (isList || isSide(told)) ? textOfRole(told) : undefined;
  const figures = isList ? [...kind.figures.map(({ name }): ColumnRole => ({ figure: name })), 'nothing' as const] : [];
  return { id: column.id, label: `${label} (${inShort(column.numbers)})`, choices: [...sideRoles, ...figures].map(choice), understood };
}

/** What each column at the side is, or of a list each column, and what stands across. */
export function roleQuestions(shape: TableShape, kind: TableKind): TableQuestion[] {
  const { sides, across } = columnsOf(shape);
  return [
    ...sides.map((column, index) => columnQuestion(shape, column, `Column ${index + 1}`, kind)),
    ...(across === undefined ? [] : [columnQuestion(shape, across, 'Across the top', kind)]),
  ];
}

/** Which figures a block with values across gives: one for each value, or two side by side, which are the same in all blocks. */
export const figureId = ({ figures }: TableShape, block: number, index: number): string => `figure.${figures === 1 ? block + 1 : 1}.${index + 1}`;

export function figureQuestions(shape: TableShape, kind: TableKind): TableQuestion[] {
  if (shape.side === 0) return [];
  const blocks = shape.figures === 1 ? shape.blocks : shape.blocks.slice(0, 1);
  const choices = [...kind.figures.map(({ name }): ColumnRole => ({ figure: name })), ...(shape.figures > 1 ? (['nothing'] as const) : [])].map(
    choice,
  );
  return blocks.flatMap((block, at) =>
    Array.from({ length: shape.figures }, (_, index): TableQuestion => {
      const figure = shape.figures === 1 ? figureInHeading(block, kind) : undefined;
      const where = shape.figures > 1 ? `The ${index === 0 ? 'first' : 'second'} of each two figures` : 'The figures';
      const line = blocks.length > 1 ? ` from line ${block.rows[0]?.line ?? 0}` : '';
      return {
        id: figureId(shape, at, index),
        label: `${where}${line}`,
        choices,
        understood: figure === undefined ? undefined : textOfRole({ figure }),
      };
    }),
  );
}

/** The input that no column gives and a whole block can hold at: the weight above it, most often. */
export function heldRole(used: readonly SideRole[]): SideRole | undefined {
  const taken = used.map((role) => columnOfRole[role]);
  return (['weight', 'pressure altitude', 'temperature'] as const).find((role) => !taken.includes(columnOfRole[role]));
}

export function heldQuestions(shape: TableShape, role: SideRole, answers: TableAnswers, paste: PasteAnswers): TableQuestion[] {
  const weights = shape.blocks.map(({ heading }) => (role === 'weight' ? weightsIn(heading.join(' '), paste) : []));
  const name = roleWords[role];
  const given: TableQuestion = {
    id: 'held',
    label: `The ${name}`,
    choices: [
      { value: 'given', label: shape.blocks.length > 1 ? 'one for each block' : 'one for all of it' },
      { value: 'none', label: 'the manual gives none' },
    ],
    understood: weights.some((found) => found.length > 0) ? 'given' : undefined,
  };
  if (answerTo(given, answers) !== 'given') return [given];
  return [
    given,
    ...shape.blocks.map(({ heading, rows }, index): TableQuestion => {
      const [weight, ...others] = weights[index] ?? [];
      const told = others.length === 0 ? weight?.value : undefined;
      const words = heading.length === 0 ? '' : `, "${heading.join(' ').slice(0, 60)}"`;
      return {
        id: `held.${index + 1}`,
        label: `${name}, lines from ${rows[0]?.line ?? 0}${words}`,
        understood: told === undefined ? undefined : String(told),
      };
    }),
  ];
}

export interface UnitsAsked {
  readonly questions: readonly TableQuestion[];
  readonly problems: readonly string[];
}

/** One for each kind of quantity in use; a unit that is printed is not asked for. */
export function unitQuestions(
  shape: TableShape,
  columns: readonly { readonly column: PastedColumn; readonly role: ColumnRole }[],
  kind: TableKind,
  held?: SideRole,
): UnitsAsked {
  const problems: string[] = [];
  const kinds = [...columns.map(({ role }): ColumnRole => role), ...(held === undefined ? [] : [held])].flatMap((role): UnitOf[] => {
    const of = unitOf(role);
    return of === undefined ? [] : [of];
  });
  const questions = [...new Set(kinds)].map((of): TableQuestion => {
    const found = columns.filter(({ role }) => unitOf(role) === of).map(({ column, role }) => unitFound(column, role, nameOfRole(role)));
    problems.push(...found.flatMap(({ problem }) => problem ?? []));
    const inWords =
      of === 'weight' && held === 'weight' ? shape.blocks.flatMap(({ heading }) => weightsIn(heading.join(' '), {}).map(({ unit }) => unit)) : [];
    const units = [...new Set([...found.flatMap(({ unit }) => unit ?? []), ...inWords])];
    const choices = unitsFor(of, kind);
    const strange = units.find((unit) => !choices.includes(unit));
    if (units.length > 1) problems.push(`The ${of === 'figure' ? 'figures have' : `${of} has`} numbers in several units: ${units.join(', ')}.`);
    else if (strange !== undefined) problems.push(`${strange} is no unit of ${of === 'figure' ? `a ${kind.title.toLowerCase()}` : `a ${of}`}.`);
    const label = of === 'figure' ? `The unit of the figures` : `The unit of the ${of}`;
    return {
      id: `unit.${of}`,
      label,
      choices: choices.map((unit) => ({ value: unit, label: unit })),
      understood: units.length === 1 && strange === undefined ? units[0] : undefined,
    };
  });
  return { questions, problems };
}

export const nameOfRole = (role: ColumnRole): string =>
  isSide(role) ? `The ${roleWords[role]}` : role === 'nothing' ? 'A column' : `The ${typeof role === 'string' ? role : role.figure}`;

export function useQuestions(weights: number): TableQuestion[] {
  const below: TableQuestion = {
    id: 'below',
    label: weights > 1 ? 'Below the least weight' : 'At lighter weights',
    choices: [
      { value: 'used', label: 'use these figures too (the careful way)' },
      { value: 'unknown', label: 'UNKNOWN' },
    ],
    understood: weights > 1 ? 'unknown' : 'used',
  };
  const points: TableQuestion = {
    id: 'points',
    label: 'Where the numbers come from',
    choices: [
      { value: 'table', label: 'a printed table' },
      { value: 'curve', label: 'read off curves, each with points of its own' },
    ],
    understood: 'table',
  };
  return weights > 0 ? [below, points] : [points];
}

/** Marks of footnotes among the numbers, each once. */
export function noteQuestions({ blocks }: TableShape): TableQuestion[] {
  const numbers = blocks.flatMap(({ across, rows }) => [...across, ...rows.flatMap(({ cells }) => cells.flatMap((cell) => cell ?? []))]);
  const marks = [...new Set(numbers.map(({ marks: found }) => found).filter((found) => found !== ''))];
  return [
    ...marks.map((mark): TableQuestion => ({ id: `note.${mark}`, label: `What the mark ${mark} says, if you like`, understood: '', optional: true })),
    { id: 'note', label: 'A note for all of it, if you like', understood: '', optional: true },
  ];
}
