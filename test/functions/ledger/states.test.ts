// The ledger at its own door: verdicts with their reasons, a bad cell that spoils only its card, and the moment of a change
// as spreadsheets in zones on both sides of the date line show it (the script's zone is another than theirs).
import { afterEach, describe, expect, it } from 'vitest';
import { googleDateHost } from '../../../addon/google/dateHost';
import { evaluate } from '../../../functions/registry/evaluate';
import type { FunctionName } from '../../../functions/registry/names.generated';
import { wallClockIn } from '../../google/double/zoneClock';
import { withDouble, withoutPlatform } from '../../google/support';
import { call, declarationOf, plain } from '../../support/call';

type Row = readonly unknown[];
const columns = (rows: readonly Row[], count: number): unknown[][][] =>
  Array.from({ length: count }, (_, column) => rows.map((row) => [row[column] ?? '']));

/** Rows of aircraft, database, series, loaded, verified. */
const status = (asOf: unknown, rows: readonly Row[], licences: unknown = '', ...more: readonly unknown[]): unknown[][] =>
  call('LEDGER_STATUS', ...columns(rows, 5), asOf, licences, ...more) as unknown[][];
const first = (asOf: unknown, row: Row, licences?: unknown, ...more: readonly unknown[]): unknown[] =>
  (status(asOf, [row], licences, ...more)[0] ?? []).map(plain);

// 31 October, 28 November and 26 December 2024 are AIRAC dates 2411, 2412, 2413 (Airservices Australia, cycle identifiers 2024).
const good: Row = ['North', 'navigation', '28-day', '2024-10-31', '2024-10-24'];
const but = (changes: Readonly<Record<number, unknown>>): Row => good.map((cell, index) => (index in changes ? changes[index] : cell));

