// A pasted table as rows for Manual tables, once nothing is open: its words (what each column is, in which unit), then a row for each point.
import type { TableUnit } from '../../../core/manual/tableUnits';
import { meaningOf } from './numberText';
import type { PasteAnswers } from './readPasted';
import { columnsOf, isSide, type ColumnRole, type PastedColumn } from './tableSides';
import {
  answerTo,
  figureId,
  figureQuestions,
  heldQuestions,
  heldRole,
  nameOfRole,
  noteQuestions,
  roleOfText,
  roleQuestions,
  unitQuestions,
  useQuestions,
  type TableAnswers,
  type TableQuestion,
} from './tableQuestions';
import { placesOf, rowsOf, type Placing, type Settled, type TableRow, type Words } from './tableRows';
import type { SideRole, TableKind } from './tableKinds';
import type { TableShape } from './tableShape';

export interface UnderstoodTable {
  /** Everything that is or may be asked, in order. */
  readonly questions: readonly TableQuestion[];
  /** Sentences: why nothing is written yet, beside open questions. */
  readonly problems: readonly string[];
  /** Rows of words and of numbers, in order; undefined while anything is open. */
  readonly rows: readonly TableRow[] | undefined;
}

const twice = (roles: readonly ColumnRole[]): string[] => {
  const names = roles.filter((role) => role !== 'nothing').map(nameOfRole);
  return [...new Set(names.filter((name, index) => names.indexOf(name) !== index))].map((name) => `${name} is given by two columns.`);
};

