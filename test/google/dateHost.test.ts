// Dates in the spreadsheet's zone: against the tz database that Node carries, asked without any cache.
import { afterEach, describe, expect, it } from 'vitest';
import { googleDateHost } from '../../addon/google/dateHost';
import { isoDate } from '../../core/basics/civilDate';
import { standardClockIn, wallClockIn } from './double/zoneClock';
import { withDouble, withoutPlatform } from './support';

const hour = 3_600_000;
const day = 24 * hour;

/** The script's zone is Etc/UTC; these lie on both sides of it, of the date line, and of every habit with clocks. */
const zones = [
  'Etc/UTC',
  'Pacific/Kiritimati',
  'Pacific/Pago_Pago',
  'Pacific/Auckland',
  'Pacific/Chatham',
  'Asia/Kolkata',
  'Asia/Kathmandu',
  'America/New_York',
  'America/Los_Angeles',
  'Europe/Paris',
  'Australia/Lord_Howe',
  'America/St_Johns',
];

/** Their clocks of 1899 were whole minutes, and other ones, ahead of UTC. */
const inWholeMinutes = new Set(['Pacific/Auckland', 'Pacific/Chatham', 'Australia/Lord_Howe']);

const clockText = ({ year, month, day: date, hours, minutes, seconds }: ReturnType<ReturnType<typeof googleDateHost>['toCivil']>): string =>
  `${isoDate({ year, month, day: date })} ${[hours, minutes, seconds].map((part) => String(part).padStart(2, '0')).join(':')}`;

afterEach(withoutPlatform);

describe.each(zones)('%s', (zone) => {
  it('reads the wall clock of every half hour of a year, and of scattered instants since 1900', () => {
    withDouble(zone);
    const { toCivil } = googleDateHost();
    const instants = [
      ...Array.from({ length: 366 * 48 }, (_, index) => Date.UTC(2026, 0, 1) + (index * hour) / 2),
      ...Array.from({ length: 2000 }, (_, index) => Date.UTC(1900, 0, 1) + index * 36.7 * day),
    ].map((instant) => Math.floor(instant / 1000) * 1000);
    const wrong = instants.filter((instant) => clockText(toCivil(new Date(instant))) !== wallClockIn(zone, instant));
    expect(wrong).toEqual([]);
  });

  it('reads a time of day typed into a cell (30 December 1899) to the second', () => {
    withDouble(zone);
    const { toCivil } = googleDateHost();
    // The platform makes the instant whose wall clock there is the time typed; here it is searched for without the host.
    const around = Date.UTC(1899, 11, 30, 6, 30);
    const instant = Array.from({ length: 31 * 3600 }, (_, second) => around - 15.5 * hour + second * 1000).find(
      (one) => wallClockIn(zone, one) === '1899-12-30 06:30:00',
    );
    expect(instant).toBeDefined();
    expect(toCivil(new Date(instant ?? 0))).toEqual({ year: 1899, month: 12, day: 30, hours: 6, minutes: 30, seconds: 0 });
  });

  it('reads it too where the date service knows no local mean time, by whichever of the two it was made', () => {
    const { utilities } = withDouble(zone);
    utilities.knowsMeanTime = false;
    const typed = Date.UTC(1899, 11, 30, 6, 30);
    const seconds = Array.from({ length: 31 * 3600 }, (_, second) => typed - 15.5 * hour + second * 1000);
    for (const clock of [wallClockIn, standardClockIn]) {
      const instant = seconds.find((one) => clock(zone, one) === '1899-12-30 06:30:00') ?? 0;
      const read = (): unknown => googleDateHost().toCivil(new Date(instant));
      // Where the two clocks are whole minutes apart, nothing tells which of them made it.
      if (inWholeMinutes.has(zone)) expect(read).toThrow('two readings');
      else expect(read()).toMatchObject({ day: 30, hours: 6, minutes: 30, seconds: 0 });
    }
  });

  it('gives the first instant of each day of three years', () => {
    withDouble(zone);
    const { fromCivil, toCivil } = googleDateHost();
    for (let number = 0; number < 3 * 365; number += 1) {
      const at = new Date(Date.UTC(2025, 0, 1) + number * day);
      const wanted = { year: at.getUTCFullYear(), month: at.getUTCMonth() + 1, day: at.getUTCDate() };
      const given = fromCivil(wanted);
      expect(wallClockIn(zone, given.getTime())).toBe(`${isoDate(wanted)} 00:00:00`);
      // No earlier instant shows that day.
      expect(wallClockIn(zone, given.getTime() - 1000) < isoDate(wanted)).toBe(true);
      expect(toCivil(given)).toMatchObject(wanted);
    }
  });
});

describe('a time with two readings', () => {
  it('is refused, not guessed', () => {
    const { utilities } = withDouble('Europe/Paris');
    utilities.knowsMeanTime = false;
    const dates = googleDateHost();
    const withSeconds = new Date(Date.UTC(1899, 11, 30, 5, 30, 15));
    expect(() => dates.toCivil(withSeconds)).toThrow('a time with two readings in Europe/Paris; type it as text, such as 1430');
    expect(dates.failure()).toContain('two readings');
    utilities.knowsMeanTime = true;
    expect(clockText(googleDateHost().toCivil(withSeconds))).toBe('1899-12-30 05:39:36');
  });
});

