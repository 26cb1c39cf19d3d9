// The load list against the cards' own standings: no card that is out of date is missing, none that is in order is listed but for its next visit.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airacSeries, knownSeries } from '../../../core/ledger/cycles';
import { cardsDue, type DueCard } from '../../../core/ledger/due';
import { changeAfter, changeOnOrBefore, changesWithin, canBegin, type DataSeries, type ListedSeries } from '../../../core/ledger/series';
import { cardStandings } from '../../../core/ledger/states';
import type { Instant } from '../../../core/basics/civilDate';

const named = (name: string) => ({ name, key: name.toLowerCase() });
/** Greenwich, and zones on both sides of it. */
const clockIn = (offsetMinutes: number) => (instant: Instant) => {
  const minutes = instant.utcMilliseconds / 60_000 + offsetMinutes;
  return { day: Math.floor(minutes / 1440), minutes: ((minutes % 1440) + 1440) % 1440 };
};
const asOf = 20_000;
const listed: ListedSeries = { kind: 'listed', name: 'dates of terrain', listed: [19_900, 19_990, 20_013, 20_077] };
const open = { kind: 'as issued', name: 'as issued' } as const;

const seriesOf: fc.Arbitrary<DataSeries> = fc.constantFrom<DataSeries>(...knownSeries, listed, open, { kind: 'no end', name: 'no end' });
const cards = fc.array(
  fc.record({
    aircraft: fc.constantFrom('North', 'South', 'West').map(named),
    unit: fc.constantFrom('left', 'right').map(named),
    database: fc.constantFrom('navigation', 'terrain').map(named),
    person: fc.constantFrom('Ada', 'Bo').map(named),
    series: seriesOf,
    back: fc.integer({ min: -1, max: 3 }),
    changesAtMinutes: fc.constantFrom(0, 541),
    isVerified: fc.boolean(),
    isLoaded: fc.boolean(),
  }),
  { maxLength: 12 },
);

/** The change so many changes before the day's, or one after it. */
function effectiveOf(series: DataSeries, back: number): number {
  if ('kind' in series && series.kind !== 'listed') return asOf - 300;
  const all = changesWithin(series, asOf - 300, asOf + 100);
  const at = all.filter((day) => day <= asOf).length - 1 - back;
  return all[Math.max(0, at)] ?? asOf;
}

describe('the load list', () => {
  it('holds every card that is out of date, and each aircraft by its next visit', () => {
    fc.assert(
      fc.property(cards, fc.constantFrom(-600, 0, 600), (drawn, zone) => {
        const clockAt = clockIn(zone);
        const fleet = drawn.map(({ back, isVerified, isLoaded, ...card }): DueCard => {
          const day = effectiveOf(card.series, back);
          const loadedOnDay = Math.min(day, asOf);
          return { ...card, loadedDay: isLoaded ? day : undefined, loadedOnDay, verified: isVerified ? { day: loadedOnDay } : 'no' };
        });
        const due = cardsDue(fleet, [], asOf, clockAt);
        const standings = cardStandings(fleet, [], asOf, 0, clockAt);
        fleet.forEach((card, index) => {
          const own = due.filter((one) => one.card === card);
          const kinds = standings[index]?.findings.map(({ kind }) => kind) ?? [];
          expect(own.some(({ when }) => when === 'overdue')).toBe(kinds.includes('out-of-date'));
          if (standings[index]?.verdict === 'OK') expect(own.every(({ when }) => when === 'next')).toBe(true);
          if (card.loadedDay === undefined) expect(own.some(({ when }) => when === 'now')).toBe(true);
          for (const { when, effectiveDay } of own) {
            if (effectiveDay === undefined) continue;
            expect(canBegin(effectiveDay, card.series ?? airacSeries)).toBe(true);
            const moment = clockAt({ utcMilliseconds: effectiveDay * 86_400_000 + (card.changesAtMinutes ?? 0) * 60_000 });
            expect(moment.day > asOf).toBe(when === 'next');
            // Nothing that is on the card already is loaded again.
            if (card.loadedDay !== undefined) expect(effectiveDay).toBeGreaterThan(card.loadedDay);
            const newer = when === 'next' ? undefined : changeAfter(effectiveDay, card.series ?? airacSeries);
            if (newer !== undefined)
              expect(clockAt({ utcMilliseconds: newer * 86_400_000 + (card.changesAtMinutes ?? 0) * 60_000 }).day).toBeGreaterThan(asOf);
          }
        });
        for (const aircraft of ['north', 'south', 'west']) {
          const visits = due.filter(({ when, card, from }) => when === 'next' && card.aircraft?.key === aircraft && from !== undefined);
          expect(new Set(visits.map(({ from }) => from?.utcMilliseconds)).size).toBeLessThan(2);
        }
        const words = due.map(({ when }) => ['overdue', 'now', 'next'].indexOf(when));
        expect([...words].sort()).toEqual(words);
      }),
      { numRuns: 1500 },
    );
  });
});

describe('a list of dates', () => {
  it('knows no change behind its last, and none before its first', () => {
    expect([changeAfter(20_077, listed), changeAfter(20_076, listed), changeOnOrBefore(19_899, listed), changeOnOrBefore(20_000, listed)]).toEqual([
      undefined,
      20_077,
      undefined,
      19_990,
    ]);
  });
});
