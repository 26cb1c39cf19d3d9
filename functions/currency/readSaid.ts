// What a row of the log says beside its amounts: who flew, between which places, and when.
import { CoreError } from '../../core/basics/errors';
import type { Between, Flight } from '../../core/currency/flightLog';
import { saidHeadings, type SaidColumn } from '../../core/currency/logColumns';
import { flightRecord } from '../../core/route/record';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, type CellValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import { minutesFromTimeCell } from '../registry/readDate';
import { namedFromCell } from '../registry/readText';

type SaidPlaces = ReadonlyMap<SaidColumn, number>;

export const isSaid = (column: string): column is SaidColumn => column in saidHeadings;

const nowhere = { name: 'no place named', key: '' };

/** Of a row with neither time nothing is known; with one alone, or with times that no flight has, it is refused. */
function betweenOf(row: readonly CellValue[], place: number, said: SaidPlaces, mustBe: string, dates: DateHost): Between | undefined {
  const cell = (column: SaidColumn): CellValue => row[said.get(column) ?? -1];
  if (isBlank(cell('takeOffTime')) && isBlank(cell('landingTime'))) return undefined;
  const refuse = (column: SaidColumn, what: string): ArgumentError =>
    new ArgumentError(`${mustBe} (${what})`, inWords(cell(column)), place, (said.get(column) ?? 0) + 1);
  const minutes = (column: 'takeOffTime' | 'landingTime'): number => {
    const found = minutesFromTimeCell(cell(column), dates);
    if (found === undefined) throw refuse(column, 'take-off and landing both as times in UTC, such as 1430 or 14:30');
    return found;
  };
  const [up, down] = [minutes('takeOffTime'), minutes('landingTime')];
  try {
    const { takeOffMinutes, landingMinutes } = flightRecord(up, up, down, down);
    return { from: namedFromCell(cell('from')) ?? nowhere, to: namedFromCell(cell('to')) ?? nowhere, takeOffMinutes, landingMinutes };
  } catch (thrown) {
    if (!(thrown instanceof CoreError)) throw thrown;
    throw refuse('landingTime', 'a landing at most 20 hours after the take-off');
  }
}

export function saidOf(
  row: readonly CellValue[],
  place: number,
  said: SaidPlaces,
  mustBe: string,
  dates: DateHost,
): Pick<Flight, 'pilot' | 'between'> {
  if (said.size === 0) return {};
  const pilot = namedFromCell(row[said.get('pilot') ?? -1]);
  const between = betweenOf(row, place, said, mustBe, dates);
  return { ...(pilot === undefined ? {} : { pilot }), ...(between === undefined ? {} : { between }) };
}
