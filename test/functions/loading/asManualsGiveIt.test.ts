// Loadings as manuals give them: moments, moment envelopes, per cent of chord, tanks of one row, the weighing record; and bad input for each.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, call, sentenceOf } from '../../support/call';

const names = [['empty'], ['front'], ['rear'], ['bags']];
const weights = [[1000], [200], [100], [40]];
const arms = [[40], [42], [70], [95]];
const tanks = [['wing', 30, 1, '']];
const tankArms = [
  ['wing', 0, 48],
  ['wing', 40, 48],
];
const envelope = [
  [38, 900],
  [38, 1400],
  [40, 1700],
  [50, 1700],
  [50, 900],
];
const brief = (
  change: { readonly arms?: unknown; readonly tankArms?: unknown; readonly envelope?: unknown; readonly more?: readonly unknown[] } = {},
): unknown[][] =>
  call(
    'LOADING_BRIEF',
    names,
    weights,
    change.arms ?? arms,
    tanks,
    change.tankArms ?? tankArms,
    6,
    2,
    18,
    change.envelope ?? envelope,
    '',
    '',
    '',
    '',
    'lb',
    'in',
    ...(change.more ?? []),
  ) as unknown[][];

describe('stations by their moments', () => {
  const moments = (divisor: number): unknown[][] => weights.map(([weight = 0], index) => [(weight * (arms[index]?.[0] ?? 0)) / divisor]);
  it.each([
    ['moment', 1],
    ['moment/100', 100],
    ['moment / 1,000', 1000],
  ])('are the same loading, as %s', (word, divisor) => {
    expect(brief({ arms: names.map(() => ['']), more: [moments(divisor), word] })).toEqual(brief());
  });
  it('one by one, beside stations with arms', () => {
    expect(brief({ arms: [['']].concat(arms.slice(1) as never), more: [[[40000], [''], [''], ['']]] })).toEqual(brief());
    expect(answer('EMPTY_WEIGHT', [['2026-01-02']], [['weighing']], [[1000]], [['']], '2026-01-02', [[40]], 'moment/1000')).toMatchObject({
      arm: 40,
      moment: 40000,
    });
  });
  it('must agree with an arm beside them, and stand where there is none', () => {
    expect(brief({ more: [[[40000], [8400], [''], ['']]] })).toEqual(brief());
    expect(() => brief({ more: [[[41000], [''], [''], ['']]] })).toThrow(
      'LOADING_BRIEF: moments must be left out beside an arm, or weight x arm, 40,000; got 41000 (row 1 of moments).',
    );
    expect(() => brief({ arms: [[''], [42], [70], [95]] })).toThrow(
      'LOADING_BRIEF: arms must be -1,000,000 to 1,000,000, or a moment given in its place; got a blank (row 1 of arms).',
    );
  });
  it('of nothing at all must be 0', () => {
    const given = (moment: unknown): unknown[] => [
      names,
      [[1000], [200], [0], [40]],
      [[40], [42], [''], [95]],
      envelope,
      ...['', '', ''],
      [[''], [''], [moment], ['']],
    ];
    expect(call('LOADING_ENTRIES', ...given(0))).toHaveLength(5);
    expect(sentenceOf('LOADING_ENTRIES', ...given(3))).toBe('LOADING_ENTRIES: moments must be 0 where the weight is 0; got 3 (row 3 of moments).');
  });
});

/** The limits of a moment envelope at a weight, by walking its edges: apart from our code. */
function momentLimits(corners: readonly (readonly [number, number])[], weight: number): number[] {
  return corners
    .flatMap(([m1, w1], index) => {
      const [m2, w2] = corners[(index + 1) % corners.length] ?? [0, 0];
      if (w1 === w2 || weight < Math.min(w1, w2) || weight > Math.max(w1, w2)) return [];
      return [m1 + ((m2 - m1) * (weight - w1)) / (w2 - w1)];
    })
    .sort((one, other) => one - other);
}

/** A forward line of two pieces and a straight aft line, in moments. */
const outline = fc
  .record({
    low: fc.integer({ min: 800, max: 1500 }),
    knee: fc.integer({ min: 100, max: 600 }),
    top: fc.integer({ min: 100, max: 600 }),
    forward: fc.integer({ min: 300, max: 900 }),
    kneeArm: fc.integer({ min: 0, max: 30 }),
    topArm: fc.integer({ min: 0, max: 60 }),
    width: fc.integer({ min: 100, max: 200 }),
  })
  .map(({ low, knee, top, forward, kneeArm, topArm, width }): (readonly [number, number])[] => {
    const weightsUp = [low, low + knee, low + knee + top] as const;
    const arm = (tenths: number): number => tenths / 10;
    const [f1, f2, f3] = [arm(forward), arm(forward + kneeArm), arm(forward + kneeArm + topArm)];
    const aft = arm(forward + width + kneeArm);
    return [
      [f1 * weightsUp[0], weightsUp[0]],
      [f2 * weightsUp[1], weightsUp[1]],
      [f3 * weightsUp[2], weightsUp[2]],
      [aft * weightsUp[2], weightsUp[2]],
      [aft * weightsUp[0], weightsUp[0]],
    ];
  });

