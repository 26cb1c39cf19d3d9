// Ten thousand different rows for a function, from its first example: equal rows would flatter whatever remembers the last answer.
import type { FunctionDeclaration } from '../../functions/registry/declaration';
import { evenNumbers } from './numbers';

const dayMilliseconds = 86_400_000;
/** Whole effective cycles of every known series, so that a date of a cycle stays one. */
const dateStepDays = 56;
const dateSteps = 12;

type Next = () => number;

/** Up to 3 per cent towards zero, which stays inside the range wherever the example was. */
const variedNumber = (value: number, next: Next): number => value * (1 - 0.03 * next());

/** Something measured, from one limit to another, as against a class, a count or a time of day. */
const isMeasure = (mustBe: string): boolean => /\d to \S*\d|at most \S*\d/.test(mustBe) && !/whole number|time of day|date/.test(mustBe);

const digits = (value: number, length: number): string => String(Math.floor(value)).padStart(length, '0');

/** A weather report at another time and with another wind. */
const variedReport = (text: string, next: Next): string =>
  text
    .replace(/\b(\d\d)\d{4}Z/, (_, day: string) => `${day}${digits(next() * 24, 2)}${digits(next() * 60, 2)}Z`)
    .replace(/\b\d{3}(?=\d\d(?:G\d\d)?KT)/, () => digits(1 + next() * 36, 2).padEnd(3, '0'));

/** One argument of one row; all dates of a row move by the same days, so that they stay in order. */
function variedCell(cell: unknown, mustBe: string, daysLater: number, next: Next): unknown {
  if (typeof cell === 'number') return isMeasure(mustBe) ? variedNumber(cell, next) : cell;
  if (typeof cell !== 'string') return cell;
  if (/^\d{4}-\d\d-\d\d$/.test(cell)) return new Date(Date.parse(cell) + daysLater * dayMilliseconds).toISOString().slice(0, 10);
  return variedReport(cell, next);
}

/** The arguments of the first example, each single value as a column of so many; tables are as they are. */
export function variedArguments({ parameters, examples }: FunctionDeclaration, rows: number): unknown[] {
  const given = [...(examples[0]?.arguments ?? [])];
  const shapes = Object.values(parameters);
  const isCell = (place: number): boolean => shapes[place]?.shape === 'cell' && !Array.isArray(given[place]) && given[place] !== undefined;
  const next = evenNumbers(7);
  const columns: unknown[][][] = given.map(() => []);
  for (let row = 0; row < rows; row += 1) {
    const daysLater = dateStepDays * Math.floor(next() * dateSteps);
    columns.forEach((column, place) => {
      if (isCell(place)) column.push([variedCell(given[place], shapes[place]?.mustBe ?? '', daysLater, next)]);
    });
  }
  return given.map((value, place) => (isCell(place) ? columns[place] : value));
}
