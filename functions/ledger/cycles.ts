// Sheet functions of the calendar of data cycles: effective dates and AIRAC identifiers.
import { civilDateFromDayNumber, dayNumber, type CivilDate } from '../../core/basics/civilDate';
import {
  airacIdentifier,
  airacSeries,
  effectiveAfter,
  effectiveOfIdentifier,
  effectiveOnOrAfter,
  effectiveOnOrBefore,
  firstIdentifiedYear,
  identifierInSeries,
} from '../../core/ledger/cycles';
import { ArgumentError } from '../registry/argumentError';
import { inWords, type CellValue } from '../registry/cellValues';
import type { DateHost } from '../registry/dateHost';
import { laying, mapping, result, type Parameter } from '../registry/declaration';
import { optional } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { cycleSeries } from './readSeries';

const subject = 'Data cycles';
const sources = ['icao-annex-15', 'ais-airac-2020', 'faa-cut-off-dates', 'common-practice'] as const;
const seriesNotes =
  'The 28-day series is the AIRAC calendar. The 56-day series is the one of the US charts: every second AIRAC date, 10 August 2023 among them. The 14-day series (AIRAC dates and the days halfway between) is common practice, no source. An effective date is a civil date: AIRAC changes take effect at 0000 UTC, US products at 0901 UTC (from memory).';

const series = optional(cycleSeries('How often the data changes, and on which days.'), airacSeries, 'the 28-day AIRAC series');
const count = (help: string) => number({ unit: '', whole: true, minimum: 1, maximum: 1000, help });

const identifierWindow = `${firstIdentifiedYear} to ${firstIdentifiedYear + 99}`;

function identifiedDate(help: string): Parameter<CivilDate> & { readonly shape: 'cell' } {
  const base = date(help);
  const mustBe = `${base.mustBe}, in a cycle that began in ${identifierWindow}`;
  const read = (raw: CellValue, dates: DateHost): CivilDate => {
    const found = base.read(raw, dates);
    if (airacIdentifier(dayNumber(found)) === undefined) throw new ArgumentError(mustBe, inWords(raw));
    return found;
  };
  return { ...base, mustBe, optional: undefined, read };
}

/** A number has lost its leading zero. Below 101 it is more likely a cycle without its year, so it is refused. */
function identifier(help: string): Parameter<string> & { readonly shape: 'cell' } {
  const mustBe = 'four digits, year and cycle, such as "2601"';
  const read = (raw: CellValue): string => {
    const digits = typeof raw === 'number' && raw >= 101 ? String(raw).padStart(4, '0') : String(raw).trim();
    const accepted = typeof raw === 'number' || typeof raw === 'string';
    if (!accepted || !/^\d{4}$/.test(digits)) throw new ArgumentError(mustBe, inWords(raw));
    return digits;
  };
  return { shape: 'cell', unit: '', mustBe, help, optional: undefined, read };
}

export const CYCLE_NEXT = mapping({
  name: 'CYCLE_NEXT',
  subject,
  summary: 'The first date after a given one on which a series of data changes.',
  parameters: {
    date: date('The day to look forward from; a change on that day itself is not the next one.'),
    series,
    count: optional(count('Which one to give: 1 for the next, 2 for the one after it.'), 1, 'the next one'),
  },
  results: { effective: result('date', 'Effective date.') },
  sources,
  notes: seriesNotes,
  examples: [
    { arguments: ['2026-01-21'], gives: '2026-01-22', source: 'AIRAC date 28-day steps from 2 January 2020 (Polish AIS calendar), worked by hand' },
    { arguments: ['2024-12-26', '56-day'], gives: '2025-02-20', source: 'FAA Aeronautical Data Team, cut-off dates' },
    { arguments: ['2020-11-05', '28-day', 3], gives: '2021-01-28', source: 'Polish AIS, AIRAC dates 2020' },
  ],
  compute: (given) => ({ effective: civilDateFromDayNumber(effectiveAfter(dayNumber(given.date), given.series, given.count)) }),
});