describe('an envelope of moment against weight', () => {
  it.each([1, 100, 1000])('is judged along its own lines, moments over %i', (divisor) => {
    fc.assert(
      fc.property(
        outline,
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.double({ min: -0.5, max: 1.5, noNaN: true }),
        (corners, up, across) => {
          const [low = 0, high = 0] = [Math.min(...corners.map(([, w]) => w)), Math.max(...corners.map(([, w]) => w))];
          const weight = low + up * (high - low);
          const [forward = 0, aft = 0] = momentLimits(corners, weight);
          const moment = forward + across * (aft - forward);
          const arm = moment / weight;
          fc.pre(Math.abs(across) > 1e-6 && Math.abs(across - 1) > 1e-6);
          const got = answer(
            'BALANCE_CHECK',
            weight,
            arm,
            corners.map(([m, w]) => [m / divisor, w]),
            divisor === 1 ? 'moment' : `moment/${divisor}`,
          );
          expect(got.verdict).toBe(across > 0 && across < 1 ? 'OK' : 'NO');
          expect(got.forward_margin).toBeCloseTo(arm - forward / weight, 6);
          expect(got.aft_margin).toBeCloseTo(aft / weight - arm, 6);
          // The greatest weight at this arm: there the loading is on the line, and a pound more is outside.
          if (got.verdict === 'OK') {
            const most = weight + Number(got.weight_margin);
            const [fore = 0, back = 0] = momentLimits(corners, most - 1e-6 * most);
            expect(arm * (most - 1e-6 * most)).toBeGreaterThanOrEqual(fore - 1e-6 * Math.abs(fore));
            expect(arm * (most - 1e-6 * most)).toBeLessThanOrEqual(back + 1e-6 * Math.abs(back));
            const beyond = momentLimits(corners, most * (1 + 1e-4));
            expect(beyond.length === 0 || arm * most * (1 + 1e-4) < (beyond[0] ?? 0) || arm * most * (1 + 1e-4) > (beyond[1] ?? 0)).toBe(true);
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it('is not what its corners, turned into arms, would give', () => {
    const corners = [
      [30 * 1500, 1500],
      [32 * 1950, 1950],
      [40 * 2400, 2400],
      [48 * 2400, 2400],
      [48 * 1500, 1500],
    ];
    const asArms = corners.map(([m = 0, w = 1]) => [m / w, w]);
    const weight = 2175;
    const line = (32 * 1950 + 40 * 2400) / 2 / weight;
    expect(answer('BALANCE_CHECK', weight, line + 0.001, corners, 'moment')).toMatchObject({ verdict: 'OK' });
    expect(answer('BALANCE_CHECK', weight, line - 0.001, corners, 'moment')).toMatchObject({ verdict: 'NO' });
    expect(line).toBeCloseTo(36.4138, 4);
    expect(answer('BALANCE_CHECK', weight, 36.2, asArms).verdict).toBe('OK');
    expect(answer('BALANCE_CHECK', weight, 36.2, corners, 'moment').verdict).toBe('NO');
  });

  it('serves the whole brief, and the look at the entries', () => {
    const upright = [
      [38 * 900, 900],
      [38 * 1400, 1400],
      [50 * 1400, 1400],
      [50 * 900, 900],
    ];
    const wide = [...upright.slice(0, 2), [38 * 1700, 1700], [50 * 1700, 1700], upright[3]].map(([m = 0, w = 0] = []) => [m / 1000, w]);
    const box = [
      [38, 900],
      [38, 1700],
      [50, 1700],
      [50, 900],
    ];
    const rows = brief({ envelope: wide, more: ['', '', 'moment/1000'] });
    const expected = brief({ envelope: box });
    rows.forEach((row, index) =>
      row.forEach((cell, place) =>
        typeof cell === 'number' ? expect(cell).toBeCloseTo(Number(expected[index]?.[place]), 9) : expect(cell).toBe(expected[index]?.[place]),
      ),
    );
    expect(
      (call('LOADING_ENTRIES', names, weights, arms, wide, '', '', '', '', '', 'moment/1000') as unknown[][]).map(([, verdict]) => verdict),
    ).toEqual(['OK', 'OK', 'OK', 'OK', 'OK']);
  });

  it('needs weights above 0, and a word that is known', () => {
    expect(
      sentenceOf(
        'BALANCE_CHECK',
        1500,
        40,
        [
          [0, 0],
          [60000, 1500],
          [80000, 1500],
        ],
        'moment',
      ),
    ).toContain('points of which one weighs nothing, so that its moment has no arm');
    expect(sentenceOf('BALANCE_CHECK', 1500, 40, envelope, 'moments by ten')).toBe(
      'BALANCE_CHECK: envelope_in must be one of arm, moment, moment/100, moment/1000, % MAC; got "moments by ten".',
    );
  });
});

describe('an envelope in per cent of chord', () => {
  const percent = [
    [10, 900],
    [10, 1700],
    [30, 1700],
    [30, 900],
  ];
  it('is that of its arms', () => {
    const asArms = percent.map(([p = 0, w = 0]) => [25 + (p / 100) * 60, w]);
    for (const arm of [30, 31, 35, 43, 43.5])
      expect(answer('BALANCE_CHECK', 1200, arm, percent, '% MAC', 25, 60)).toEqual(answer('BALANCE_CHECK', 1200, arm, asArms));
  });
  it('needs the chord and its leading edge', () => {
    expect(sentenceOf('BALANCE_CHECK', 1200, 35, percent, '% MAC', 25)).toBe(
      'BALANCE_CHECK: chord must be given, since the envelope is in % MAC; got a blank.',
    );
    expect(sentenceOf('BALANCE_CHECK', 1200, 35, percent, '% MAC')).toBe(
      'BALANCE_CHECK: leading_edge must be given, since the envelope is in % MAC; got a blank.',
    );
  });
});

describe('a tank of constant arm', () => {
  it.each([
    ['with its usable fuel', [['wing', 40, 48]]],
    ['with a blank', [['wing', '', 48]]],
  ])('is one row, %s', (_, rows) => {
    expect(brief({ tankArms: rows })).toEqual(brief());
  });
  it('holds no more than its usable fuel', () => {
    expect(() => brief({ tankArms: [['wing', 25, 48]] })).toThrow('got rows for 0 to 25 and 30 on board for "wing"');
    expect(() =>
      brief({
        tankArms: [
          ['wing', '', 48],
          ['wing', 40, 49],
        ],
      }),
    ).toThrow('got a blank quantity among several rows for "wing"');
    expect(() => brief({ tankArms: [['wing', 0, 48]] })).toThrow('got rows for 0 to 0 and 30 on board');
  });
});

describe('EMPTY_WEIGHT', () => {
  const record = [
    ['2024-03-01', 'weighing', 1500, 40],
    ['2025-06-10', 'equipment change', 10, 25],
    ['2026-02-01', 'change', -5, 60],
    ['2026-05-01', 'weighing', 1510, 40.2],
    ['2026-05-01', 'change', 2, 30],
  ];
  const on = (day: string, rows: unknown[][] = record) =>
    answer('EMPTY_WEIGHT', ...[0, 1, 2, 3].map((column) => rows.map((row) => [row[column]])), day);
  it('adds the changes since the last weighing, in any order of rows', () => {
    expect(on('2026-03-01')).toMatchObject({ weight: 1505, arm: 59950 / 1505, weighed_on: '2024-03-01', changes: 2 });
    expect(on('2026-03-01', [record[2] ?? [], record[0] ?? [], record[1] ?? []])).toEqual(on('2026-03-01'));
    expect(on('2025-06-09')).toMatchObject({ weight: 1500, arm: 40, changes: 0 });
    expect(on('2025-06-10')).toMatchObject({ weight: 1510, changes: 1 });
  });
  it('begins anew at a weighing; rows of one day count from top to bottom', () => {
    expect(on('2026-05-01')).toMatchObject({ weight: 1512, weighed_on: '2026-05-01', changes: 1 });
    const above = [...record.slice(0, 3), record[4] ?? [], record[3] ?? []];
    expect(on('2026-05-01', above)).toMatchObject({ weight: 1510, changes: 0 });
  });
  it('says what it cannot fold', () => {
    const given = (rows: unknown[][], day = '2026-03-01') =>
      sentenceOf('EMPTY_WEIGHT', ...[0, 1, 2, 3].map((column) => rows.map((row) => [row[column]])), day);
    expect(given(record, '2023-01-01')).toBe('EMPTY_WEIGHT: kinds must have a weighing on or before as_of; got none among 5 rows, 5 of them later.');
    expect(given([['', 'weighing', 1500, 40]])).toContain('dates must be a date from 1950 to 2100, such as 2026-01-22; got a blank (row 1)');
    expect(given([['2024-03-01', 'painted', 1500, 40]])).toContain('kinds must be one of weighing, change; got "painted" (row 1)');
    expect(given([['2024-03-01', 'weighing', 0, 40]])).toContain('weights must add up to more than zero');
  });
});
