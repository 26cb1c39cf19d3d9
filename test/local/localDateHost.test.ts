// Moments of UTC as the local workbook shows them: on the clock of the machine, whichever zone that is in.
import { afterEach, expect, it } from 'vitest';
import { localDateHost } from '../../addon/local/engine/localDateHost';
import { isoFromSerial, serialFromDate } from '../../addon/workbook/serialDates';
import { instantOf, dayNumber } from '../../core/basics/civilDate';

const zone = process.env.TZ;
afterEach(() => {
  process.env.TZ = zone;
});

// By hand: UTC-10 all year, UTC+14 all year; UTC+1 in winter and UTC+2 in summer.
it.each([
  ['Pacific/Honolulu', '2026-11-25', 14],
  ['Pacific/Kiritimati', '2026-11-26', 14],
  ['Europe/Paris', '2026-11-26', 1],
])('%s', (name, day, hour) => {
  process.env.TZ = name;
  const shown = localDateHost.fromInstant(instantOf(dayNumber({ year: 2026, month: 11, day: 26 }), 0));
  expect(isoFromSerial(Math.floor(serialFromDate(shown)))).toBe(day);
  expect(localDateHost.toCivil(shown)).toMatchObject({ hours: hour, minutes: 0 });
});

it('follows summer time', () => {
  process.env.TZ = 'Europe/Paris';
  expect(localDateHost.toCivil(localDateHost.fromInstant(instantOf(dayNumber({ year: 2026, month: 7, day: 9 }), 541)))).toMatchObject({
    hours: 11,
    minutes: 1,
  });
});
