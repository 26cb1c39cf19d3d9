// What tries slips on the demo workbook: each typed alone must not leave the trip OK, and the item that tells must name the cause.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openTrip, type OpenTrip, type TripSeen } from '../../support/openTrip';
import type { Slip, Word } from './slip';

const words: readonly Word[] = ['OK', 'CHECK', 'UNKNOWN', 'NO'];
export const weight = (word: string): number => words.indexOf(word as Word);

/** Every item that is not OK says why, in a sentence that is no error. */
const unsaid = ({ items }: TripSeen): string[] =>
  [...items].filter(([, { word, reason }]) => word !== 'OK' && (reason === '' || reason.startsWith('#'))).map(([name]) => name);

/** One workbook for a file of tests. */
export function demoTrip(): () => OpenTrip {
  let book: OpenTrip;
  beforeAll(async () => {
    book = await openTrip();
  }, 300_000);
  afterAll(() => book.dispose());
  return () => book;
}

export function trySlips(slips: readonly Slip[]): void {
  const book = demoTrip();
  describe('a slip or a bad day', () => {
    it.each(slips)('%s', async (_what, typed, item, least, piece) => {
      const seen = await book().seenWith(typed);
      const told = seen.items.get(item) ?? { word: '', reason: 'no such item' };
      expect({
        verdict: weight(seen.verdict) >= weight(least),
        told: weight(told.word) >= weight(least),
        reason: told.reason,
        unsaid: unsaid(seen),
      }).toEqual({
        verdict: true,
        told: true,
        reason: expect.stringContaining(piece) as string,
        unsaid: [],
      });
    });
  });
}