export const CYCLE_CURRENT = mapping({
  name: 'CYCLE_CURRENT',
  subject,
  summary: 'The effective date of the data in force on a day.',
  parameters: { date: date('The day in question.'), series },
  results: { effective: result('date', 'Effective date, on or before the day.') },
  sources,
  notes: seriesNotes,
  examples: [
    { arguments: ['2020-12-30'], gives: '2020-12-03', source: 'Polish AIS, AIRAC dates 2020' },
    { arguments: ['2020-12-31'], gives: '2020-12-31', source: 'Polish AIS, AIRAC dates 2020' },
  ],
  compute: (given) => ({ effective: civilDateFromDayNumber(effectiveOnOrBefore(dayNumber(given.date), given.series)) }),
});

export const CYCLE_ID = mapping({
  name: 'CYCLE_ID',
  subject,
  summary: 'The four-digit AIRAC identifier of the cycle in force on a day.',
  parameters: { date: identifiedDate('The day in question.') },
  results: { id: result('', 'Year and number of the cycle, as text: "2601".') },
  sources: ['icao-annex-15', 'icao-8126', 'ais-airac-2020'],
  notes: `The cycle counts in the year in which it became effective, so the first days of January mostly belong to the year before. A year has 13 cycles, or 14 (1998, 2020, 2043). Two digits are read as ${identifierWindow}; a date outside those years has no identifier.`,
  examples: [
    { arguments: ['2020-12-31'], gives: '2014', source: 'Polish AIS, AIRAC dates 2020: the fourteenth of the year' },
    { arguments: ['2024-03-21'], gives: '2403', source: 'Airservices Australia AIS, cycle identifiers 2024' },
  ],
  compute: (given) => ({ id: airacIdentifier(dayNumber(given.date)) ?? '' }),
});

export const CYCLE_DATE = mapping({
  name: 'CYCLE_DATE',
  subject,
  summary: 'The effective date of the AIRAC cycle that a four-digit identifier names.',
  parameters: {
    id: identifier('Identifier such as 2601. A cell that turned it into a number is understood: 601 is "0601"; a number below 101 is refused.'),
  },
  results: { effective: result('date', 'Effective date of that cycle.') },
  sources: ['icao-annex-15', 'icao-8126', 'ais-airac-2020'],
  notes: `Two digits of the year are read as ${identifierWindow} (common practice, no source). A cycle that the year does not have is an error: most years have 13, and 1998, 2020 and 2043 have 14.`,
  examples: [
    { arguments: ['2014'], gives: '2020-12-31', source: 'Polish AIS, AIRAC dates 2020' },
    { arguments: [2406], gives: '2024-06-13', source: 'Airservices Australia AIS, cycle identifiers 2024' },
  ],
  compute: ({ id }) => ({ effective: civilDateFromDayNumber(effectiveOfIdentifier(id)) }),
});

export const CYCLE_LIST = laying({
  name: 'CYCLE_LIST',
  subject,
  summary: 'The coming effective dates of a series, with their AIRAC identifiers.',
  parameters: {
    from_date: date('The list begins with the first effective date on or after this day.'),
    count: count('How many dates to list.'),
    series,
  },
  results: {
    date: result('date', 'Effective date.'),
    id: result('', 'AIRAC identifier as text; blank where the date is no AIRAC date, or the series is your own.'),
  },
  sources,
  notes: seriesNotes,
  examples: [
    {
      arguments: ['2020-12-03', 3],
      gives: [
        ['2020-12-03', '2013'],
        ['2020-12-31', '2014'],
        ['2021-01-28', '2101'],
      ],
      source: 'Polish AIS, AIRAC dates 2020',
    },
    {
      arguments: ['2020-12-31', 2, '14-day'],
      gives: [
        ['2020-12-31', '2014'],
        ['2021-01-14', ''],
      ],
      source: 'AIRAC date from Polish AIS, then 14 days, by hand',
    },
  ],
  compute: (given) => {
    const first = effectiveOnOrAfter(dayNumber(given.from_date), given.series);
    return Array.from({ length: given.count }, (_, index) => {
      const day = first + index * given.series.days;
      return [civilDateFromDayNumber(day), identifierInSeries(day, given.series)];
    });
  },
});
