// The cycle functions at their own door: spellings, boundaries, the careful verdicts, and whole sentences.
import { describe, expect, it } from 'vitest';
import { answer, call, day, plain, sentenceOf } from '../../support/call';

const rowsOf = (value: unknown): unknown[][] => (value as unknown[][]).map((row) => row.map(plain));

describe('CYCLE_NEXT and CYCLE_CURRENT', () => {
  it('count strictly after, and on or before', () => {
    // AIRAC dates 3 and 31 December 2020 (Polish AIS calendar).
    expect(plain(call('CYCLE_NEXT', day('2020-12-31')))).toBe('2021-01-28');
    expect(plain(call('CYCLE_CURRENT', day('2020-12-31')))).toBe('2020-12-31');
    expect(plain(call('CYCLE_CURRENT', day('2020-12-30')))).toBe('2020-12-03');
  });

  it('work before the anchor and before 1970', () => {
    // 29 January 1998 is published; 28 days earlier by hand. 1 January 1976 is 8,036 days (287 x 28) earlier.
    expect(plain(call('CYCLE_CURRENT', day('1998-01-28')))).toBe('1998-01-01');
    expect(plain(call('CYCLE_NEXT', day('1975-12-31')))).toBe('1976-01-01');
    expect(plain(call('CYCLE_CURRENT', day('1955-06-30')))).toMatch(/^1955-06-\d\d$/);
  });

  it.each(['28-day', '28 day', '28 days', '28', 28, ' 28-Day ', '28d', '28\u2011day', undefined, ''])('reads %j as the AIRAC series', (series) => {
    expect(plain(call('CYCLE_NEXT', '2020-12-03', series))).toBe('2020-12-31');
  });

  it('knows the day count and the date of a series of one’s own', () => {
    expect(plain(call('CYCLE_NEXT', '2026-01-22', '28 from 2026-01-22'))).toBe('2026-02-19');
    expect(plain(call('CYCLE_NEXT', '2026-01-21', '28 days from 2026-01-22'))).toBe('2026-01-22');
    expect(plain(call('CYCLE_CURRENT', '2026-01-04', '7-day from 2026-01-01'))).toBe('2026-01-01');
  });

  it.each(['30-day', '0 from 2026-01-22', '28 from 2026-02-30', '367 from 2026-01-22', 'monthly', '28.5', 28.5, true])(
    'refuses the series %j',
    (series) => {
      expect(sentenceOf('CYCLE_NEXT', '2026-01-22', series)).toMatch(
        /^CYCLE_NEXT: series must be 28-day, 56-day, 14-day, or a number of days \(1 to 366\) from an effective date, such as "28 from 2026-01-22"; got .+\.$/,
      );
    },
  );

  it('map a column, each row for itself', () => {
    expect(rowsOf(call('CYCLE_NEXT', [[day('2020-12-03')], [''], ['soon']]))).toEqual([
      ['2020-12-31'],
      [''],
      ['CYCLE_NEXT: date must be a date from 1950 to 2100, such as 2026-01-22; got "soon" (row 3).'],
    ]);
  });
});

describe('CYCLE_ID and CYCLE_DATE', () => {
  it('give text, the leading zero kept', () => {
    expect(call('CYCLE_ID', day('2009-01-15'))).toBe('0901');
  });

  it('read an identifier that a cell turned into a number', () => {
    expect(plain(call('CYCLE_DATE', 2014))).toBe('2020-12-31');
    expect(plain(call('CYCLE_DATE', 901))).toBe(plain(call('CYCLE_DATE', '0901')));
  });

  it.each([1, 26, 100, 12.5, -601, 20260, '601', '26-01', 'AIRAC', true])('refuse %j', (id) => {
    expect(sentenceOf('CYCLE_DATE', id)).toMatch(/^CYCLE_DATE: id must be four digits, year and cycle, such as "2601"; got .+\.$/);
  });

  it('name the cycles that the year has', () => {
    expect(sentenceOf('CYCLE_DATE', '2614')).toBe('CYCLE_DATE: id must name a cycle of its year, which has 13; got "2614".');
    expect(sentenceOf('CYCLE_DATE', '2015')).toBe('CYCLE_DATE: id must name a cycle of its year, which has 14; got "2015".');
  });

  it('refuse a date whose two digits would name another century', () => {
    expect(sentenceOf('CYCLE_ID', '2070-01-01')).toBe(
      'CYCLE_ID: date must be a date from 1950 to 2100, such as 2026-01-22, in a cycle that began in 1964 to 2063; got "2070-01-01".',
    );
  });
});

