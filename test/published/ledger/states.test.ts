// The diary and the states of cards against published tables of effective dates, transcribed by hand.
import { describe, expect, it } from 'vitest';
import { call, plain } from '../../support/call';

const loads = (series: string, from: string, months: number): string[] =>
  (call('LEDGER_DIARY', [['North']], [['data']], [[series]], from, months) as unknown[][]).map((row) => String(plain(row[2])));
const dayBefore = (iso: string): string => new Date(Date.parse(iso) - 86_400_000).toISOString().slice(0, 10);
/** Loaded and looked at on the day before it came into force. */
const verdict = (series: string, effective: string, asOf: string): unknown =>
  ((call('LEDGER_STATUS', [['North']], [['data']], [[series]], [[effective]], [[dayBefore(effective)]], asOf, '', 0) as unknown[][])[0] ?? [])[0];

// CY-01, R: AIRAC dates of 2020, Polish AIS. CY-05, D and R for 2403, 2406, 2409, 2412: 2024, Airservices Australia.
const airac2020 = '2020-01-02 2020-01-30 2020-02-27 2020-03-26 2020-04-23 2020-05-21 2020-06-18 2020-07-16 2020-08-13 2020-09-10 2020-10-08 2020-11-05 2020-12-03 2020-12-31'.split(' ');
const airac2024 = '2024-01-25 2024-02-22 2024-03-21 2024-04-18 2024-05-16 2024-06-13 2024-07-11 2024-08-08 2024-09-05 2024-10-03 2024-10-31 2024-11-28 2024-12-26'.split(' ');
// CY-11, R: FAA cut-off dates, effective dates every 56 days.
const charts = '2023-08-10 2023-10-05 2023-11-30 2024-01-25 2024-03-21 2024-05-16 2024-07-11 2024-09-05 2024-10-31 2024-12-26 2025-02-20 2025-04-17 2025-06-12 2025-08-07'.split(' ');

describe.each([
  ['28-day', '2020-01-01', 12, airac2020],
  ['28-day', '2024-01-01', 12, airac2024],
  ['56-day', '2023-08-01', 25, charts],
] as const)('%s from %s', (series, from, months, dates) => {
  it('the diary lists the published dates and no other', () => expect(loads(series, from, months)).toEqual(dates));

  it('a card is current from its date to the day before the next, and on neither side', () => {
    for (const [index, date] of dates.slice(0, -1).entries()) {
      const next = dates[index + 1] ?? '';
      expect([dayBefore(date), date, dayBefore(next), next].map((day) => verdict(series, date, day))).toEqual(['UNKNOWN', 'OK', 'OK', 'NO']);
    }
  });
});

it('gives each published date its published identifier', () => {
  const rows = call('LEDGER_DIARY', [['North']], [['data']], [['28-day']], '2020-01-01', 12) as unknown[][];
  expect(rows.map((row) => /cycle (\d{4})/.exec(String(row[6]))?.[1])).toEqual(airac2020.map((_, index) => `20${String(index + 1).padStart(2, '0')}`));
});
