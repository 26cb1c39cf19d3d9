// The inverse answers, proved by feeding them back: the limit fits, and a little more does not.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, call, sentenceOf } from '../../support/call';

const weights = [900, 1000, 1100, 1250];
const altitudes = [0, 2000, 5000];
const temperatures = [-10, 10, 40];
/** Bent along every input, rising along all. */
const distance = (w: number, h: number, t: number): number =>
  Math.round(300 + ((w - 800) / 10) ** 1.5 + h / 12 + (h * w) / 90_000 + 2 * t + (t > 10 ? 3 * (t - 10) : 0));
const rows = weights.flatMap((w) => altitudes.flatMap((h) => temperatures.map((t) => [w, h, t, distance(w, h, t)])));
const table = [['weight', 'pressure altitude', 'temperature', 'over 50 ft'], ...rows];

const inside = (low: number, high: number): fc.Arbitrary<number> => fc.double({ min: low, max: high, noNaN: true });
const verdictAt = (available: number, factor: number, w: number, h: number, t: number): unknown =>
  answer('TAKEOFF_MARGIN', available, answer('AFM_READ', table, 'over 50 ft', w, h, t).value, factor).verdict;

describe('TAKEOFF_MAX_WEIGHT', () => {
  it('gives a weight that fits exactly when it is fed back, and a little more does not', () => {
    fc.assert(
      fc.property(inside(0, 5000), inside(-10, 40), inside(1, 3), inside(0.02, 0.98), (h, t, factor, part) => {
        const least = Number(answer('AFM_READ', table, 'over 50 ft', 900, h, t).value);
        const most = Number(answer('AFM_READ', table, 'over 50 ft', 1250, h, t).value);
        const available = factor * (least + part * (most - least));
        const weight = Number(answer('TAKEOFF_MAX_WEIGHT', table, 'over 50 ft', available, h, t, factor).weight);
        const back = answer('TAKEOFF_MARGIN', available, answer('AFM_READ', table, 'over 50 ft', weight, h, t).value, factor);
        expect(back.verdict).toBe('OK');
        expect(Math.abs(Number(back.margin))).toBeLessThan(1e-6);
        expect(verdictAt(available, factor, weight + 0.01, h, t)).toBe('NO');
      }),
    );
  });

  it('gives the last row, and no more, where all of the table fits', () => {
    expect(answer('TAKEOFF_MAX_WEIGHT', table, 'over 50 ft', 100_000, 1000, 15).weight).toBe(1250);
  });

  it('never falls as the runway grows, and never rises as the day gets hotter or the field higher', () => {
    const weight = (available: number, h: number, t: number): number =>
      Number(answer('TAKEOFF_MAX_WEIGHT', table, 'over 50 ft', available, h, t).weight);
    fc.assert(
      fc.property(inside(1800, 2500), inside(0, 4000), inside(-10, 30), (available, h, t) => {
        const here = weight(available, h, t);
        expect(weight(available + 50, h, t)).toBeGreaterThanOrEqual(here);
        expect(weight(available, h + 500, t)).toBeLessThanOrEqual(here);
        expect(weight(available, h, t + 5)).toBeLessThanOrEqual(here);
      }),
    );
  });

  it('stops at the last filled row where heavier ones are blank for this air, and feeds back', () => {
    const partly = table.map((row) => (row[0] === 1250 && row[1] === 5000 ? [...row.slice(0, 3), ''] : row));
    expect(answer('TAKEOFF_MAX_WEIGHT', partly, 'over 50 ft', 100_000, 4000, 15).weight).toBe(1100);
    expect(answer('TAKEOFF_MAX_WEIGHT', partly, 'over 50 ft', 100_000, 1000, 15).weight).toBe(1250);
  });

  it('does not step over a hole', () => {
    const holed = table.filter((row) => !(row[0] === 1100 && row[1] === 2000 && row[2] === 10));
    expect(sentenceOf('TAKEOFF_MAX_WEIGHT', holed, 'over 50 ft', 1200, 2000, 10)).toBe(
      'TAKEOFF_MAX_WEIGHT: table must hold a whole grid; got no row for weight 1,100, pressure altitude 2,000, temperature 10.',
    );
  });

  it.each([
    {
      given: [100, 0, 10],
      says: `available must be at least ${(distance(900, 0, 10) * 1.5).toLocaleString('en')}, or it is too short at any "weight" of the table: even 900 needs that with the factor; got 100`,
    },
    {
      given: [1000, 6000, 10],
      says: 'input_2 must be 0 to 5,000, the "pressure altitude" rows of the table; got 6,000, 1,000 above the table, and nothing is extrapolated',
    },
    {
      given: [1000, 0, 41],
      says: 'input_3 must be -10 to 40, the "temperature" rows of the table; got 41, 1 above the table, and nothing is extrapolated',
    },
    { given: [1000, 0], says: 'table must give each grid point once; got weight 900, pressure altitude 0 in row 2 and again in row 3 of table' },
  ])('says $says', ({ given, says }) => {
    expect(sentenceOf('TAKEOFF_MAX_WEIGHT', table, 'over 50 ft', ...given)).toBe(`TAKEOFF_MAX_WEIGHT: ${says}.`);
  });

  it('does not take a blank temperature for a table without one', () => {
    const oneDay = [
      ['weight', 'altitude', 'temperature', 'run'],
      [900, 0, 15, 300],
      [1100, 0, 15, 420],
    ];
    expect(sentenceOf('TAKEOFF_MAX_WEIGHT', oneDay, 'run', 540, 0, '')).toBe(
      'TAKEOFF_MAX_WEIGHT: input_3 must be given, since column 3 of the table, "temperature", holds 15 in every row and so looks like an input (if it is none, another column can stand third); got a blank.',
    );
    const noTemperature = oneDay.map(([w, h, , run]) => [w, h, run]);
    expect(answer('TAKEOFF_MAX_WEIGHT', noTemperature, 'run', 540, 0, '', 1.5).weight).toBe(1000);
  });

  it('refuses a table in which a lighter aircraft needs more runway than a heavier one that fits', () => {
    const slipped = [
      ['weight', 'altitude', 'run'],
      [900, 0, 300],
      [1000, 0, 3600],
      [1100, 0, 420],
    ];
    expect(sentenceOf('TAKEOFF_MAX_WEIGHT', slipped, 'run', 900, 0)).toBe(
      'TAKEOFF_MAX_WEIGHT: table must give distances that rise with "weight", or no single limit exists; got 3,600 at 1,000 and 420 at 1,100.',
    );
  });

  it('answers a column of runways in one call', () => {
    const got = call('TAKEOFF_MAX_WEIGHT', table, 'over 50 ft', [[1000], [''], [100]], 0, 10) as unknown[][];
    expect(got[0]?.[0]).toBe(answer('TAKEOFF_MAX_WEIGHT', table, 'over 50 ft', 1000, 0, 10).weight);
    expect(got[1]).toEqual(['']);
    expect(String(got[2]?.[0])).toMatch(/got 100 \(row 3\)\.$/);
  });
});