describe('CYCLE_LIST', () => {
  it('begins on the day itself where that is an effective date', () => {
    expect(rowsOf(call('CYCLE_LIST', day('2024-10-31'), 2, '56-day'))).toEqual([
      ['2024-10-31', '2411'],
      ['2024-12-26', '2413'],
    ]);
    expect(rowsOf(call('CYCLE_LIST', day('2024-11-01'), 1, '56-day'))).toEqual([['2024-12-26', '2413']]);
  });

  it('leaves the identifier blank where there is none', () => {
    expect(rowsOf(call('CYCLE_LIST', '2021-01-14', 2, '14-day'))).toEqual([
      ['2021-01-14', ''],
      ['2021-01-28', '2101'],
    ]);
    expect(rowsOf(call('CYCLE_LIST', '2021-01-28', 1, '28 from 2021-01-28'))).toEqual([['2021-01-28', '']]);
  });
});

describe('CYCLE_STATUS', () => {
  const status = (...given: unknown[]) => answer('CYCLE_STATUS', ...given);

  it.each([
    ['2020-12-03', 'OK', 28],
    ['2020-12-25', 'OK', 6],
    ['2020-12-26', 'CHECK', 5],
    ['2020-12-30', 'CHECK', 1],
    ['2020-12-31', 'NO', 0],
    ['2021-01-15', 'NO', -15],
    ['2020-12-02', 'UNKNOWN', 29],
  ])('cycle of 3 December 2020 seen on %s: %s', (asOf, verdict, daysLeft) => {
    expect(status('2020-12-03', '28-day', asOf)).toEqual({ verdict, next_effective: '2020-12-31', days_left: daysLeft });
  });

  it('warns as many days ahead as asked', () => {
    expect(status('2020-12-03', '28-day', '2020-12-30', 0)['verdict']).toBe('OK');
    expect(status('2020-12-03', '28-day', '2020-12-03', 28)['verdict']).toBe('CHECK');
    expect(status('2020-12-03', '28-day', '2020-12-03', 27)['verdict']).toBe('OK');
  });

  it('never says OK of nothing recorded, nor of a date on which the series does not change', () => {
    const nothing = { verdict: 'UNKNOWN', next_effective: '', days_left: '' };
    expect(status('', '28-day', '2020-12-10')).toEqual(nothing);
    expect(status('2020-12-04', '28-day', '2020-12-10')).toEqual(nothing);
    // 3 December 2020 is an AIRAC date, but not one of the 56-day dates (5 November and 31 December are).
    expect(status('2020-12-03', '56-day', '2020-12-10')).toEqual(nothing);
  });

  it('keeps the rows of a ledger apart', () => {
    const loaded = [[day('2020-12-03')], [''], ['last week'], ['']];
    const series = [['28-day'], ['28-day'], ['28-day'], ['']];
    expect(rowsOf(call('CYCLE_STATUS', loaded, series, '2020-12-10'))).toEqual([
      ['OK', '2020-12-31', 21],
      ['UNKNOWN', '', ''],
      ['CYCLE_STATUS: loaded_effective must be a date from 1950 to 2100, such as 2026-01-22; got "last week" (row 3).', '', ''],
      ['', '', ''],
    ]);
  });
});

describe('CYCLE_COVERS', () => {
  const covers = (...given: unknown[]) => answer('CYCLE_COVERS', ...given);

  it.each([
    ['2020-12-03', '2020-12-03', 'OK'],
    ['2020-12-03', '2020-12-30', 'OK'],
    ['2020-12-03', '2020-12-31', 'NO'],
    ['2020-12-02', '2020-12-10', 'NO'],
    ['2020-12-31', '2021-01-02', 'NO'],
  ])('cycle of 3 December 2020 on a trip %s to %s: %s', (first, last, verdict) => {
    expect(covers('2020-12-03', '28-day', first, last)).toEqual({ verdict, lapses_on: '2020-12-31' });
  });

  it('is UNKNOWN where nothing is known of the card', () => {
    expect(covers('', '28-day', '2020-12-03', '2020-12-04')).toEqual({ verdict: 'UNKNOWN', lapses_on: '' });
    expect(covers('2020-12-04', '28-day', '2020-12-05', '2020-12-06')).toEqual({ verdict: 'UNKNOWN', lapses_on: '' });
  });

  it('refuses a trip that ends before it begins', () => {
    expect(sentenceOf('CYCLE_COVERS', '2020-12-03', '28-day', '2020-12-10', '2020-12-09')).toBe(
      'CYCLE_COVERS: last_day must be on or after first_day (2020-12-10); got 2020-12-09.',
    );
  });
});

