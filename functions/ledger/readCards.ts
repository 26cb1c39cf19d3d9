// Readers of the card columns of the data ledger: a cell that cannot be read spoils only its own card.
import { dayNumber, type CivilDate } from '../../core/basics/civilDate';
import type { LedgerCard, Verification } from '../../core/ledger/ledgerCard';
import type { CellValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { column, optional, unreadableMeansUndefined } from '../registry/modifiers';
import { civilDateFromCell, date, timeOfDayZulu } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { namedText, yesNo } from '../registry/readText';
import { licenceRows } from './readLicences';
import { dataSeries } from './readSeries';

export const cardAircraft = column(
  unreadableMeansUndefined(namedText({ mustBe: 'the name of the aircraft', help: 'The aircraft of each card, one card a row.' })),
);
export const cardDatabase = column(
  unreadableMeansUndefined(
    namedText({
      mustBe: 'the name of the database',
      help: 'The database of each card, such as navigation; cards of the same one in one aircraft are compared.',
    }),
  ),
);
export const cardSeries = column(
  unreadableMeansUndefined(
    dataSeries(
      'How often the data of each card changes, and on which days; dates of your own with commas between; as issued, no end, or not in use, for a card that is not judged.',
    ),
  ),
);
export const cardUnit = column(
  unreadableMeansUndefined(
    namedText({
      mustBe: 'the name of the box or card',
      help: 'The box or card, such as "panel, left": with aircraft and database it tells the card from every other, and a load names it so.',
    }),
  ),
);
export const cardLoaded = column(unreadableMeansUndefined(date('Effective date of the data on each card (not the day somebody loaded it).')));
export const cardChangesAt = optional(
  column(
    unreadableMeansUndefined(
      timeOfDayZulu('When on its effective date the data of each card changes: 0000Z by the ICAO annex, 0901Z for US products (from memory).'),
    ),
  ),
  0,
  '0000Z',
);
export const cardLicences = optional(
  licenceRows(
    'Rows of aircraft (or "all"), database, last day of the licence; further columns may follow. A card without a row here is judged without a licence, unless the columns that say what each covers are there.',
  ),
  [],
  'no licences',
);
export const cardWarnDays = optional(
  number({ unit: 'days', whole: true, minimum: 0, maximum: 366, help: 'CHECK when no more than this many days are left.' }),
  5,
  '5 days',
);

const word = yesNo('');

/** A day, or an older word: yes tells no day. Whatever cannot be read is no. */
export function verification(raw: CellValue, dates: DateHost): Verification {
  const day = civilDateFromCell(raw, dates);
  if (day !== undefined) return { day: dayNumber(day) };
  return unreadableMeansUndefined(word).read(raw, dates) === true ? 'without a day' : 'no';
}

const verifiedCell: Parameter<Verification> & { readonly shape: 'cell' } = {
  shape: 'cell',
  unit: 'date',
  mustBe: 'the day on which somebody looked at the card',
  help: 'The day on which somebody looked at each card after loading; blank or no where nobody did. A mere yes tells no day, so it is CHECK.',
  optional: undefined,
  read: verification,
};
export const cardVerified = column(verifiedCell);

const loadedOn = date('The day on which each card was loaded; a verification counts from that day on.');
export const cardLoadedOn: Parameter<number | 'missing' | 'not asked'> & { readonly shape: 'column' } = {
  ...loadedOn,
  shape: 'column',
  optional: { value: 'not asked', words: 'a verification counts from one cycle before loaded_effective on', blankIsMistake: true },
  read: (raw, dates) => {
    const day = civilDateFromCell(raw, dates);
    return day === undefined ? 'missing' : dayNumber(day);
  },
};

/** Last of the arguments of functions that had none of it before. */
export const cardBox = optional(cardUnit, undefined, 'not asked; a licence for some boxes alone is then unclear');

interface CardColumns {
  readonly box: readonly LedgerCard['unit'][];
  readonly aircraft: readonly LedgerCard['aircraft'][];
  readonly database: readonly LedgerCard['database'][];
  readonly series: readonly LedgerCard['series'][];
  readonly loaded_effective: readonly (CivilDate | undefined)[];
  readonly changes_at_z: readonly (number | undefined)[];
  readonly verified: readonly (Verification | undefined)[];
  readonly loaded_on: readonly (LedgerCard['loadedOnDay'] | undefined)[];
}

/** The cards of these columns, row after row. */
export const ledgerCards = (given: CardColumns): LedgerCard[] =>
  given.aircraft.map((aircraft, index) => {
    const loaded = given.loaded_effective[index];
    return {
      aircraft,
      unit: given.box[index],
      database: given.database[index],
      series: given.series[index],
      loadedDay: loaded === undefined ? undefined : dayNumber(loaded),
      changesAtMinutes: given.changes_at_z[index],
      verified: given.verified[index] ?? 'no',
      loadedOnDay: given.loaded_on[index] ?? 'missing',
    };
  });