describe('LANDING_MAX_WEIGHT', () => {
  it('is the same with the factor 1/0.6', () => {
    expect(answer('LANDING_MAX_WEIGHT', table, 'over 50 ft', 900, 1000, 20)).toEqual(
      answer('TAKEOFF_MAX_WEIGHT', table, 'over 50 ft', 900, 1000, 20, 1 / 0.6),
    );
  });
});

describe('TAKEOFF_MAX_TEMPERATURE', () => {
  it('gives a temperature that fits exactly when it is fed back, and a little more does not', () => {
    fc.assert(
      fc.property(inside(900, 1250), inside(0, 5000), inside(1, 3), inside(0.02, 0.98), (w, h, factor, part) => {
        const least = Number(answer('AFM_READ', table, 'over 50 ft', w, h, -10).value);
        const most = Number(answer('AFM_READ', table, 'over 50 ft', w, h, 40).value);
        const available = factor * (least + part * (most - least));
        const temperature = Number(answer('TAKEOFF_MAX_TEMPERATURE', table, 'over 50 ft', available, w, h, factor).temperature);
        expect(verdictAt(available, factor, w, h, temperature)).toBe('OK');
        expect(verdictAt(available, factor, w, h, temperature + 0.01)).toBe('NO');
      }),
    );
  });

  it('says which row is the coolest it has', () => {
    expect(sentenceOf('TAKEOFF_MAX_TEMPERATURE', table, 'over 50 ft', 100, 900, 0)).toMatch(
      /too short at any "temperature" of the table: even -10 needs that with the factor; got 100\.$/,
    );
  });
});

describe('TAKEOFF_LIMITS', () => {
  const corrections = [
    ['headwind', -10, 9, ''],
    ['tailwind', 10, 2, ''],
    ['grass', 20, 1, 1],
  ];
  const limits = (available: number, from = 240, weight = 1050, elevation = 1500): unknown[][] =>
    call('TAKEOFF_LIMITS', table, 'over 50 ft', weight, 270, available, elevation, 1003, 20, from, 12, 1.4, corrections) as unknown[][];
  const verdict = (weight: number, temperature: number, available: number): unknown =>
    (call('TAKEOFF_BRIEF', table, 'over 50 ft', weight, 270, available, 1500, 1003, temperature, 240, 12, 1.4, corrections) as unknown[][]).at(
      -1,
    )?.[1];

  it('gives limits that the brief confirms', () => {
    for (const available of [980, 1000, 1040]) {
      const [weight, spare, temperature, degrees, needed] = limits(available).map(([, value]) => Number(value)) as [
        number,
        number,
        number,
        number,
        number,
      ];
      expect(verdict(weight, 20, available)).toBe('OK');
      expect(verdict(weight + 0.1, 20, available)).toBe('NO');
      expect(verdict(1050, temperature, available)).toBe('OK');
      expect(verdict(1050, temperature + 0.1, available)).toBe('NO');
      expect(spare).toBeCloseTo(weight - 1050, 9);
      expect(degrees).toBeCloseTo(temperature - 20, 9);
      expect(verdict(1050, 20, needed)).toBe('OK');
      expect(verdict(1050, 20, needed - 0.1)).toBe('NO');
    }
  });

  it('says where the table ends, and where nothing fits', () => {
    expect(limits(90_000).map(([, , , note]) => note)).toEqual([
      'where the table ends; beyond it nothing is known',
      '',
      'where the table ends; beyond it nothing is known',
      '',
      '',
    ]);
    const closed = limits(0);
    expect(closed.slice(0, 4).map(([, value]) => value)).toEqual(['NO', 'NO', 'NO', 'NO']);
    expect(closed[0]?.[3]).toMatch(/^too short at any weight in your take-off table: even 900 needs [\d,]+, and 0 is available$/);
  });

  it('still finds the greatest weight for an aircraft too heavy for the table, and is UNKNOWN for the rest', () => {
    const [weight, spare, temperature, , needed] = limits(900, 240, 1300);
    expect(weight?.[1]).toBe(limits(900)[0]?.[1]);
    expect(spare?.[1]).toBeCloseTo(Number(weight?.[1]) - 1300, 9);
    expect([temperature?.[1], needed?.[1]]).toEqual(['UNKNOWN', 'UNKNOWN']);
    expect(limits(900, 240, 1050, 9000).map(([, value]) => value)).toEqual(Array(5).fill('UNKNOWN'));
  });
});