describe('days that begin oddly', () => {
  it.each([
    ['America/Sao_Paulo', '2017-10-15', '2017-10-15 01:00:00', 'midnight skipped'],
    ['Asia/Beirut', '2024-03-31', '2024-03-31 01:00:00', 'midnight skipped'],
    ['Africa/Cairo', '2024-04-26', '2024-04-26 01:00:00', 'midnight skipped'],
    ['America/Havana', '2026-11-01', '2026-11-01 00:00:00', 'midnight twice'],
    ['America/Sao_Paulo', '2018-02-18', '2018-02-18 00:00:00', 'the hour before midnight twice'],
    ['Pacific/Apia', '2011-12-31', '2011-12-31 00:00:00', 'the day after one that never was'],
  ])('%s %s: %s (%s)', (zone, iso, first) => {
    withDouble(zone);
    const [year = 0, month = 0, date = 0] = iso.split('-').map(Number);
    const instant = googleDateHost().fromCivil({ year, month, day: date }).getTime();
    expect(wallClockIn(zone, instant)).toBe(first);
    expect(wallClockIn(zone, instant - 1000) < first).toBe(true);
    expect(wallClockIn(zone, instant - 1000).startsWith(iso)).toBe(false);
  });

  // The zones that left an offset and came back within the shortest times (see zoneOffsets.ts).
  it.each([
    ['America/Noronha', 2000],
    ['America/Boa_Vista', 2000],
    ['America/Fortaleza', 2000],
    ['America/Argentina/Tucuman', 2004],
    ['Africa/Cairo', 2010],
    ['Asia/Hebron', 2011],
    ['Africa/Tunis', 1943],
    ['Europe/Vienna', 1945],
    ['Africa/Casablanca', 2012],
    ['Pacific/Apia', 2011],
    ['Asia/Pyongyang', 2015],
  ])('%s in %i, every three hours', (zone, year) => {
    withDouble(zone);
    const { toCivil } = googleDateHost();
    const instants = Array.from({ length: 366 * 8 }, (_, index) => Date.UTC(year, 0, 1) + index * 3 * hour);
    expect(instants.filter((instant) => clockText(toCivil(new Date(instant))) !== wallClockIn(zone, instant))).toEqual([]);
  });
});

describe('what is asked of the platform', () => {
  it('nothing, until a date is there', () => {
    const { recorder } = withDouble('Europe/Paris');
    googleDateHost();
    expect(recorder.calls).toEqual([]);
  });

  it('the zone once, and for 10,000 dates of 27 years no more than 2,300 questions', () => {
    const { recorder } = withDouble('America/New_York');
    recorder.mode = 'CUSTOM_FUNCTION';
    const { toCivil } = googleDateHost();
    for (let number = 0; number < 10_000; number += 1) toCivil(new Date(Date.UTC(2000, 0, 1, 5) + number * day));
    expect(recorder.calls.filter(({ name }) => name === 'Spreadsheet.getSpreadsheetTimeZone')).toHaveLength(1);
    const questions = recorder.calls.filter(({ name }) => name === 'Utilities.formatDate').length;
    console.log(`10,000 different dates over 27 years: ${questions} questions`);
    expect(questions).toBeLessThanOrEqual(2300);
  });

  it('a handful, for 10,000 dates of one season', () => {
    const { recorder } = withDouble('America/New_York');
    const { toCivil } = googleDateHost();
    for (let number = 0; number < 10_000; number += 1) toCivil(new Date(Date.UTC(2026, 5, 1, 4) + (number % 90) * day));
    expect(recorder.calls.filter(({ name }) => name === 'Utilities.formatDate').length).toBeLessThan(40);
  });

  it('remembers a failure, and does not ask again', () => {
    const double = withDouble('Etc/UTC');
    double.recorder.failAt = 1;
    double.recorder.mode = 'CUSTOM_FUNCTION';
    const host = googleDateHost();
    expect(() => host.toCivil(new Date(0))).toThrow('Service Spreadsheets failed');
    const calls = double.recorder.calls.length;
    expect(() => host.fromCivil({ year: 2026, month: 1, day: 22 })).toThrow('Service Spreadsheets failed');
    expect(double.recorder.calls.length).toBe(calls);
    expect(host.failure()).toContain('Service Spreadsheets failed');
  });
});

describe('with no platform at all', () => {
  const zoneBefore = process.env.TZ;
  afterEach(() => {
    if (zoneBefore === undefined) delete process.env.TZ;
    else process.env.TZ = zoneBefore;
  });

  it.each(['Pacific/Auckland', 'America/Los_Angeles', 'Etc/UTC'])('means dates by the zone of the runtime: %s', (zone) => {
    process.env.TZ = zone;
    const host = googleDateHost();
    expect(host.toCivil(new Date(2026, 0, 22))).toEqual({ year: 2026, month: 1, day: 22, hours: 0, minutes: 0, seconds: 0 });
    expect(host.fromCivil({ year: 2026, month: 7, day: 1 }).getTime()).toBe(new Date(2026, 6, 1).getTime());
  });
});
