// A long change that is followed: what it tells, and that a stop at any step leaves the document as it was.
import { afterEach, describe, expect, it } from 'vitest';
import { attendRun, followed, type Follow } from '../../addon/google/followedRun';
import { insertSheets } from '../../addon/google/insertSheets';
import { updateSheets } from '../../addon/google/updateSheets';
import type { Double } from './double/services';
import { documentOf } from './smallDocument';
import { smallTemplates } from './smallTemplates';
import { carriedEntries, laterTemplates, setOf, typed } from './smallUpdate';
import { withDouble, withoutPlatform } from './support';

const keys = smallTemplates.map(({ key }) => key);
const insertion = [
  'Making 3 sheets.',
  'Writing "Yard", sheet 1 of 3.',
  'Writing "Dock side", sheet 2 of 3.',
  'Writing "Hold", sheet 3 of 3.',
  'Writing the rules of entries.',
];

const insert = (follow: Follow): unknown => insertSheets(keys, smallTemplates, follow);
const bringUpToDate = (double: Double) => (follow: Follow) =>
  updateSheets({ set: setOf(double, 'Yard'), entries: carriedEntries() }, laterTemplates, follow);

/** Does the change as the panel's call would, and tells what another call of the same user hears right after each step was told. */
function heard(double: Double, change: (follow: Follow) => unknown, stopAt?: number): readonly unknown[] {
  const told: unknown[] = [];
  const follow = followed('run 1');
  change((...step) => {
    if (told.length === stopAt) attendRun({ run: 'run 1', stop: true });
    follow(...step);
    told.push(attendRun({ run: 'run 1', stop: false }).progress);
  });
  expect(double.lock.held).toBe(false);
  return told;
}

afterEach(withoutPlatform);

describe('a run that is followed', () => {
  it('tells each step of an insertion as it begins, each after what went before is written', () => {
    const double = withDouble();
    expect(heard(double, insert)).toEqual(insertion.map((doing, index) => ({ doing, done: Math.max(0, index - 1), of: 3 })));
    // One at each step, and that of the transaction.
    expect(double.recorder.calls.filter(({ name }) => name === 'SpreadsheetApp.flush')).toHaveLength(insertion.length + 1);
  });

  it('does the same as one that nobody follows', () => {
    const double = withDouble();
    heard(double, insert);
    const other = withDouble();
    insertSheets(keys, smallTemplates);
    expect(documentOf(double)).toEqual(documentOf(other));
  });

  it.each(insertion.map((doing, index) => [doing, index] as const))('stopped before "%s" leaves the document as it was', (_, index) => {
    const double = withDouble();
    const before = documentOf(double);
    expect(() => heard(double, insert, index)).toThrow(/^Stopped\. No sheet was inserted; everything added was removed again\.$/);
    expect(documentOf(double)).toEqual(before);
    expect(double.lock.held).toBe(false);
    insert(() => undefined);
    expect(double.document.sheets).toHaveLength(1 + keys.length);
  });

  it.each(insertion.map((_, index) => index))('an update stopped at step %i leaves the older sheets as they were', (index) => {
    const double = typed();
    const before = documentOf(double);
    expect(() => heard(double, bringUpToDate(double), index)).toThrow(
      /^Stopped\. The sheets were not brought up to date; everything is as it was\.$/,
    );
    expect(documentOf(double)).toEqual(before);
  });

  it('says what is left where it cannot be taken back', () => {
    const double = withDouble();
    Object.assign(double.document, {
      deleteSheet: () => {
        throw new Error('Service Spreadsheets failed');
      },
    });
    expect(() => heard(double, insert, 1)).toThrow(
      /^Stopped\. No sheet was inserted; remove by hand: the sheet Yard, the sheet Dock side, the sheet Hold\.$/,
    );
  });

  it('tells nothing of other runs, nor stops them', () => {
    const double = withDouble();
    attendRun({ run: 'run 2', stop: true });
    expect(heard(double, insert)).toHaveLength(insertion.length);
    expect(attendRun({ run: 'run 2', stop: false })).toEqual({ progress: null });
  });

  it('is done untold where the cache keeps nothing', () => {
    const double = withDouble();
    double.cache.forgets = true;
    expect(heard(double, insert, 2)).toEqual(insertion.map(() => null));
    expect(double.document.sheets).toHaveLength(1 + keys.length);
  });
});
