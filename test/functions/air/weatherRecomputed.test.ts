// The verdict of random reports and forecasts under random limits, beside the same worked out from what they were meant to say.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { answer, day } from '../../support/call';
import { forecasts, observations, partialForecasts, type Meaning } from '../../support/writtenReports';

const words = ['OK', 'CHECK', 'UNKNOWN', 'NO'] as const;
type Word = (typeof words)[number];
const worst = (parts: readonly Word[]): Word => parts.reduce((one, other) => (words.indexOf(other) > words.indexOf(one) ? other : one), 'OK');

function ofWeather(group: string): Word {
  const near = group.startsWith('VC');
  const codes: readonly string[] = group.replace(/^[-+]|^VC/, '').match(/../g) ?? [];
  const has = (...wanted: string[]): boolean => wanted.some((code) => codes.includes(code));
  if (near) return has('FC', 'VA') ? 'NO' : has('SH') ? 'OK' : 'CHECK';
  if (has('TS', 'GR', 'FC', 'VA', 'SQ', 'PL', 'SS', 'DS') || (has('FZ') && !has('FG'))) return 'NO';
  return group.startsWith('+') || has('FG', 'SN', 'SG', 'GS', 'UP', 'PO', 'BL') ? 'CHECK' : 'OK';
}

interface Limits {
  readonly ceiling: number;
  readonly visibility: number;
  readonly gusts: number;
}

function expected({ clouds = [], metres, orMore = false, gust, knots = 0, weather = [] }: Partial<Meaning>, limits: Limits): Word {
  const ceilings = clouds.filter(([amount]) => ['BKN', 'OVC', 'VV'].includes(amount)).map(([, feet]) => feet);
  return worst([
    Math.min(Infinity, ...ceilings) < limits.ceiling ? 'NO' : 'OK',
    clouds.some(([, , kind]) => kind !== '') ? 'CHECK' : 'OK',
    metres === undefined || metres >= limits.visibility ? 'OK' : orMore ? 'CHECK' : 'NO',
    gust !== undefined && gust - knots > limits.gusts + 1e-9 ? 'NO' : 'OK',
    ...weather.map(ofWeather),
  ]);
}

const anyLimits = fc.record({
  ceiling: fc.integer({ min: 0, max: 50 }).map((hundreds) => hundreds * 100),
  visibility: fc.integer({ min: 0, max: 120 }).map((hundreds) => hundreds * 100),
  gusts: fc.integer({ min: 0, max: 30 }),
});
const asRows = ({ ceiling, visibility, gusts }: Limits): unknown[][] => [
  ['minimum ceiling', ceiling],
  ['minimum visibility', visibility],
  ['maximum gust spread', gusts],
];

it('of 1,500 reports is what their meaning says', () => {
  fc.assert(
    fc.property(observations, anyLimits, fc.integer({ min: 0, max: 90 }), ({ words: groups, meaning }, limits, age) => {
      const time = `${String(Math.floor((830 + age) / 60))}:${String((830 + age) % 60).padStart(2, '0')}`;
      const got = answer('WEATHER_BRIEF', 'ZZXA', `METAR ZZXA 281350Z ${groups.join(' ')}`, '', day('2026-11-28'), time, 'departure', asRows(limits));
      expect(got.verdict, String(got.reason)).toBe(expected(meaning, limits));
      expect(got.age_minutes).toBe(age);
    }),
    { numRuns: 1500, seed: 201 },
  );
});

it('of 1,500 forecasts is what the groups say that can be in force', () => {
  const hours = fc.tuple(fc.integer({ min: 12, max: 22 }), fc.integer({ min: 1, max: 6 }));
  fc.assert(
    fc.property(
      forecasts,
      partialForecasts,
      partialForecasts,
      forecasts,
      anyLimits,
      hours,
      hours,
      fc.integer({ min: 16, max: 22 }),
      fc.integer({ min: 13, max: 24 }),
      (base, tempo, prob, later, limits, [tempoFrom, tempoLength], [probFrom, probLength], use, change) => {
        const [tempoTo, probTo, changes] = [Math.min(24, tempoFrom + tempoLength), Math.min(24, probFrom + probLength), change < 24];
        const taf = [
          `TAF ZZXA 281100Z 2812/2912 ${base.words.join(' ')}`,
          `TEMPO 28${tempoFrom}/28${tempoTo} ${tempo.words.join(' ')}`,
          `PROB30 28${probFrom}/28${probTo} ${prob.words.join(' ')}`,
          ...(changes ? [`FM28${change}00 ${later.words.join(' ')}`] : []),
        ].join('\n');
        const got = answer(
          'WEATHER_BRIEF',
          'ZZXA',
          'METAR ZZXA 281150Z 22012KT CAVOK 18/09 Q1009',
          taf,
          day('2026-11-28'),
          `${use}30Z`,
          'arrival',
          asRows({ ...limits, visibility: Math.min(limits.visibility, 10_000) }),
        );
        // From half past the hour before to half past the hour after, which is the hour of use and the one behind it.
        const [start, end] = [use - 0.5, use + 1.5];
        const judged = (meaning: Partial<Meaning>): Word => expected(meaning, { ...limits, visibility: Math.min(limits.visibility, 10_000) });
        const soft = (word: Word): Word => (word === 'NO' ? 'CHECK' : word);
        const wanted = worst([
          !changes || change > start ? judged(base.meaning) : 'OK',
          changes && change <= end ? judged(later.meaning) : 'OK',
          tempoFrom <= end && tempoTo > start ? judged(tempo.meaning) : 'OK',
          probFrom <= end && probTo > start ? soft(judged(prob.meaning)) : 'OK',
        ]);
        expect(got.verdict, `${taf} for ${use}30Z: ${String(got.reason)}`).toBe(wanted);
      },
    ),
    { numRuns: 1500, seed: 202 },
  );
});
