// From the cells of a sheet to its pictures: what HOLD_BRIEF, DESCENT_PLAN and the entries beside them say, or why nothing is drawn.
import { descentPicture, type ProfileBand, type ProfileCrossing } from './descentPicture';
import { holdPicture, type HoldPictureRequest } from './holdPicture';
import type { EntryKind, Side } from './holdPath';
import { Missing, orEmpty } from './missing';
import type { Sheet } from './svg';

export type Cells = readonly (readonly unknown[])[];
type Size = Pick<Sheet, 'width' | 'height'>;

const cellOf = (cells: Cells): unknown => cells[0]?.[0];

function numberIn(value: unknown, what: string): number {
  if (typeof value !== 'number' || !Number.isFinite(value)) throw new Missing(`no ${what} yet`);
  return value;
}

function wordIn<Word extends string>(value: unknown, words: readonly Word[], what: string): Word {
  const given = typeof value === 'string' ? value.trim().toLowerCase() : '';
  const found = words.find((word) => word === given);
  if (found === undefined) throw new Missing(`no ${what} yet`);
  return found;
}

const sides: readonly Side[] = ['right', 'left'];
const entries: readonly EntryKind[] = ['direct', 'parallel', 'teardrop'];
const kinds = ['at', 'at or below', 'at or above'] as const;

/** Ranges of the sheet: single cells, and the rows of item, value, unit that HOLD_BRIEF lays out. */
export interface HoldCells {
  readonly heading: Cells;
  readonly inbound: Cells;
  readonly turns: Cells;
  readonly windFrom: Cells;
  readonly wind: Cells;
  readonly brief: Cells;
}

function holdRequest({ heading, inbound, turns, windFrom, wind, brief }: HoldCells, up: HoldPictureRequest['up']): HoldPictureRequest {
  const value = (item: string): unknown => brief.find(([name]) => name === item)?.[1];
  const number = (item: string): number => numberIn(value(item), item);
  const entryWords = String(value('entry') ?? '');
  return {
    briefing: {
      headingAtFixDegrees: numberIn(cellOf(heading), 'heading at the fix'),
      inboundDegrees: numberIn(cellOf(inbound), 'inbound course'),
      turns: wordIn(cellOf(turns), sides, 'direction of the turns'),
      windFromDegrees: numberIn(cellOf(windFrom), 'wind direction'),
      windKnots: numberIn(cellOf(wind), 'wind speed'),
      entry: wordIn(entryWords.split(' ')[0], entries, 'entry'),
      firstHeadingDegrees: number('first heading'),
      firstTurn: wordIn(value('first turn'), sides, 'first turn'),
      secondHeadingDegrees: number('second heading'),
      secondTurn: wordIn(value('second turn'), sides, 'second turn'),
      outboundHeadingDegrees: number('outbound heading'),
      outboundSeconds: number('outbound time'),
      inboundHeadingDegrees: number('inbound heading'),
      inboundSeconds: number('inbound time'),
      trueAirspeedKnots: number('true airspeed'),
      turnRadiusNauticalMiles: number('turn radius'),
    },
    entryWords,
    isRacetrack: value('wind verdict') === 'OK',
    up,
  };
}

export const holdPictureOfCells = (cells: HoldCells, up: HoldPictureRequest['up'], size: Size): string =>
  orEmpty({ ...size, title: 'Hold' }, () => holdPicture(holdRequest(cells, up), size));

/** Ranges of the sheet: the rows of DESCENT_PLAN, where they end, and the rows of fix, distance, miles before it, altitude, kind. */
export interface DescentCells {
  readonly plan: Cells;
  readonly endsAt: Cells;
  readonly crossings: Cells;
}

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

const mostBands = 60;
/** The last row of a plan is the whole descent: from where the first band begins to where the one before it ends. */
const isWhole = (row: readonly unknown[], before: Cells): boolean => before.length > 0 && row[0] === before[0]?.[0] && row[1] === before[before.length - 1]?.[1];

/** The rows of DESCENT_PLAN from the first on, the whole descent the last of them; undefined where they do not end so. */
export function planRows(cells: Cells): Cells | undefined {
  for (let count = 0; count < Math.min(cells.length, mostBands); count += 1) {
    const row = cells[count] ?? [];
    if (!isNumber(row[0]) || !isNumber(row[1])) return undefined;
    if (isWhole(row, cells.slice(0, count))) return cells.slice(0, count + 1);
  }
  return undefined;
}

/** The bands of the plan, without its last row. */
export const bandsOf = (plan: Cells): ProfileBand[] =>
  plan.slice(0, -1).map((row) => ({
    fromFeet: numberIn(row[0], 'descent plan'),
    toFeet: numberIn(row[1], 'descent plan'),
    groundspeedKnots: numberIn(row[4], 'descent plan'),
    nauticalMiles: numberIn(row[7], 'descent plan'),
  }));

/** Rows with a distance, an altitude and a kind; those still to be filled in are left out. */
function crossingsOf(rows: Cells): ProfileCrossing[] {
  return rows.flatMap(([name, distance, before, altitudeFeet, kind], index) => {
    const known = kinds.find((word) => word === kind);
    if (!isNumber(distance) || !isNumber(altitudeFeet) || known === undefined) return [];
    return [{ name: typeof name === 'string' && name !== '' ? name : String(index + 1), atNauticalMiles: distance - (isNumber(before) ? before : 0), altitudeFeet, kind: known }];
  });
}

export const descentPictureOfCells = ({ plan, endsAt, crossings }: DescentCells, size: Size): string =>
  orEmpty({ ...size, title: 'Descent profile' }, () => {
    const rows = planRows(plan);
    if (rows === undefined) throw new Missing('no descent plan yet');
    return descentPicture({ bands: bandsOf(rows), endNauticalMiles: numberIn(cellOf(endsAt), 'crossing to plan for'), crossings: crossingsOf(crossings) }, size);
  });
