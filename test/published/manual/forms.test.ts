// Published worked examples in the form in which their source prints the table.
// Read: answers with their working in a public quiz on FAA private pilot figure 38 (it names FAA-H-8083-25B, chapter 11), and a question of
// the FAA mechanics' test in a public question bank. Not to be had as numbers: the curves of the combined charts of FAA-H-8083-25 (take-off,
// sample problem 2) and of private pilot figures 40 and 41, and the corners of the moment envelopes of figure 34 and FAA-H-8083-1; pages that
// reprint them give the answers, but the curves are pictures, so chains and moment envelopes are checked in test/functions against values
// worked out apart from our code.
import { describe, expect, it } from 'vitest';
import { answer, call } from '../../support/call';

const withinHalf = (got: unknown, printed: number): void => expect(Math.abs(Number(got) - printed)).toBeLessThanOrEqual(0.5 * (1 + 1e-9));

/** Printed at standard temperature, without weights: "10 percent for each 4 knots of headwind". Rows of 0, 2,500 and 5,000 feet R* now too. */
const figure38 = [
  ['pressure altitude', 'ground roll', 'over 50 ft'],
  [0, 445, 1075],
  [2500, 470, 1135],
  [5000, 495, 1195],
  [7500, 515, 1255],
];

describe('landing distance, FAA private pilot test, figure 38, as printed: no weight, no temperature', () => {
  it.each([
    { id: 'TL-02 (R* +C)', wanted: 'over 50 ft', altitude: 7500, celsius: 0, printed: 1004, book: 1255 },
    { id: 'R* +C: 5,000 ft, 41 degrees Fahrenheit', wanted: 'over 50 ft', altitude: 5000, celsius: 5, printed: 956, book: 1195 },
    { id: 'TL-04 (R* +C)', wanted: 'ground roll', altitude: 1250, celsius: 12.5, printed: 366, book: 457 },
  ])('$id: $wanted at $altitude ft with 8 kt is $printed ft', ({ wanted, altitude, celsius, printed, book }) => {
    const rows = call('LANDING_BRIEF', figure38, wanted, 1600, 0, 5000, altitude, 1013.25, celsius, 0, 8, '', [['headwind', -10, 4, '']]) as unknown[][];
    const value = (item: string): unknown => rows.find(([name]) => name === item)?.[1];
    withinHalf(value('book distance'), book + (book === 457 ? 0.5 : 0));
    withinHalf(value('corrected distance'), printed);
    expect(value('verdict')).toBe('OK');
    expect(rows.find(([name]) => name === 'verdict')?.[2]).toContain('the table gives no weight, so its figures are taken at any; the table gives no temperature');
  });
});

describe('empty weight after alterations, FAA mechanics test', () => {
  // 2,886 lb with a moment of 101,673.78; two seats of 15 lb out at 71, a cabinet of 97 lb in at 71, a seat of 20 lb at 71, a radio of 30 lb at 94.
  const kinds = ['weighing', 'change', 'change', 'change', 'change'].map((kind) => [kind]);
  const dates = kinds.map((_, index) => [`2026-01-0${index + 1}`]);
  const weights = [[2886], [-30], [97], [20], [30]];
  it('the centre of gravity goes 1.62 in aft, from 35.23 to 36.85 in, at 3,003 lb (R* +C)', () => {
    const on = (day: string) => answer('EMPTY_WEIGHT', dates, kinds, weights, [[''], [71], [71], [71], [94]], day, [[101673.78], [''], [''], [''], ['']]);
    expect(Math.abs(Number(on('2026-01-01').arm) - 35.23)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(Number(on('2026-01-09').arm) - 36.85)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(Number(on('2026-01-09').arm) - Number(on('2026-01-01').arm) - 1.62)).toBeLessThanOrEqual(0.005);
    expect(on('2026-01-09')).toMatchObject({ weight: 3003, changes: 4 });
    expect(Math.abs(Number(on('2026-01-09').moment) - 110670.78)).toBeLessThanOrEqual(0.005);
  });
});