describe('CYCLE_VISITS', () => {
  it('lists each day once, with every series that changes on it', () => {
    const series = [['14-day'], [''], ['28-day'], ['14 day'], ['10 from 2020-12-05']];
    // 3 and 31 December 2020 are AIRAC dates (Polish AIS calendar), 17 December lies halfway.
    expect(rowsOf(call('CYCLE_VISITS', series, '2020-12-03', 1))).toEqual([
      ['2020-12-03', '14-day, 28-day'],
      ['2020-12-05', '10 from 2020-12-05'],
      ['2020-12-15', '10 from 2020-12-05'],
      ['2020-12-17', '14-day'],
      ['2020-12-25', '10 from 2020-12-05'],
      ['2020-12-31', '14-day, 28-day'],
    ]);
  });

  it('looks ahead to the day before the same day of the last month, so that two spans never share a day', () => {
    expect(rowsOf(call('CYCLE_VISITS', '56-day', '2024-10-31', 6))).toEqual([
      ['2024-10-31', '56-day'],
      ['2024-12-26', '56-day'],
      ['2025-02-20', '56-day'],
      ['2025-04-17', '56-day'],
    ]);
    expect(rowsOf(call('CYCLE_VISITS', '28-day from 2024-10-01', '2024-10-29', 12)).at(-1)).toEqual(['2025-10-28', '28 from 2024-10-01']);
    expect(rowsOf(call('CYCLE_VISITS', '1 from 2024-10-01', '2024-10-01', 1)).at(-1)).toEqual(['2024-10-31', '1 from 2024-10-01']);
  });

  it('says where nothing changes, and refuses where no series is given', () => {
    expect(call('CYCLE_VISITS', '56-day', '2024-11-01', 1)).toEqual([['', 'nothing changes in these months']]);
    expect(sentenceOf('CYCLE_VISITS', [[''], ['']], '2024-11-01', 1)).toBe('CYCLE_VISITS: series_list must have at least one filled row; got none.');
    expect(sentenceOf('CYCLE_VISITS', [['28-day'], ['weekly']], '2024-11-01', 1)).toMatch(/; got "weekly" \(row 2\)\.$/);
  });
});

describe('CYCLE_MISMATCH', () => {
  it('compares only cards of one database in one aircraft, beside their rows', () => {
    const ledger = [
      ['Craft One', 'Navigation', day('2020-12-03')],
      ['Craft One', 'Obstacles', day('2020-12-31')],
      ['', '', ''],
      ['craft  one', 'navigation ', day('2020-12-31')],
      ['Craft Two', 'Navigation', day('2020-12-31')],
      ['Craft Two', 'Navigation', day('2020-12-31')],
      ['Craft Three', 'Navigation', ''],
      ['Craft Three', 'Navigation', day('2020-12-31')],
      ['Craft Two', '', day('2020-12-31')],
      ['Craft Four', 'Navigation', 'new'],
      ['', '', ''],
    ];
    const part = (index: number) => ledger.map((row) => [row[index]]);
    expect(call('CYCLE_MISMATCH', part(0), part(1), part(2))).toEqual([
      ['NO'],
      ['OK'],
      [''],
      ['NO'],
      ['OK'],
      ['OK'],
      ['UNKNOWN'],
      ['UNKNOWN'],
      ['UNKNOWN'],
      ['UNKNOWN'],
      [''],
    ]);
  });

  it('says NO of two dates that differ even where a third is missing', () => {
    expect(call('CYCLE_MISMATCH', 'A', 'Navigation', [['2020-12-03'], ['2020-12-31']])).toEqual([['NO'], ['NO']]);
    const three = (...loaded: string[]) =>
      call(
        'CYCLE_MISMATCH',
        [['A'], ['A'], ['A']],
        [['N'], ['N'], ['N']],
        loaded.map((date) => [date]),
      );
    expect(three('2020-12-03', '', '2020-12-31')).toEqual([['NO'], ['NO'], ['NO']]);
    expect(three('2020-12-03', '', '2020-12-03')).toEqual([['UNKNOWN'], ['UNKNOWN'], ['UNKNOWN']]);
  });
});
