// What a log comes to: each way of grouping, what is not in the log or in the list of aircraft, devices apart, and the sum of the groups.
import { describe, expect, it } from 'vitest';
import { call, plain, sentenceOf } from '../../support/call';
import { randomFrom } from '../../support/seededRandom';

const fleet = [
  ['aircraft', 'category', 'class', 'type rating', 'device'],
  ['North', 'airplane', 'SEL', '', ''],
  ['South', 'airplane', 'MEL', 'ST-2', ''],
  ['Sail', 'glider', '', '', ''],
  ['Box', 'airplane', 'SEL', '', 'FTD'],
];
const log = [
  ['date', 'aircraft', 'hours', 'PIC', 'night hours', 'day landings', 'night landings', 'approaches'],
  ['2024-12-31', 'North', '1:30', 1.5, '', 1, '', ''],
  ['2025-01-01', 'South', 2, '', 1, '', 1, 2],
  ['2025-05-05', 'sail', 0.7, 0.7, '', 1, '', ''],
  ['2025-05-06', 'Box', 1, '', '', '', '', 3],
  ['2026-02-02', 'Rented', 0.1, 0.1, '', 1, '', ''],
];
const rows = (...given: readonly unknown[]): unknown[][] => (call('LOG_TOTALS', log, fleet, ...given) as unknown[][]).map((row) => row.map(plain));

describe('LOG_TOTALS', () => {
  it('has a row for each class, what the list does not say, the sum, and devices apart', () =>
    expect(rows('2026-11-25')).toEqual([
      ['MEL', 1, 2, 0, '', 1, '', 1, 1, 2],
      ['no class in the list', 1, 0.7, 0.7, '', 0, '', 1, 0, 0],
      ['not in the list of aircraft', 1, 0.1, 0.1, '', 0, '', 1, 0, 0],
      ['SEL', 1, 1.5, 1.5, '', 0, '', 1, 0, 0],
      ['all', 4, 4.3, 2.3, '', 1, '', 4, 1, 2],
      ['training device', 1, 1, 0, '', 0, '', 0, 0, 3],
    ]));

  it.each([
    ['all', ['all', 'training device']],
    ['year', ['2024', '2025', '2026', 'all', 'training device']],
    ['category', ['airplane', 'glider', 'not in the list of aircraft', 'all', 'training device']],
    ['type', ['no type rating in the list', 'not in the list of aircraft', 'ST-2', 'all', 'training device']],
    ['aircraft', ['North', 'Rented', 'sail', 'South', 'all', 'training device']],
  ])('by %s', (by, groups) => expect(rows('2026-11-25', by).map(([group]) => group)).toEqual(groups));

  it('counts from the first to the last day, both included', () => {
    expect(rows('2025-05-05', 'all', '2025-01-01')).toEqual([['all', 2, 2.7, 0.7, '', 1, '', 2, 1, 2]]);
    expect(rows('2024-12-30', 'all')).toEqual([['all', 0, 0, 0, '', 0, '', 0, 0, 0]]);
  });

  it('leaves blank what the log has no column for', () =>
    expect(
      (
        call(
          'LOG_TOTALS',
          [
            ['date', 'aircraft'],
            ['2025-01-01', 'North'],
          ],
          fleet,
          '2026-11-25',
          'all',
        ) as unknown[][]
      )[0],
    ).toEqual([...['all', 1, '', '', '', '', '', '', '', '']]));

  it('says what is wrong', () => {
    expect(sentenceOf('LOG_TOTALS', log, fleet, '2026-11-25', 'colour')).toContain('by must be');
    expect(sentenceOf('LOG_TOTALS', [['day of the week', 'aircraft']], fleet, '2026-11-25')).toContain('log must be');
  });

  it('comes to the same however it is grouped, to the hundredth, over 200 random logs', () => {
    const random = randomFrom(17);
    const names = ['North', 'South', 'Sail', 'Other'];
    for (let run = 0; run < 200; run += 1) {
      const flights = Array.from({ length: 1 + Math.floor(random() * 60) }, () => {
        const year = 2020 + Math.floor(random() * 7);
        return [
          `${year}-0${1 + Math.floor(random() * 9)}-15`,
          names[Math.floor(random() * 4)] ?? '',
          Math.floor(random() * 90) / 10,
          Math.floor(random() * 4),
        ];
      });
      // Tenths as whole numbers: no sum of decimals in the count that this is held against.
      const tenths = flights.reduce((sum, [, , hours]) => sum + Math.round(Number(hours) * 10), 0);
      const table = [['date', 'aircraft', 'hours', 'day landings'], ...flights];
      for (const by of ['year', 'class', 'aircraft', 'category']) {
        const answer = (call('LOG_TOTALS', table, fleet, '2030-01-01', by) as unknown[][]).map((row) => row.map(plain));
        const sum = (column: number): number => answer.slice(0, -1).reduce((all, row) => all + Math.round(Number(row[column]) * 10), 0);
        expect([sum(2), Math.round(Number(answer.at(-1)?.[2]) * 1e6), sum(1) / 10]).toEqual([tenths, tenths * 1e5, flights.length]);
      }
    }
  });
});