describe('LEDGER_STATUS', () => {
  it('counts down to the change', () => {
    expect(first('2024-10-31', good)).toEqual(['OK', 28, '2024-11-28', 'in force']);
    expect(first('2024-11-22', good)).toEqual(['OK', 6, '2024-11-28', 'in force']);
    expect(first('2024-11-23', good)).toEqual(['CHECK', 5, '2024-11-28', 'lapses soon']);
    expect(first('2024-11-27', good)).toEqual(['CHECK', 1, '2024-11-28', 'lapses soon']);
    expect(first('2024-11-28', good)).toEqual(['NO', 0, '2024-11-28', 'out of date']);
    expect(first('2024-11-23', good, '', 3)).toEqual(['OK', 5, '2024-11-28', 'in force']);
  });

  it('never takes a card loaded ahead, mistyped or missing for good', () => {
    expect(first('2024-10-30', good)).toEqual(['UNKNOWN', 29, '2024-11-28', 'loaded ahead, in force from 2024-10-31 00:00']);
    expect(first('2024-11-11', but({ 3: '2024-10-30' }))).toEqual(['UNKNOWN', '', '', 'no date of this series: look at the card']);
    expect(first('2024-11-11', but({ 3: '' }))).toEqual(['UNKNOWN', '', '', 'effective date missing or not a date']);
    expect(first('2024-11-11', but({ 2: 'monthly' }))).toEqual(['UNKNOWN', '', '', 'series missing or not one that can be read']);
    expect(first('2024-11-11', but({ 0: '' }))).toEqual([
      'UNKNOWN',
      17,
      '2024-11-28',
      'cannot be compared: aircraft, database or another date missing',
    ]);
    expect(first('2024-11-11', good, '', 5, 'noon')).toEqual(['UNKNOWN', '', '', 'time of the change cannot be read']);
  });

  it.each(['', 'no', false, 'perhaps', '#N/A'])('takes %j for not verified', (verified) => {
    expect(first('2024-11-11', but({ 4: verified }))).toEqual(['CHECK', 17, '2024-11-28', 'not verified']);
  });

  /** The last columns: loaded on, and none of headings. */
  const loaded = (asOf: string, row: Row, loadedOn: unknown): unknown[] => first(asOf, row, '', 5, '0000Z', [[loadedOn]]);

  it('takes the word of the last load for none of this one', () => {
    expect(loaded('2024-11-11', good, '2024-10-24')).toEqual(['OK', 17, '2024-11-28', 'in force']);
    expect(loaded('2024-11-11', good, '2024-10-25')).toEqual(['CHECK', 17, '2024-11-28', 'verified on 2024-10-24, before this load']);
    expect(first('2024-11-11', but({ 4: '2024-10-02' }))).toEqual(['CHECK', 17, '2024-11-28', 'verified on 2024-10-02, before this load']);
    expect(loaded('2024-11-11', but({ 4: '2024-11-12' }), '2024-10-24')[3]).toBe('verified on 2024-11-12, a day still to come');
    for (const yes of ['yes', true, 'Yes'])
      expect(loaded('2024-11-11', but({ 4: yes }), '2024-10-24')).toEqual(['CHECK', 17, '2024-11-28', 'verified, but the day is not written down']);
  });

  it('refuses a day of loading that is missing, still to come or of another load', () => {
    expect(loaded('2024-11-11', good, '')).toEqual([
      'CHECK',
      17,
      '2024-11-28',
      'day of loading missing or not a date, so nothing shows that this load was verified',
    ]);
    expect(loaded('2024-11-11', good, '2031-01-01').slice(0, 1)).toEqual(['UNKNOWN']);
    expect(loaded('2024-11-11', good, '2031-01-01')[3]).toBe('loaded on 2031-01-01, a day still to come; verified on 2024-10-24, before this load');
    // Only the effective date typed over: the day of loading is still that of the cycle before.
    expect(loaded('2024-11-30', but({ 3: '2024-11-28' }), '2024-10-24')).toEqual([
      'CHECK',
      26,
      '2024-12-26',
      'loaded on 2024-10-24, before this data can have been given out: the day of another load',
    ]);
  });

  it('begins with headings where it is given words for them, and leaves the first row of the columns out', () => {
    const heads: Row = ['aircraft', 'database', 'series', 'data effective', 'verified'];
    const words = 'verdict; left; until; why';
    expect(
      status('2024-11-11', [heads, good, []], '', 5, '0000Z', [['loaded on'], ['2024-10-24'], ['']], words).map((row) => row.map(plain)),
    ).toEqual([
      ['verdict', 'left', 'until', 'why'],
      ['OK', 17, '2024-11-28', 'in force'],
      ['', '', '', ''],
    ]);
    expect(() => status('2024-11-11', [heads, good], '', 5, '0000Z', '', 'verdict; left')).toThrow(
      'LEDGER_STATUS: headings must be 4 words with semicolons between, one for each column; got 2.',
    );
  });

  it('speaks of the licence of the same database in the same aircraft or in all', () => {
    const licence = (aircraft: string, end: string) => [
      [aircraft, 'Navigation', end, 12, 300, 'EUR', 'equal'],
      ['', '', '', '', '', '', ''],
    ];
    expect(first('2024-11-11', good, licence('north', '2024-11-10'))).toEqual(['CHECK', 17, '2024-11-28', 'licence ended 2024-11-10']);
    expect(first('2024-11-11', good, licence('all', '2024-12-11'))).toEqual(['CHECK', 17, '2024-11-28', 'licence ends 2024-12-11']);
    expect(first('2024-11-11', good, licence('all', '2024-12-12'))).toEqual(['OK', 17, '2024-11-28', 'in force']);
    expect(first('2024-11-11', good, licence('all', ''))).toEqual(['CHECK', 17, '2024-11-28', 'licence end not written down, or not a date']);
    expect(first('2024-11-11', good, licence('South', '2024-01-01'))).toEqual(['OK', 17, '2024-11-28', 'in force']);
  });

  it('lets a slip in a licence spoil that licence alone', () => {
    const slips: Row[] = [
      ['aircraft', 'database', 'licence end', 'months', 'cost', 'currency', 'shared by'],
      ['North', 'navigation', '2025-06-30', 'once', 'n/a', '\u20ac', 'equal'],
    ];
    expect(first('2024-11-11', good, slips)).toEqual(['OK', 17, '2024-11-28', 'in force']);
    expect(first('2024-11-11', good, [['all', 'navigation', 'lifetime']])).toEqual([
      'CHECK',
      17,
      '2024-11-28',
      'licence end not written down, or not a date',
    ]);
    expect(first('2024-11-11', good, [['', 'navigation', '2024-01-01']])).toEqual(['OK', 17, '2024-11-28', 'in force']);
  });

  it('sets cards of one aircraft against each other, and keeps rows apart', () => {
    const other = but({ 3: '2024-10-03' });
    expect(status('2024-11-11', [good, [], other, but({ 0: 'South' })]).map((row) => [row[0], row[3]])).toEqual([
      ['NO', 'differs from another card of this database'],
      ['', ''],
      ['NO', 'out of date; differs from another card of this database'],
      ['OK', 'in force'],
    ]);
    expect(status('2024-11-11', [good, but({ 3: '' })]).map((row) => row[0])).toEqual(['UNKNOWN', 'UNKNOWN']);
  });

  it('answers 500 cards in one call', () => {
    const rows = Array.from({ length: 500 }, (_, index) => but({ 0: `aircraft ${index}`, 3: index % 2 === 0 ? '2024-10-31' : '2024-10-03' }));
    const verdicts = status('2024-11-11', rows).map((row) => row[0]);
    expect(verdicts.filter((word) => word === 'OK').length).toBe(250);
    expect(verdicts.filter((word) => word === 'NO').length).toBe(250);
  });
});

