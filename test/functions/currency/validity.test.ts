// Validity at the functions' own door: boundaries, short months, birthdays, and what is refused.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, call, day, plain, sentenceOf } from '../../support/call';

describe('VALID_THROUGH', () => {
  it.each([
    ['2023-08-31', 6, 'day', '2024-02-29'],
    ['2024-02-29', 12, 'day', '2025-02-28'],
    ['2024-02-29', 48, 'day', '2028-02-29'],
    ['2023-12-01', 1, 'month end', '2024-01-31'],
  ])('%s and %s months by %s: %s', (done, months, rule, through) => {
    // By the calendar, worked by hand.
    expect(plain(call('VALID_THROUGH', day(done), months, rule))).toBe(through);
  });

  it('never ends before the same day of the month by the other rule, and always on the last of a month', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40_000 }), fc.integer({ min: 1, max: 120 }), (days, months) => {
        const done = new Date(days * 86_400_000);
        const sameDay = call('VALID_THROUGH', done, months, 'day') as Date;
        const monthEnd = call('VALID_THROUGH', done, months) as Date;
        const monthsOn = (date: Date): number => date.getUTCFullYear() * 12 + date.getUTCMonth();
        expect(monthsOn(sameDay)).toBe(monthsOn(done) + months);
        expect(monthsOn(monthEnd)).toBe(monthsOn(sameDay));
        expect(sameDay.getUTCDate()).toBe(Math.min(done.getUTCDate(), monthEnd.getUTCDate()));
        expect(new Date(monthEnd.getTime() + 86_400_000).getUTCDate()).toBe(1);
      }),
    );
  });
});

describe('MEDICAL_THROUGH', () => {
  const through = (...given: unknown[]) => plain(call('MEDICAL_THROUGH', ...given));

  it('refuses a privilege that the class does not give', () => {
    expect(sentenceOf('MEDICAL_THROUGH', '2020-08-10', '1984-02-03', 3, 'commercial')).toBe(
      'MEDICAL_THROUGH: class must be one that gives the privilege commercial under FAA rules; got "3".',
    );
    expect(sentenceOf('MEDICAL_THROUGH', '2020-08-10', '1984-02-03', 2, 'atp')).toContain('privilege atp under FAA rules; got "2".');
    expect(sentenceOf('MEDICAL_THROUGH', '2020-08-10', '1984-02-03', 'LAPL', 'private')).toContain('under FAA rules; got "LAPL".');
    expect(sentenceOf('MEDICAL_THROUGH', '2020-08-10', '1984-02-03', 3, 'private', 'EASA')).toContain('under EASA rules; got "3".');
    expect(sentenceOf('MEDICAL_THROUGH', '2020-08-10', '1984-02-03', 2, 'commercial', 'EASA')).toContain('under EASA rules; got "2".');
  });

  it('refuses a date of birth that makes no pilot', () => {
    expect(sentenceOf('MEDICAL_THROUGH', '2020-08-10', '2019-02-03', 3, 'private')).toBe(
      'MEDICAL_THROUGH: birth_date must be at least 14 years before exam_date (2020-08-10); got 2019-02-03.',
    );
  });

  it('knows pilots born before 1950, and reads the class as a number or a word', () => {
    expect(through('2020-08-10', '1931-02-03', '3', 'PPL')).toBe('2022-08-31');
    expect(through('2020-08-10', day('1984-02-03'), 'first', 'ATP')).toBe('2021-08-31');
  });

  it('counts the birthday itself as the age, 29 February as the 28th', () => {
    expect(through('2021-02-27', '1981-02-28', 3, 'private')).toBe('2026-02-28');
    expect(through('2021-02-28', '1981-02-28', 3, 'private')).toBe('2023-02-28');
    // Born 29 February 1980, class 2 of 2018: over at the 42nd birthday, in 2022 taken as 28 February (the stricter).
    expect(through('2018-06-15', '1980-02-29', 2, 'private', 'EASA')).toBe('2022-02-27');
  });

  it('shortens a European class 1 when the age is reached between two examinations, never below six months', () => {
    // 60 on 1 October 2020: five months after the examination, so the six months hold.
    expect(through('2020-05-04', '1960-10-01', 1, 'atp', 'EASA')).toBe('2020-11-04');
    // 60 on 1 January 2021: longer than six months, less than twelve.
    expect(through('2020-05-04', '1961-01-01', 1, 'atp', 'EASA')).toBe('2020-12-31');
    expect(through('2020-05-04', '1961-06-01', 1, 'atp', 'EASA')).toBe('2021-05-04');
  });

  it('a younger pilot is never given a shorter time', () => {
    const births = fc.integer({ min: -25_000, max: 12_000 });
    const combinations = fc.constantFrom<unknown[][]>(
      [1, 'atp', 'FAA'],
      [1, 'private', 'FAA'],
      [2, 'commercial', 'FAA'],
      [1, 'atp', 'EASA'],
      [1, 'commercial', 'EASA'],
      [2, 'private', 'EASA'],
      ['LAPL', 'private', 'EASA'],
    );
    fc.assert(
      fc.property(births, births, combinations, (one, other, combination) => {
        const of = (days: number): number => (call('MEDICAL_THROUGH', '2020-05-04', new Date(days * 86_400_000), ...combination) as Date).getTime();
        expect(of(Math.max(one, other))).toBeGreaterThanOrEqual(of(Math.min(one, other)));
      }),
    );
  });
});

describe('DUE_STATUS', () => {
  const status = (...given: unknown[]) => answer('DUE_STATUS', ...given);

  it.each([
    ['2026-03-01', 'CHECK', 30],
    ['2026-02-28', 'OK', 31],
    ['2026-03-31', 'CHECK', 0],
    ['2026-04-01', 'NO', -1],
  ])('due on 31 March, seen on %s: %s', (asOf, verdict, daysLeft) => {
    expect(status('2026-03-31', asOf)).toEqual({ verdict, days_left: daysLeft });
  });

  it('is UNKNOWN of nothing recorded, and warns as early as asked', () => {
    expect(status('', '2026-03-31')).toEqual({ verdict: 'UNKNOWN', days_left: '' });
    expect(status('2026-03-31', '2026-03-31', 0)).toEqual({ verdict: 'CHECK', days_left: 0 });
    expect(status('2026-03-31', '2026-03-30', 0)).toEqual({ verdict: 'OK', days_left: 1 });
  });
});
