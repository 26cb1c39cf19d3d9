// Night by each definition, from times and places. At 51.5074 N 0.1278 W on 21 June 2025 the Sun sets at 2022 UTC (US Naval Observatory) and civil
// twilight ends at 2109 (from memory): a landing at 2115 is by night for Part-FCL and 14 CFR 1.1, not yet for 61.57(b), which begins at 2122.
import { describe, expect, it } from 'vitest';
import { call, plain, sentenceOf } from '../../support/call';

const fleet = [
  ['aircraft', 'category', 'class'],
  ['North', 'airplane', 'SEL'],
];
const places = [
  ['field', 'latitude', 'longitude'],
  ['Marrowfield', 51.5074, -0.1278],
  ['Tansy Ridge', 51.5074, -0.1278],
];
const heads = [
  'date',
  'aircraft',
  'day landings',
  'day full stop',
  'night landings',
  'night full stop',
  'from',
  'to',
  'take-off, UTC',
  'landing, UTC',
];
type Cells = readonly unknown[];
const flown = (landings: Cells, times: Cells, ends: Cells = ['Marrowfield', 'Tansy Ridge']): Cells => [
  '2025-06-21',
  'North',
  ...landings,
  ...ends,
  ...times,
];
const lists = (rows: readonly Cells[], where: unknown = places): unknown[][] =>
  (call('PILOT_STATUS', [heads, ...rows], fleet, [['', '', '']], '2025-06-30', 'FAA and EASA', '', '', '', where) as unknown[][]).map((row) =>
    row.map(plain),
  );
/** What counts with passengers at night, for each authority: the fewer of landings and take-offs. */
function atNight(rows: readonly Cells[], where: unknown = places): unknown[] {
  return lists(rows, where)
    .filter(([item]) => item === 'passengers at night, SEL')
    .map(([, counted]) => counted);
}
const said = (rows: readonly Cells[], where: unknown = places): unknown[][] =>
  lists(rows, where)
    .filter(([item]) => String(item).startsWith('night from the times'))
    .map(([item, , , verdict, , , why]) => [item, verdict, why]);
const [day, night] = [
  [1, 1, '', ''],
  ['', '', 1, 1],
];

describe('night from the times of a log', () => {
  it.each<[string, Cells, Cells, unknown[]]>([
    ['a landing between both', day, ['2112', '2115'], [0, 1]],
    ['the same, written as night', night, ['2112', '2115'], [0, 1]],
    ['after the beginning of both', night, ['2130', '2215'], [1, 1]],
    ['take-off by day, landing by night: no take-off at night', night, ['1930', '2215'], [0, 0]],
    ['past midnight', night, ['23:10', '00:20'], [1, 1]],
    ['by day', day, ['0900', '1000'], [0, 0]],
    ['several landings, all of it by night', ['', '', 3, 3], ['2230', '2345'], [3, 3]],
    ['several landings between both', [3, 3, '', ''], ['2111', '2119'], [0, 3]],
  ])('%s', (_, landings, times, counted) => {
    expect(atNight([flown(landings, times)])).toEqual(counted);
    expect(said([flown(landings, times)])).toEqual([]);
  });

  it('leaves landings from day into night as they were written', () => {
    const circuits = [flown([1, 1, 2, 2], ['2000', '2230'])];
    // By whichever definition: nobody can tell which of the three they were.
    expect(atNight(circuits)).toEqual([2, 2]);
  });

  it('counts full stops by night only where they must have been', () => {
    // Three landings by night, two of them to a full stop.
    expect(atNight([flown(['', '', 3, 2], ['2230', '2345'])])).toEqual([2, 3]);
  });

  it('counts the fewer, and says so, where the log goes against the Sun', () => {
    const slips = [flown(night, ['0900', '1000']), flown(day, ['2230', '2345'])];
    expect(atNight(slips)).toEqual([0, 0]);
    expect(said(slips)).toEqual([
      ['night from the times, 2025-06-21 North, 2025-06-21 North', 'CHECK', 'the landings by night do not go with the times: the fewer count'],
    ]);
  });

  it('leaves a flight to an unknown place as it was written, and names the place', () => {
    const away = [flown(night, ['2230', '2345'], ['Marrowfield', 'Nowhere']), flown(night, ['2230', '2345'])];
    expect(atNight(away)).toEqual([2, 2]);
    expect(said(away)).toEqual([
      ['night from the times, Nowhere', 'CHECK', 'no position of these places is listed, so night is as written in the log'],
    ]);
    expect(said([flown(night, ['2230', '2345'], ['Marrowfield', ''])])[0]?.[0]).toBe('night from the times, no place named');
    // A name with two positions is no place.
    expect(said([flown(night, ['2230', '2345'])], [...places, ['Marrowfield', 10, 10]])).toHaveLength(1);
  });

  it('does nothing without a list of places', () => expect(atNight([flown(night, ['0900', '1000'])], '')).toEqual([1, 1]));

  it('tells day from night where the log has landings in one column, if it can for each of them', () => {
    const one = ['date', 'aircraft', 'landings', 'full stop', 'from', 'to', 'take-off, UTC', 'landing, UTC'];
    const row = (times: Cells): Cells => ['2025-06-21', 'North', 1, 1, 'Marrowfield', 'Marrowfield', ...times];
    const counted = (rows: readonly Cells[]): unknown[] =>
      (call('PILOT_STATUS', [one, ...rows], fleet, [['', '', '']], '2025-06-30', 'FAA and EASA', '', '', '', places) as unknown[][])
        .filter(([item]) => String(item).startsWith('passengers at night'))
        .map(([, count, , verdict]) => [count, verdict]);
    expect(counted([row(['2230', '2330']), row(['0900', '1000'])])).toEqual([
      [1, 'NO'],
      [1, 'OK'],
    ]);
    // One flight without times: nobody knows whether it was by night.
    expect(counted([row(['2230', '2330']), row(['', ''])])).toEqual([
      ['', 'UNKNOWN'],
      ['', 'UNKNOWN'],
    ]);
  });

  it.each<[string, Cells, RegExp]>([
    ['one time alone', ['2230', ''], /take-off and landing both as times in UTC, such as 1430 or 14:30\); got a blank/],
    ['no time', ['2230', 'late'], /got "late"/],
    ['a landing before the take-off', ['2230', '2200'], /a landing at most 20 hours after the take-off\); got "2200"/],
  ])('refuses %s', (_, times, sentence) =>
    expect(sentenceOf('PILOT_STATUS', [heads, flown(day, times)], fleet, [['', '', '']], '2025-06-30')).toMatch(sentence),
  );

  it('reads LOG_TOTALS by the night of the log book, the civil one', () => {
    const [all] = call('LOG_TOTALS', [heads, flown(day, ['2112', '2115'])], fleet, '2025-06-30', 'all', '', '', '', places) as unknown[][];
    expect(all?.slice(7, 9)).toEqual([1, 1]);
  });
});
