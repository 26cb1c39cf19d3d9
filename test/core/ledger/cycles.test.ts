// The calendar of cycles, against stepping by hand from another published date, and its own inverses.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDateFromDayNumber, dayNumber, isoDate } from '../../../core/basics/civilDate';
import {
  airacIdentifier,
  airacSeries,
  cyclesInYear,
  effectiveAfter,
  effectiveOfIdentifier,
  effectiveOnOrAfter,
  effectiveOnOrBefore,
  identifierInSeries,
  isEffectiveDate,
  knownSeries,
  type CycleSeries,
} from '../../../core/ledger/cycles';

const dayOf = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;
const iso = (day: number): string => new Date(day * 86_400_000).toISOString().slice(0, 10);
const named = (name: string): CycleSeries => knownSeries.find((series) => series.name === name) ?? airacSeries;

describe('AIRAC dates 1998 to 2060', () => {
  // 29 January 1998 is published (checked against national calendars); the days are stepped without our arithmetic.
  const stepped: { day: number; id: string }[] = [];
  let year = 1998;
  let inYear = 1;
  for (let day = dayOf('1998-01-29') - 28; iso(day) < '2061'; day += 28) {
    const yearOfDay = Number(iso(day).slice(0, 4));
    inYear = yearOfDay === year ? inYear : 1;
    year = yearOfDay;
    stepped.push({ day, id: `${String(year % 100).padStart(2, '0')}${String(inYear).padStart(2, '0')}` });
    inYear += 1;
  }

  it('are all Thursdays, and count 822', () => {
    // 1 January 1998 to 31 December 2060 is 23,011 days, which hold 822 steps of 28 days.
    expect(stepped.length).toBe(822);
    expect(stepped.filter(({ day }) => new Date(day * 86_400_000).getUTCDay() !== 4)).toEqual([]);
  });

  it('agree day by day', () => {
    for (const { day, id } of stepped) {
      expect(iso(effectiveOnOrBefore(day, airacSeries))).toBe(iso(day));
      expect(iso(effectiveOnOrBefore(day + 27, airacSeries))).toBe(iso(day));
      expect(iso(effectiveAfter(day - 1, airacSeries))).toBe(iso(day));
      expect(iso(effectiveAfter(day, airacSeries))).toBe(iso(day + 28));
      expect(airacIdentifier(day)).toBe(id);
      expect(airacIdentifier(day + 27)).toBe(id);
      expect(iso(effectiveOfIdentifier(id))).toBe(iso(day));
    }
  });
});

describe('years of fourteen cycles', () => {
  it('are 1976, 1998, 2020 and 2043', () => {
    const years = Array.from({ length: 100 }, (_, index) => 1964 + index).filter((year) => cyclesInYear(year) === 14);
    expect(years).toEqual([1976, 1998, 2020, 2043]);
  });

  it.each(['2114', '2100', '2015', '9714', '2699'])('no cycle %s', (identifier) => {
    expect(() => effectiveOfIdentifier(identifier)).toThrow(expect.objectContaining({ code: 'cycle-unknown' }));
  });

  it('says how many cycles the year has', () => {
    expect(() => effectiveOfIdentifier('2614')).toThrow(expect.objectContaining({ detail: { identifier: '2614', cyclesInYear: 13 } }));
    expect(() => effectiveOfIdentifier('2015')).toThrow(expect.objectContaining({ detail: { identifier: '2015', cyclesInYear: 14 } }));
  });
});