afterEach(withoutPlatform);

/** The same call in a spreadsheet of a zone, as the platform makes it; moments as that spreadsheet shows them. */
function inZone(zone: string, name: FunctionName, ...given: readonly unknown[]): unknown[][] {
  withDouble(zone);
  const cells = evaluate(declarationOf(name), given, googleDateHost()) as unknown[][];
  return cells.map((row) => row.map((cell) => (cell instanceof Date ? wallClockIn(zone, cell.getTime()).slice(0, 16) : cell)));
}

describe('the moment of a change in the zone of the spreadsheet', () => {
  const card = columns([good], 5);
  // 28 November 2024, 0000Z and 0901Z, by hand: UTC-10 all year; UTC-8 in winter; UTC+13 in southern summer; UTC+14.
  it.each([
    ['Pacific/Honolulu', '0000Z', '2024-11-27 14:00'],
    ['America/Los_Angeles', '0000Z', '2024-11-27 16:00'],
    ['America/Los_Angeles', '0901Z', '2024-11-28 01:01'],
    ['Pacific/Pago_Pago', '0901Z', '2024-11-27 22:01'],
    ['Europe/London', '0000Z', '2024-11-28 00:00'],
    ['Asia/Kathmandu', '0901Z', '2024-11-28 14:46'],
    ['Pacific/Auckland', '0901Z', '2024-11-28 22:01'],
    ['Pacific/Kiritimati', '0000Z', '2024-11-28 14:00'],
    ['Pacific/Kiritimati', '0901Z', '2024-11-28 23:01'],
  ])('%s, %s: %s', (zone, time, shown) => {
    const [day = '', clock = ''] = shown.split(' ');
    const on = (asOf: string): unknown[] => inZone(zone, 'LEDGER_STATUS', ...card, asOf, '', 0, time)[0] ?? [];
    const next = (iso: string, days: number): string => new Date(Date.parse(iso) + days * 86_400_000).toISOString().slice(0, 10);
    expect(on(next(day, -1))).toEqual(['OK', 1, shown, 'in force']);
    expect(on(next(day, 1))).toEqual(['NO', -1, shown, 'out of date']);
    if (clock === '00:00') expect(on(day)).toEqual(['NO', 0, shown, 'out of date']);
    else expect(on(day)).toEqual(['CHECK', 0, shown, `out of date from ${clock} on this day`]);
    const loads = inZone(zone, 'LEDGER_DIARY', [['North']], [['navigation']], [['28-day']], '2024-11-11', 1, '', time);
    // What the diary gives as a date is midnight in the zone, so it is the effective date itself.
    expect(loads).toEqual([['load', shown, '2024-11-28 00:00', time, '', '', '28-day, cycle 2412: navigation (North)']]);
  });

  it('reads a date cell, which is midnight there, as the day it shows', () => {
    const asOf = new Date('2024-11-27T10:00:00Z');
    expect(inZone('Pacific/Honolulu', 'LEDGER_STATUS', ...card, asOf, '', 0)[0]?.[0]).toBe('CHECK');
    expect(inZone('Pacific/Honolulu', 'LEDGER_FLEET', [['North']], [['28-day']], [['2024-10-31']], asOf)).toEqual([
      ['aircraft', 'all', '28-day'],
      ['North', 'CHECK', 'CHECK'],
    ]);
  });

  it('begins late on the day of the change where the sun rose long ago', () => {
    expect(inZone('Pacific/Auckland', 'LEDGER_STATUS', ...card, '2024-10-31', '', 0, '0901Z')[0]).toEqual([
      'CHECK',
      28,
      '2024-11-28 22:01',
      'in force only from 22:01 on this day',
    ]);
    expect(inZone('Pacific/Auckland', 'LEDGER_STATUS', ...card, '2024-11-01', '', 0, '0901Z')[0]?.[0]).toBe('OK');
  });
});

