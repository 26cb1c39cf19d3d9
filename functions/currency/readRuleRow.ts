// Reader of one row of a table of rules: what its cells say, or the sentence that tells why it is no rule.
import { dayNumber } from '../../core/basics/civilDate';
import type { Named } from '../../core/basics/named';
import type { TrainingDevice } from '../../core/currency/flightLog';
import { flightNeeds, type DaysRule, type FlightNeed, type MedicalPeriod, type Task } from '../../core/currency/rules/rule';
import type { Window } from '../../core/currency/window';
import { inWords, isBlank, type CellValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import type { Parameter } from '../registry/declaration';
import { civilDateFromCell } from '../registry/readDate';
import type { Headings } from '../registry/readHeadings';
import { limitInWords, numberFromCell } from '../registry/readNumber';
import { choice, namedFromCell, plainWords, yesNo } from '../registry/readText';

export type Column =
  | 'rule'
  | 'what'
  | 'needed'
  | 'within'
  | 'unit'
  | 'flown'
  | 'neededFor'
  | 'night'
  | 'fullStop'
  | 'tailwheel'
  | 'devices'
  | 'setBy'
  | 'reading'
  | 'from'
  | 'until'
  | 'warnDays'
  | 'medicalClass'
  | 'youngerThan';

export const headings: Headings<Column> = {
  rule: ['rule'],
  what: ['what'],
  needed: ['at least'],
  within: ['within'],
  unit: ['of'],
  flown: ['in'],
  neededFor: ['needed for'],
  night: ['night'],
  fullStop: ['full stop'],
  tailwheel: ['tailwheel'],
  devices: ['devices'],
  setBy: ['set by', 'paragraph'],
  reading: ['reading'],
  from: ['from'],
  until: ['until'],
  warnDays: ['check days'],
  medicalClass: ['medical class'],
  youngerThan: ['younger than'],
};
export const tallies = {
  landings: 'landings',
  'take-offs': 'takeoffs',
  hours: 'hours',
  'hours in command': 'commandHours',
  'hours with instructor': 'trainingHours',
  'hours at night': 'nightHours',
  'instrument hours': 'instrumentHours',
  flights: 'flights',
  'flights with instructor': 'trainingFlights',
  approaches: 'approaches',
  holds: 'holds',
  tracking: 'tracking',
} as const;
export type Counted = keyof typeof tallies;
type What = Counted | 'paper' | 'medical';
export const whats: readonly What[] = [...(Object.keys(tallies) as Counted[]), 'paper', 'medical'];
export const units = ['days', 'months', 'calendar months', 'since'] as const;
const sames = { all: 'all', 'same class': 'class', 'same category': 'category', 'same aircraft': 'aircraft' } as const;
const deviceNames: readonly TrainingDevice[] = ['FFS', 'FTD', 'ATD'];

const whatChoice = choice<What>({ words: whats, help: '', also: { takeoffs: 'take-offs', 'hours with an instructor': 'hours with instructor' } });
const unitChoice = choice<(typeof units)[number]>({
  words: units,
  help: '',
  also: { day: 'days', month: 'months', 'calendar month': 'calendar months' },
});
const needChoice = choice<FlightNeed>({ words: flightNeeds, help: '' });
const tick = yesNo('');

/** Says which cell of a row is no part of a rule, and what it must be. */
export class RowMistake extends Error {}

export interface Row {
  readonly rule: Named;
  readonly what: What;
  readonly needed: number | undefined;
  readonly within: Window | undefined;
  readonly common: Pick<DaysRule, 'neededFor' | 'paragraph' | 'reading' | 'inForce' | 'warnDays'>;
  readonly counting: Pick<DaysRule, 'same' | 'flown' | 'tailwheel' | 'devices'>;
  readonly task: Pick<Task['counts'], 'night' | 'fullStop'>;
  readonly medical: Pick<MedicalPeriod, 'medicalClass' | 'youngerThan'>;
}

export class Reader {
  constructor(
    private readonly row: readonly CellValue[],
    private readonly places: ReadonlyMap<Column, number>,
    private readonly dates: DateHost,
  ) {}

  cell(column: Column): CellValue {
    return this.row[this.places.get(column) ?? -1];
  }

  refuse(column: Column, what: string): RowMistake {
    return new RowMistake(`"${headings[column][0] ?? column}" must be ${what}; got ${inWords(this.cell(column))}`);
  }

  is<Value>(column: Column, parameter: Parameter<Value>, blank: Value): Value {
    if (isBlank(this.cell(column))) return blank;
    try {
      return parameter.read(this.cell(column), this.dates);
    } catch {
      throw this.refuse(column, parameter.mustBe);
    }
  }

  count(column: Column, most: number, whole: boolean): number | undefined {
    if (isBlank(this.cell(column))) return undefined;
    const value = numberFromCell(this.cell(column));
    if (value === undefined || value <= 0 || value > most || (whole && !Number.isInteger(value)))
      throw this.refuse(column, `${whole ? 'a whole number' : 'a number'} above 0, up to ${limitInWords(most)}`);
    return value;
  }

  date(column: Column): number | undefined {
    if (isBlank(this.cell(column))) return undefined;
    const date = civilDateFromCell(this.cell(column), this.dates);
    if (date === undefined) throw this.refuse(column, 'a date, such as 2026-11-30');
    return dayNumber(date);
  }

  words(column: Column): string | undefined {
    const named = isBlank(this.cell(column)) ? undefined : String(this.cell(column)).trim();
    return named === '' ? undefined : named;
  }
}

function windowOf(row: Reader): Window | undefined {
  if (isBlank(row.cell('within')) && isBlank(row.cell('unit'))) return undefined;
  if (isBlank(row.cell('unit'))) throw row.refuse('unit', unitChoice.mustBe);
  const unit = row.is('unit', unitChoice, 'days');
  if (isBlank(row.cell('within'))) throw row.refuse('within', unit === 'since' ? 'a date, such as 2026-11-30' : `how many ${unit}`);
  if (unit === 'since') return { sinceDay: row.date('within') ?? 0 };
  const count = row.count('within', unit === 'days' ? 3660 : 120, true) ?? 0;
  if (unit === 'days') return { days: count };
  return unit === 'months' ? { months: count } : { calendarMonths: count };
}

function countingOf(row: Reader): Row['counting'] {
  const words = row.words('flown');
  const same = Object.entries(sames).find(([word]) => word === plainWords(words ?? 'all'))?.[1];
  const flown = same === undefined ? namedFromCell(row.cell('flown')) : undefined;
  const devices = (row.words('devices') ?? '').split(/[,;\s]+/).filter((word) => word !== '');
  const known = devices.flatMap((word) => deviceNames.find((name) => name.toLowerCase() === word.toLowerCase()) ?? []);
  if (known.length < devices.length) throw row.refuse('devices', `some of ${deviceNames.join(', ')}`);
  return {
    same: same ?? 'all',
    ...(flown === undefined ? {} : { flown }),
    ...(row.is('tailwheel', tick, false) ? { tailwheel: true as const } : {}),
    devices: known,
  };
}

const isoOf = (row: Reader, column: 'from' | 'until'): string | undefined => {
  const words = row.words(column);
  if (words === undefined || /^\d{4}-\d{2}-\d{2}$/.test(words)) return words;
  throw row.refuse(column, 'a date such as 2026-11-30, as text');
};

export function rowOf(row: Reader): Row {
  const rule = namedFromCell(row.cell('rule'));
  if (rule === undefined) throw row.refuse('rule', 'a name in words');
  if (isBlank(row.cell('what'))) throw row.refuse('what', whatChoice.mustBe);
  const what = row.is('what', whatChoice, 'landings');
  const isCounted = what !== 'paper' && what !== 'medical';
  const needed = row.count('needed', 1000, !what.startsWith('hours'));
  if (isCounted && needed === undefined) throw row.refuse('needed', `how many ${what}`);
  if (!isCounted && needed !== undefined) throw row.refuse('needed', `blank for a ${what}`);
  const within = windowOf(row);
  if (within === undefined && what !== 'paper') throw row.refuse('within', 'a number of days or months, or a day');
  if (within !== undefined && !isCounted && !('months' in within || 'calendarMonths' in within))
    throw row.refuse('unit', `months or calendar months for a ${what}`);
  const [from, until] = [isoOf(row, 'from'), isoOf(row, 'until')];
  const reading = row.words('reading');
  const youngerThan = row.count('youngerThan', 150, true);
  return {
    rule,
    what,
    needed,
    within,
    common: {
      neededFor: row.is('neededFor', needChoice, 'every flight'),
      paragraph: row.words('setBy') ?? 'your own rule',
      ...(reading === undefined ? {} : { reading }),
      ...(from === undefined && until === undefined
        ? {}
        : { inForce: { ...(from !== undefined && { from }), ...(until !== undefined && { until }) } }),
      warnDays: row.count('warnDays', 3660, true) ?? 14,
    },
    counting: countingOf(row),
    task: { ...(row.is('night', tick, false) && { night: true as const }), ...(row.is('fullStop', tick, false) && { fullStop: true as const }) },
    medical: { medicalClass: row.words('medicalClass') ?? '', ...(youngerThan === undefined ? {} : { youngerThan }) },
  };
}
