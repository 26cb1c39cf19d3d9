// From the cells of a sheet to its pictures: what HOLD_BRIEF, DESCENT_PLAN and the entries beside them say, or why nothing is drawn.
import { crossingKind } from '../../functions/descent/crossings';
import { turnsChoice } from '../../functions/hold/entry';
import { isBlank } from '../../functions/registry/cellValues';
import { numberFromCell } from '../../functions/registry/readNumber';
import { descentPicture } from './descentPicture';
import type { ProfileBand, ProfileCrossing } from './descentProfile';
import { holdPicture, type HoldPictureRequest } from './holdPicture';
import type { EntryKind, Side } from './holdPath';
import { Missing, orEmpty } from './missing';
import type { Sheet } from './svg';

export type Cells = readonly (readonly unknown[])[];
type Size = Pick<Sheet, 'width' | 'height'>;

const cellOf = (cells: Cells): unknown => cells[0]?.[0];

/** As the sheet functions read it, so that a number pasted as text is drawn where they have it. */
function numberIn(value: unknown, what: string): number {
  const found = numberFromCell(value);
  if (found === undefined) throw new Missing(`no ${what} yet`);
  return found;
}

/** One of the words of a choice, in any spelling that the sheet functions take. */
function choiceIn<Word>(value: unknown, { read }: { readonly read: (raw: unknown) => Word }, what: string): Word {
  try {
    return read(value);
  } catch {
    throw new Missing(`no ${what} yet`);
  }
}

function wordIn<Word extends string>(value: unknown, words: readonly Word[], what: string): Word {
  const given = typeof value === 'string' ? value.trim().toLowerCase() : '';
  const found = words.find((word) => word === given);
  if (found === undefined) throw new Missing(`no ${what} yet`);
  return found;
}

const sides: readonly Side[] = ['right', 'left'];
const entries: readonly EntryKind[] = ['direct', 'parallel', 'teardrop'];

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
      turns: choiceIn(cellOf(turns), turnsChoice, 'direction of the turns'),
      windFromDegrees: numberIn(cellOf(windFrom), 'wind direction'),
      windKnots: numberIn(cellOf(wind), 'wind speed'),
      entry: wordIn(entryWords.split(' ')[0], entries, 'entry'),
      firstHeadingDegrees: number('first heading'),
      firstTurn: wordIn(value('first turn'), sides, 'first turn'),
      secondHeadingDegrees: number('second heading'),
      secondTurn: wordIn(value('second turn'), sides, 'second turn'),
      outboundHeadingDegrees: number('outbound heading'),
      outboundSeconds: number('outbound time'),
      outboundEndNauticalMiles: number('outbound end from fix'),
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

const maxBands = 60;
/** The last row of a plan is the whole descent: from where the first band begins to where the one before it ends. */
const isWhole = (row: readonly unknown[], before: Cells): boolean =>
  before.length > 0 && row[0] === before[0]?.[0] && row[1] === before[before.length - 1]?.[1];

/** The rows of DESCENT_PLAN from the first on, the whole descent the last of them; undefined where they do not end so. */
export function planRows(cells: Cells): Cells | undefined {
  for (let count = 0; count < Math.min(cells.length, maxBands); count += 1) {
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

/** The crossing where it is, since that is what is drawn, and not its fix. */
const whereCrossed = (fix: string, before: number): string =>
  before === 0 ? fix : `${Math.abs(before)} NM ${before > 0 ? 'before' : 'after'} ${fix}`;

/** The rows that are filled in. One that lacks something, or cannot be read, would be missing in the picture, so nothing is drawn then. */
function crossingsOf(rows: Cells): ProfileCrossing[] {
  return rows.flatMap((row, index) => {
    if (row.every((value) => isBlank(value))) return [];
    const [name, distance, before, altitude, kind] = row;
    const called = typeof name === 'string' && name.trim() !== '' ? name.trim() : String(index + 1);
    const of = (what: string): string => `${what} for the crossing "${called}"`;
    const miles = isBlank(before) ? 0 : numberIn(before, of('readable miles before the fix'));
    return [
      {
        name: whereCrossed(called, miles),
        atNauticalMiles: numberIn(distance, of('distance')) - miles,
        altitudeFeet: numberIn(altitude, of('altitude')),
        kind: choiceIn(kind, crossingKind, of('word (at, at or below, at or above)')),
      },
    ];
  });
}

export const descentPictureOfCells = ({ plan, endsAt, crossings }: DescentCells, size: Size): string =>
  orEmpty({ ...size, title: 'Descent profile' }, () => {
    const rows = planRows(plan);
    if (rows === undefined) throw new Missing('no descent plan yet');
    return descentPicture(
      { bands: bandsOf(rows), endNauticalMiles: numberIn(cellOf(endsAt), 'crossing to plan for'), crossings: crossingsOf(crossings) },
      size,
    );
  });
