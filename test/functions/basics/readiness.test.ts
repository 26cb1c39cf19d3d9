// One verdict of many: nothing unproved may come out as OK, and every hindrance is named.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { verdicts } from '../../../core/basics/verdict';
import { answer, call, sentenceOf } from '../../support/call';

const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
const ready = (items: unknown, words: unknown) => answer('READINESS', items, words);

describe('READINESS', () => {
  it('is OK only where everything is', () => {
    expect(ready(column('Landing', 'Fuel', 'Data'), column('OK', 'ok ', 'OK'))).toEqual({ verdict: 'OK', reasons: 'all 3 items OK' });
    expect(ready('Landing', 'OK')).toEqual({ verdict: 'OK', reasons: '1 item OK' });
  });

  it('names every item that is not, worst first', () => {
    expect(ready(column('Data', 'Fuel', 'Landing', 'Loading'), column('CHECK', 'UNKNOWN', 'NO', 'OK'))).toEqual({
      verdict: 'NO',
      reasons: 'Landing NO; Fuel UNKNOWN; Data CHECK',
    });
  });

  it.each(['', '#N/A', 'fine', true, 1, 'CYCLE_STATUS: series must be 28-day; got a blank (row 2).'])('takes %j for UNKNOWN', (word) => {
    expect(ready(column('Landing', 'Fuel'), column('OK', word))).toEqual({ verdict: 'UNKNOWN', reasons: 'Fuel UNKNOWN' });
  });

  it('passes over blank rows, and calls an item without a name by its row', () => {
    expect(ready(column('Landing', '', '', '#REF!'), column('OK', '', 'NO', 'CHECK'))).toEqual({ verdict: 'NO', reasons: 'Row 3 NO; Row 4 CHECK' });
  });

  it('is never OK of nothing', () => {
    expect(call('READINESS', column('', ''), column('', ''))).toEqual([['', '']]);
    expect(sentenceOf('READINESS', column('', ''), 'OK')).toBe('READINESS: items must have at least one filled row; got none.');
  });

  it('refuses columns of different length', () => {
    expect(sentenceOf('READINESS', column('Landing', 'Fuel'), column('OK', 'OK', 'OK'))).toBe(
      'READINESS: verdicts must be a single cell or the same size as items (2 rows x 1 column); got 3 rows x 1 column.',
    );
  });

  it('is OK exactly where every word is, whatever the words', () => {
    const words = fc.array(fc.oneof(fc.constantFrom(...verdicts), fc.string()), { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(words, (given) => {
        const { verdict } = ready(
          given.map((_, index) => [`Item ${index + 1}`]),
          given.map((word) => [word]),
        );
        expect(verdict === 'OK').toBe(given.every((word) => word.trim().toUpperCase() === 'OK'));
      }),
    );
  });
});
