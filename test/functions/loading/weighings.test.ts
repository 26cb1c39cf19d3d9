// The empty aircraft of a loading beside its weighing record, in LOADING_ENTRIES. Numbers by hand: 1,500 x 40 + 10 x 25 - 5 x 60 = 59,950
// over 1,505 is 39.834.
import { describe, expect, it } from 'vitest';
import { call, sentenceOf } from '../../support/call';

const record = [
  ['2024-03-01', 'weighing', 1500, 40, ''],
  ['2026-02-01', 'change', -5, 60, ''],
  ['2025-06-10', 'change', 10, 25, ''],
];
const envelope = [
  [38, 1200],
  [38, 1900],
  [50, 2400],
  [50, 1200],
];
const blanks = ['', '', '', '', '', '', '', ''];

/** Verdict and reason of the first station. */
function empty(weight: number, arm: number, weighings: unknown, asOf: string | undefined = '2026-03-01', name = 'empty aircraft'): unknown {
  const rows = call(
    'LOADING_ENTRIES',
    [[name], ['front seats']],
    [[weight], [340]],
    [[arm], [44]],
    envelope,
    ...blanks,
    weighings,
    asOf,
  ) as unknown[][];
  return rows[0]?.slice(1);
}

describe('the empty aircraft beside its record', () => {
  it('is OK where the record leads to it, within the rounding of what is typed', () => {
    const as = ['OK', 'as weighed on 2024-03-01, changes since: 2'];
    expect(empty(1505, 39.834, record)).toEqual(as);
    expect(empty(1506.4, 39.89, record)).toEqual(as);
    expect(empty(1503.6, 39.78, record)).toEqual(as);
  });

  it.each([
    [1506.6, 39.834],
    [1503.4, 39.834],
    [1505, 39.9],
    [1505, 39.77],
  ])('is CHECK at %d and %d', (weight, arm) =>
    expect(empty(weight, arm, record)).toEqual(['CHECK', 'record leads to 1,505 at 39.8339, weighed on 2024-03-01']),
  );

  it('counts a line from its own day on', () => {
    expect(empty(1505, 39.834, record, '2026-01-31')).toEqual(['CHECK', expect.stringContaining('leads to 1,510 at 39.9007')]);
    expect(empty(1500, 40, record, '2025-06-09')).toEqual(['OK', expect.stringContaining('changes since: 0')]);
    expect(empty(1500, 40, record, '2024-02-29')).toEqual(['CHECK', 'the weighing record has no weighing up to that day']);
    expect(empty(1505, 39.834, record, '2026-02-01')).toEqual(['OK', expect.stringContaining('changes since: 2')]);
    expect(empty(1505, 39.834, record, undefined)).toEqual(['OK', expect.stringContaining('changes since: 2')]);
  });

  it('takes moments in place of arms, and says where the two do not agree', () => {
    expect(empty(1500, 40, [['2024-03-01', 'weighing', 1500, '', 60_000]])).toEqual(['OK', expect.anything()]);
    expect(empty(1500, 40, [['2024-03-01', 'weighing', 1500, 40, 66_000]])).toEqual([
      'CHECK',
      'weighing record: an arm and a moment beside each other do not agree',
    ]);
  });

  it.each([
    [['', 'weighing', 1500, 40, ''], 'no day'],
    [['soon', 'weighing', 1500, 40, ''], 'no day'],
    [['2024-03-01', 'wieghing', 1500, 40, ''], 'neither weighing nor change'],
    [['2024-03-01', '', 1500, 40, ''], 'neither weighing nor change'],
    [['2024-03-01', 'weighing', '1.500', 40, ''], 'no weight'],
    [['2024-03-01', 'weighing', 1500, '', ''], 'neither arm nor moment'],
  ])('tells the line that it cannot read: %j', (line, lack) =>
    expect(empty(1505, 39.834, [...record, line])).toEqual(['CHECK', `weighing record, line 4 of this aircraft: ${lack}`]),
  );

  it('is the station of that name, else the heaviest', () => {
    expect(empty(1505, 39.834, record, undefined, 'basic')).toEqual(['OK', expect.stringContaining('weighed on')]);
    const rows = call('LOADING_ENTRIES', [['EMPTY'], ['payload']], [[500], [900]], [[40], [41]], envelope, ...blanks, record) as unknown[][];
    expect(rows.slice(0, 2).map((row) => row[1])).toEqual(['CHECK', 'OK']);
  });

  it('is held against nothing without a line', () => {
    for (const none of ['', [['', '', '', '', '']], [['']]]) expect(empty(1700, 41, none)).toEqual(['OK', '']);
    expect(sentenceOf('LOADING_ENTRIES', [['empty']], [[1500]], [[40]], envelope, ...blanks, [['2024-03-01', 'weighing']])).toContain(
      'weighings must be rows of day, weighing or change, weight, arm, moment; got a range of',
    );
  });
});
