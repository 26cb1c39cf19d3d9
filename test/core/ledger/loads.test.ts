// The history of loads against a clerk who walks through the days one by one and keeps a slip of paper for the card.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadedOn, type LoadLine } from '../../../core/ledger/loads';

const named = (name: string) => ({ name, key: name.toLowerCase() });
const card = { aircraft: named('North'), unit: named('left'), database: named('navigation') };
const line = (row: number, effective: number, loaded: number, verified?: number, failed = false): LoadLine => ({
  ...card,
  row,
  effectiveDay: effective,
  loadedOnDay: loaded,
  verified: verified === undefined ? 'no' : { day: verified },
  failed,
});
const state = (lines: readonly LoadLine[], asOf: number) => {
  const [only] = loadedOn([card], lines, asOf);
  if (only === undefined) throw new Error('no state');
  return only;
};

describe('the state of a card', () => {
  it('is that of its last load, in whatever order the lines stand', () => {
    const lines = [line(1, 28, 27, 27), line(2, 0, -1, -1)];
    expect(state(lines, 40)).toMatchObject({ loadedDay: 28, loadedOnDay: 27, verified: { day: 27 }, told: [] });
  });

  it('is as it was after a load that failed, and nobody has seen it until somebody looks again', () => {
    const failed = line(2, 28, 30, undefined, true);
    const told = [{ kind: 'load-failed', verdict: 'CHECK', day: 30 }];
    expect(state([line(1, 0, 1, 1), failed], 40)).toMatchObject({ loadedDay: 0, loadedOnDay: 1, verified: 'no', told });
    expect(state([line(1, 0, 1, 1), { ...failed, verified: { day: 31 } }], 40)).toMatchObject({ loadedDay: 0, verified: { day: 31 }, told: [] });
    expect(state([line(1, 0, 1, 1), { ...failed, verified: { day: 29 } }], 40)).toMatchObject({ verified: 'no', told });
    expect(state([failed], 40)).toMatchObject({ loadedDay: undefined, told: [{ kind: 'no-load' }, { kind: 'load-failed' }] });
  });

  it('is not known while one of its lines lies ahead, has no day among others, or no date', () => {
    expect(state([line(1, 0, 1, 1), line(2, 28, 41)], 40)).toMatchObject({ loadedDay: undefined, told: [{ kind: 'load-refused', day: 41 }] });
    expect(state([line(1, 0, 1, 1), { ...line(2, 28, 0), loadedOnDay: 'missing' }], 40)).toMatchObject({ told: [{ kind: 'load-unplaced', row: 2 }] });
    expect(state([{ ...line(1, 28, 0), loadedOnDay: 'missing' }], 40)).toMatchObject({ loadedDay: 28, loadedOnDay: 'missing', told: [] });
    expect(state([{ ...line(1, 28, 0), loadedOnDay: 'unreadable' }], 40)).toMatchObject({ told: [{ kind: 'load-unplaced', row: 1 }] });
    expect(state([{ ...line(1, 28, 0), effectiveDay: undefined }], 40)).toMatchObject({ told: [{ kind: 'load-unplaced', row: 1 }] });
    expect(state([], 40)).toMatchObject({ loadedDay: undefined, told: [{ kind: 'no-load', verdict: 'UNKNOWN' }] });
  });

  it('is not known of two cards of the same three names, and a blank name is a name', () => {
    const boxless = { ...card, unit: undefined };
    expect(loadedOn([card, card, boxless], [line(1, 28, 27), { ...line(2, 0, 3), unit: undefined }], 40).map(({ loadedDay }) => loadedDay)).toEqual([
      undefined,
      undefined,
      0,
    ]);
  });

  it('is what a clerk reads off his slip, for any history', () => {
    const lines = fc.array(
      fc.record({
        effective: fc.integer({ min: 0, max: 99 }),
        loaded: fc.integer({ min: 0, max: 12 }),
        verified: fc.option(fc.integer({ min: 0, max: 14 }), { nil: undefined }),
        failed: fc.boolean(),
      }),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(lines, (drawn) => {
        let slip: { effective: number; seen: number[]; failedOn: number | undefined } | undefined;
        for (let day = 0; day <= 12; day += 1) {
          for (const one of drawn.filter(({ loaded }) => loaded === day)) {
            const seen = one.verified === undefined ? [] : [one.verified];
            if (!one.failed) slip = { effective: one.effective, seen, failedOn: undefined };
            else if (slip !== undefined) slip = { ...slip, seen: [...slip.seen, ...seen], failedOn: day };
          }
        }
        const found = state(
          drawn.map((one, index) => line(index + 1, one.effective, one.loaded, one.verified, one.failed)),
          12,
        );
        expect(found.loadedDay).toBe(slip?.effective);
        if (slip === undefined) return;
        const { failedOn, seen } = slip;
        const counts = failedOn === undefined ? seen : seen.filter((day) => day >= failedOn);
        expect(found.verified === 'no').toBe(counts.length === 0);
        expect(found.told.length).toBe(failedOn !== undefined && counts.length === 0 ? 1 : 0);
      }),
      { numRuns: 2000 },
    );
  });
});