/** A text of the user's own must not begin as a formula, a number or a date would: a spreadsheet would make one of it. */
export const plainNote = (text: string): string => (/^[=+\-@'\d.,]/.test(text.trim()) ? `note: ${text.trim()}` : text.trim());

const isOpen = (questions: readonly TableQuestion[], answers: TableAnswers): boolean =>
  questions.some((question) => question.optional !== true && (answerTo(question, answers) ?? '') === '');

function heldValue(question: TableQuestion, answers: TableAnswers): { readonly value: number | undefined; readonly problem: string | undefined } {
  const text = answerTo(question, answers) ?? '';
  const meaning = meaningOf(text);
  if (text === '') return { value: undefined, problem: undefined };
  if (meaning.kind === 'number' && meaning.unit === '' && meaning.marks === '') return { value: meaning.value, problem: undefined };
  return { value: undefined, problem: `"${text}" can be read in several ways, or is no number. Type it with figures only, such as 2300.` };
}

/** The figures as columns, to look at their units. */
function figureColumns(
  { shape, sides, figures }: Settled,
  all: readonly PastedColumn[],
): { readonly column: PastedColumn; readonly role: ColumnRole }[] {
  const own = all.flatMap((column, index) => (sides[index] === undefined ? [] : [{ column, role: sides[index] }]));
  if (shape.side === 0) return own;
  const below = Array.from({ length: shape.figures }, (_, index) => {
    const numbers = shape.blocks.flatMap(({ rows }, block) =>
      figures(block, index) === undefined
        ? []
        : rows.flatMap(({ cells }) =>
            cells.flatMap((cell, at) => (cell !== undefined && at >= shape.side && (at - shape.side) % shape.figures === index ? [cell] : [])),
          ),
    );
    return { column: { id: `figure ${index}`, heads: [], numbers }, role: { figure: 'figures' } };
  });
  return [...own, ...below];
}

const lookedUp = (answers: TableAnswers, among: readonly TableQuestion[], id: string): string | undefined =>
  answerTo(
    among.find((question) => question.id === id),
    answers,
  );

interface Asked {
  readonly settled: Settled;
  readonly columns: readonly PastedColumn[];
  readonly top: PastedColumn | undefined;
  /** Of the columns and what stands across. */
  readonly inputs: readonly SideRole[];
  readonly figures: readonly ColumnRole[];
  readonly questions: readonly TableQuestion[];
  readonly problems: readonly string[];
}

/** The roles are answered: what holds for a whole block comes with them. */
function settledFrom(shape: TableShape, kind: TableKind, asked: readonly TableQuestion[], answers: TableAnswers, paste: PasteAnswers): Asked {
  const { sides: columns, across: top } = columnsOf(shape);
  const sides = columns.map(({ id }) => roleOfText(lookedUp(answers, asked, id)) ?? 'nothing');
  const across = top === undefined ? undefined : roleOfText(lookedUp(answers, asked, 'across'));
  const figureRole = (block: number, index: number): ColumnRole => roleOfText(lookedUp(answers, asked, figureId(shape, block, index))) ?? 'nothing';
  const inputs = [...sides, ...(across === undefined ? [] : [across])].filter(isSide);
  const held = heldRole(inputs);
  const questions = held === undefined ? [] : heldQuestions(shape, held, answers, paste);
  const values = questions.slice(1).map((question) => heldValue(question, answers));
  const figures =
    shape.side === 0 ? sides.filter((role) => typeof role === 'object') : Array.from({ length: shape.figures }, (_, index) => figureRole(0, index));
  const settled: Settled = {
    shape,
    kind,
    sides,
    across: isSide(across) ? across : undefined,
    figures: (block, index) => {
      const role = figureRole(block, index);
      return typeof role === 'object' ? role.figure : undefined;
    },
    held: lookedUp(answers, questions, 'held') === 'given' ? held : undefined,
    heldValues: values.map(({ value }) => value),
  };
  return { settled, columns, top, inputs, figures, questions, problems: values.flatMap(({ problem }) => problem ?? []) };
}

/** In a list an input may not be blank; what a manual prints once for several lines stands on one of them only. */
const blankInputs = ({ settled: { shape, sides } }: Asked): string[] =>
  shape.blocks.flatMap(({ rows }) =>
    rows.flatMap(({ line, cells }) => {
      const blank = sides.find((role, index) => isSide(role) && cells[index] === undefined);
      return blank === undefined
        ? []
        : [`${nameOfRole(blank)} is blank in line ${line}. Where the manual prints a value once for several lines, write it on each of them.`];
    }),
  );

function rolesProblems(asked: Asked, places: Placing | undefined): string[] {
  const { inputs, figures } = asked;
  return [
    ...blankInputs(asked).slice(0, 3),
    ...twice([...inputs, ...figures]),
    ...(inputs.length === 0 ? ['No column is an input, such as an altitude.'] : []),
    ...(figures.every((role) => role === 'nothing') ? ['No column is a figure.'] : []),
    ...(places === undefined
      ? ['Two columns would stand in one column of Manual tables (pressure and density altitude, or temperature and ISA deviation).']
      : []),
  ];
}

/** How many different weights the table has. */
function weightsOf({ settled: { sides, held, heldValues, across, shape }, columns }: Asked): number {
  if (held === 'weight') return new Set(heldValues).size;
  if (across === 'weight') return new Set(shape.blocks.flatMap((block) => block.across.map(({ value }) => value))).size;
  const numbers = columns.flatMap((column, index) => (sides[index] === 'weight' ? column.numbers : []));
  return new Set(numbers.map(({ value }) => value)).size;
}

/** What was understood of a pasted table, what is open, and once nothing is, its rows. */
export function understoodTable(shape: TableShape, kind: TableKind, answers: TableAnswers, paste: PasteAnswers): UnderstoodTable {
  const roles = [...roleQuestions(shape, kind), ...figureQuestions(shape, kind)];
  if (isOpen(roles, answers)) return { questions: roles, problems: [], rows: undefined };
  const asked = settledFrom(shape, kind, roles, answers, paste);
  const { settled, columns, top, inputs } = asked;
  const { held, across } = settled;
  const acrossColumn = top === undefined || across === undefined ? [] : [{ column: top, role: across }];
  const units = unitQuestions(shape, [...figureColumns(settled, columns), ...acrossColumn], kind, held);
  const used = useQuestions(weightsOf(asked));
  const notes = noteQuestions(shape);
  const places = placesOf(held === undefined ? inputs : [held, ...inputs]);
  const problems = [...rolesProblems(asked, places), ...asked.problems, ...units.problems];
  const questions = [...roles, ...asked.questions, ...units.questions, ...used, ...notes];
  if (places === undefined || problems.length > 0 || isOpen(questions, answers)) return { questions, problems, rows: undefined };
  const words: Words = {
    units: Object.fromEntries(units.questions.map(({ id }) => [id.replace('unit.', ''), lookedUp(answers, units.questions, id) as TableUnit])),
    below: lookedUp(answers, used, 'below') === 'used',
    curves: lookedUp(answers, used, 'points') === 'curve',
    note: plainNote(lookedUp(answers, notes, 'note') ?? ''),
    marked: (mark) => plainNote(lookedUp(answers, notes, `note.${mark}`)?.trim() || `see the mark ${mark} in the manual`),
  };
  return { questions, problems, rows: rowsOf(settled, places, words) };
}