describe('LEDGER_FLEET', () => {
  const cards: readonly Row[] = [
    ['North', '28-day', '2024-10-31'],
    ['North', '56-day', '2024-10-31'],
    ['South', '28-day', '2024-10-03'],
    ['South', '14-day', ''],
    ['', '28-day', '2024-10-31'],
    ['West', 'sometimes', '2024-10-31'],
  ];
  it('holds the worst of the cards in each field, and loses none', () => {
    expect(call('LEDGER_FLEET', ...columns(cards, 3), '2024-11-11')).toEqual([
      ['aircraft', 'all', '14-day', '28-day', '56-day'],
      ['North', 'OK', '', 'OK', 'OK'],
      ['South', 'NO', 'UNKNOWN', 'NO', ''],
      ['no aircraft', 'OK', '', 'OK', ''],
      ['West', 'UNKNOWN', '', '', ''],
    ]);
  });

  it('asks that a card lasts to the end of the last day', () => {
    const on = (last: string): unknown =>
      (call('LEDGER_FLEET', [['North']], [['28-day']], [['2024-10-31']], '2024-11-20', last) as unknown[][])[1]?.[1];
    expect(on('2024-11-27')).toBe('OK');
    expect(on('2024-11-28')).toBe('NO');
    expect(() => on('2024-11-19')).toThrow('LEDGER_FLEET: last_day must be on or after first_day (2024-11-20); got 2024-11-19.');
  });
});

describe('LEDGER_DIARY', () => {
  const rowsOf = (...given: readonly unknown[]): unknown[][] => (call('LEDGER_DIARY', ...given) as unknown[][]).map((row) => row.map(plain));
  it('lists the changes of a year, by moment, with every licence at each of its terms', () => {
    const list = rowsOf(
      [['North'], ['North'], ['South']],
      [['navigation'], ['obstacles'], ['charts']],
      [['28-day'], ['56-day'], ['56-day']],
      '2024-10-31',
      12,
      [
        ['North', 'navigation', '2024-12-31', 6, 150, 'EUR'],
        ['all', 'charts', '2024-09-30', '', '', ''],
      ],
      [['0901Z'], ['0901Z'], ['0000Z']],
    );
    // 56-day dates of 2024 and 2025 from the FAA cut-off dates; 13 AIRAC dates from 31 October 2024 to before 31 October 2025.
    expect(list[0]).toEqual(['renew', '', '2024-09-30', '', '', '', 'charts (all), licence has ended, cost not written down']);
    expect(list.filter((row) => row[3] === '0901Z').length).toBe(14);
    expect(list.filter((row) => row[3] === '0000Z').map((row) => row[2])).toEqual([
      '2024-10-31',
      '2024-12-26',
      '2025-02-20',
      '2025-04-17',
      '2025-06-12',
      '2025-08-07',
      '2025-10-02',
    ]);
    expect(list.find((row) => row[2] === '2024-12-26' && row[3] === '0901Z')?.[6]).toBe(
      '28-day, cycle 2413: navigation (North); 56-day, cycle 2413: obstacles (North)',
    );
    expect(list.filter((row) => row[0] === 'renew').map((row) => [row[2], row[4], row[5]])).toEqual([
      ['2024-09-30', '', ''],
      ['2024-12-31', 150, 'EUR'],
      ['2025-06-30', 150, 'EUR'],
    ]);
    const days = list.map((row) => String(row[2]));
    expect(days).toEqual([...days].sort());
  });

  it('says what it cannot list', () => {
    expect(
      rowsOf([['North'], [''], ['South']], [['navigation'], [''], ['charts']], [['28-day'], [''], ['now and then']], '2024-11-11', 1, [
        ['all', 'charts', '', '', '', ''],
        ['', '', '', '', '', ''],
        ['South', 'charts', 'lifetime', 'once', 'n/a', '\u20ac'],
      ]),
    ).toEqual([
      ['look', '', '', '', '', '', '1 card without a readable aircraft, database, series or time not in this list (row 3 of the list)'],
      [
        'look',
        '',
        '',
        '',
        '',
        '',
        'licence in row 3 of the list: licence end must be a date, or no end; got "lifetime"; months must be a whole number from 1 to 600; got "once"; cost must be a number; got "n/a"; currency must be three letters, such as EUR; got "\u20ac"',
      ],
      ['look', '', '', '', '', '', '2 licences without an end not in this list'],
      ['load', '2024-11-28', '2024-11-28', '0000Z', '', '', '28-day, cycle 2412: navigation (North)'],
    ]);
    expect(rowsOf([['North']], [['charts']], [['366 from 2024-01-01']], '2024-03-01', 1)).toEqual([
      ['', '', '', '', '', '', 'nothing comes up in these months'],
    ]);
  });
});
