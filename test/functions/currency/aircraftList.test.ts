// AIRCRAFT_STATUS at its own door: bad cells, what is missing, rows of one's own.
import { describe, expect, it } from 'vitest';
import { call, plain } from '../../support/call';

const fleetHeads = ['aircraft', 'category', 'class', 'type rating', 'tailwheel', 'device', 'hours now'];
const fleet = [fleetHeads, ['North', 'airplane', 'single-engine land', '', '', '', 1200]];
const itemHeads = ['aircraft', 'item', 'done on', 'done at hours', 'was due at hours', 'every months', 'every days', 'every hours'];

describe('AIRCRAFT_STATUS', () => {
  const standing = (items: readonly (readonly unknown[])[], aircraft: unknown = fleet): unknown[][] => {
    const padded = items.map((row) => [...row, ...Array<string>(8 - row.length).fill('')]);
    return (call('AIRCRAFT_STATUS', [itemHeads, ...padded], aircraft, '2026-11-25') as unknown[][]).map((row) => row.map(plain));
  };
  it('spoils only the row of a bad cell, and keeps the rows beside their items', () => {
    expect(
      standing([
        ['North', 'annual inspection', 'last spring'],
        [],
        ['', 'transponder', '2026-01-05'],
        ['North', 'transponder', '2026-01-05', '', '', 0.5],
        ['North', 'transponder', '2026-01-05'],
      ]).map((row) => [row[0], row[4]]),
    ).toEqual([
      ['UNKNOWN', 'done on cannot be read: "last spring"'],
      ['', ''],
      ['UNKNOWN', 'aircraft missing'],
      ['UNKNOWN', 'every months cannot be read: 0.5'],
      ['OK', '14 CFR 91.413(a)'],
    ]);
  });

  it('says what is missing', () => {
    const reasons = standing([
      ['North', 'annual inspection', ''],
      ['North', '100 h', '', ''],
      ['South', '100 h', '', 50],
      ['North', '100 h', '', 1300],
      ['North', 'annual inspection', '2026-12-01'],
      ['North', 'lifejackets', ''],
    ]);
    expect(reasons.map((row) => [row[0], String(row[4]).split(';')[0]])).toEqual([
      ['UNKNOWN', 'no date written down'],
      ['UNKNOWN', 'no hours written down at which it was done'],
      ['UNKNOWN', 'no hours now of this aircraft'],
      ['UNKNOWN', 'hours now are fewer than when it was done'],
      ['UNKNOWN', 'done on a day still to come'],
      ['UNKNOWN', 'no date written down'],
    ]);
  });

  it('takes the earlier end of the rule and of an interval of one’s own, and the worse of days and hours', () => {
    expect(standing([['North', 'annual inspection', '2026-06-10', '', '', 6]])[0]?.slice(0, 3)).toEqual(['CHECK', '2026-12-10', 15]);
    expect(standing([['North', 'oil change', '2026-06-10', 1160, '', 12, '', 50]])[0]).toEqual([
      'CHECK',
      '2027-06-10',
      197,
      10,
      '40 of 50 h; your own item',
    ]);
    expect(standing([['North', 'oil change', '2026-06-10', 1149, '', 12, '', 50]])[0]?.[0]).toBe('NO');
    expect(standing([['North', 'propeller', '2026-11-20', '', '', '', '']])[0]).toEqual([
      'NO',
      '2026-11-20',
      -5,
      '',
      'your own item, its date taken as the last good day',
    ]);
    expect(standing([['North', 'float plan', '2026-11-20', '', '', '', 10]])[0]).toEqual(['CHECK', '2026-11-29', 4, '', 'your own item']);
  });
});