describe('identifiers', () => {
  it('are read as 1964 to 2063', () => {
    expect(iso(effectiveOfIdentifier('6401')).slice(0, 4)).toBe('1964');
    expect(iso(effectiveOfIdentifier('9901')).slice(0, 4)).toBe('1999');
    expect(iso(effectiveOfIdentifier('0001')).slice(0, 4)).toBe('2000');
    expect(iso(effectiveOfIdentifier('6301')).slice(0, 4)).toBe('2063');
  });

  it('are not given where two digits would name another century', () => {
    expect(airacIdentifier(dayOf('1963-06-01'))).toBeUndefined();
    expect(airacIdentifier(dayOf('2064-06-01'))).toBeUndefined();
  });

  it('belong to the year in which the cycle began', () => {
    // 2013 began on 3 December 2020, 2014 on the 31st, 2101 on 28 January 2021 (Polish AIS calendar).
    expect(airacIdentifier(dayOf('2021-01-27'))).toBe('2014');
    expect(airacIdentifier(dayOf('2021-01-28'))).toBe('2101');
    expect(airacIdentifier(dayOf('2020-01-01'))).toBe('1913');
  });
});

describe('other series', () => {
  it('56-day dates are every second AIRAC date, and their numbers change parity after a year of thirteen', () => {
    const dates = Array.from({ length: 20 }, (_, index) => effectiveAfter(dayOf('2023-08-09'), named('56-day'), index + 1));
    expect(dates.every((day) => isEffectiveDate(day, airacSeries))).toBe(true);
    // 10 August 2023 is 2308 and 25 January 2024 is 2401 (FAA cut-off dates; numbers counted on the published lists).
    expect(dates.slice(0, 4).map((day) => identifierInSeries(day, named('56-day')))).toEqual(['2308', '2310', '2312', '2401']);
  });

  it('14-day dates have identifiers on AIRAC dates only', () => {
    const first = dayOf('2020-12-31');
    const dates = [0, 14, 28].map((days) => first + days);
    expect(dates.every((day) => isEffectiveDate(day, named('14-day')))).toBe(true);
    expect(dates.map((day) => identifierInSeries(day, named('14-day')))).toEqual(['2014', '', '2101']);
  });

  it("an owner's own series has no identifiers, even on an AIRAC date", () => {
    const own = { name: '28 from 2020-12-31', days: 28, phaseDay: dayOf('2020-12-31'), identified: false };
    expect(identifierInSeries(dayOf('2021-01-28'), own)).toBe('');
  });
});

describe('for any day and series', () => {
  const days = fc.integer({ min: dayOf('1950-01-01'), max: dayOf('2100-12-31') });
  const anySeries = fc.oneof(
    fc.constantFrom(...knownSeries),
    fc.record({ name: fc.constant('own'), days: fc.integer({ min: 1, max: 366 }), phaseDay: days, identified: fc.constant(false) }),
  );

  it('the current date is on or before, the next strictly after, and one interval lies between', () => {
    fc.assert(
      fc.property(days, anySeries, (day, series) => {
        const current = effectiveOnOrBefore(day, series);
        const next = effectiveAfter(day, series);
        expect(current).toBeLessThanOrEqual(day);
        expect(next).toBeGreaterThan(day);
        expect(next - current).toBe(series.days);
        expect(Math.abs((current - series.phaseDay) % series.days)).toBe(0);
        expect(effectiveOnOrAfter(day, series)).toBe(current === day ? day : next);
      }),
    );
  });

  it('the third next is the next of the next of the next', () => {
    fc.assert(
      fc.property(days, anySeries, (day, series) => {
        const step = (from: number): number => effectiveAfter(from, series);
        expect(effectiveAfter(day, series, 3)).toBe(step(step(step(day))));
      }),
    );
  });

  it('identifier and date are each other’s inverse', () => {
    fc.assert(
      fc.property(fc.integer({ min: dayOf('1964-02-01'), max: dayOf('2063-12-31') }), (day) => {
        const effective = effectiveOfIdentifier(airacIdentifier(day) ?? '');
        expect(effective).toBe(effectiveOnOrBefore(day, airacSeries));
      }),
    );
  });

  it('agrees with the civil calendar of this project', () => {
    fc.assert(
      fc.property(days, (day) => {
        expect(isoDate(civilDateFromDayNumber(day))).toBe(iso(day));
      }),
    );
    expect(dayNumber({ year: 2020, month: 1, day: 2 })).toBe(dayOf('2020-01-02'));
  });
});
