// From the rows that ROUTE_LEGS lays out to the picture of the route, or why nothing is drawn.
import { numberFromCell } from '../../functions/registry/readNumber';
import { Missing, orEmpty } from './missing';
import { routePicture, type DrawnLeg } from './routePicture';
import type { Cells } from './sheetPictures';
import type { Sheet } from './svg';

/** Columns of ROUTE_LEGS, counted from 0. */
export const partPlaces = { leg: 0, part: 1, from: 2, to: 3, altitude: 4, course: 8, heading: 10, miles: 11, minutes: 13 } as const;

/** The rows of legs alone: those of the whole, of the alternate and of turning back begin with words. */
const isPart = (row: readonly unknown[]): boolean => typeof row[partPlaces.leg] === 'number' && row[partPlaces.leg] !== 0;

/** The rows of each leg. */
export function partsOfLegs(parts: Cells): { readonly number: number; readonly rows: Cells }[] {
  const rows = parts.filter(isPart);
  const numbers = [...new Set(rows.map((row) => Number(row[partPlaces.leg])))];
  return numbers.map((number) => ({ number, rows: rows.filter((row) => row[partPlaces.leg] === number) }));
}

function legOf(number: number, rows: Cells): DrawnLeg {
  const value = (row: readonly unknown[], column: keyof typeof partPlaces): number => {
    const found = numberFromCell(row[partPlaces[column]]);
    if (found === undefined) throw new Missing(`leg ${number} is not worked out`);
    return found;
  };
  const [first = [], last = first] = [rows[0], rows[rows.length - 1]];
  return {
    number,
    from: String(first[partPlaces.from] ?? ''),
    to: String(last[partPlaces.to] ?? ''),
    courseDegrees: value(first, 'course'),
    headingDegrees: value(rows.find((row) => row[partPlaces.part] === 'cruise') ?? first, 'heading'),
    minutes: rows.reduce((sum, row) => sum + value(row, 'minutes'), 0),
    parts: rows.map((row) => ({ kind: String(row[partPlaces.part] ?? ''), nauticalMiles: value(row, 'miles') })),
  };
}

export const routePictureOfCells = ({ parts }: { readonly parts: Cells }, size: Pick<Sheet, 'width' | 'height'>): string =>
  orEmpty({ ...size, title: 'Route' }, () => {
    const legs = partsOfLegs(parts);
    if (legs.length === 0) throw new Missing('no leg yet');
    return routePicture(
      legs.map(({ number, rows }) => legOf(number, rows)),
      size,
    );
  });
