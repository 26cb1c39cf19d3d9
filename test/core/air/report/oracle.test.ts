// Our reader beside another: a library that reads reports and forecasts, which the product does not carry.
import fc from 'fast-check';
import { parseMetar, parseTAF, type IMetar, type ITAF, type TAFTrend } from 'metar-taf-parser';
import { describe, expect, it } from 'vitest';
import type { Conditions } from '../../../../core/air/report/conditions';
import { readMetar } from '../../../../core/air/report/metar';
import { readTaf } from '../../../../core/air/report/taf';
import { forecasts, observations, partialForecasts } from '../../../support/writtenReports';

type Theirs = Pick<IMetar, 'wind' | 'visibility' | 'clouds' | 'verticalVisibility' | 'weatherConditions'>;

/** What the library and our reader both say, in one form. Its own visibilities are in the unit written, miles to two decimals: 8 m. */
function ofTheirs({ wind, visibility, clouds, verticalVisibility, weatherConditions }: Theirs) {
  const metres = visibility === undefined ? undefined : String(visibility.unit) === 'SM' ? visibility.value * 1609.344 : visibility.value;
  return {
    from: wind?.degrees,
    speed: wind?.speed,
    gust: wind?.gust,
    metres: String(visibility?.indicator) === 'P' ? undefined : metres,
    clouds: clouds
      .filter(({ quantity }) => !/SKC|NSC|NCD|CLR/.test(String(quantity)))
      .map(({ quantity, height, type }) => [String(quantity), height ?? 0, String(type ?? '')]),
    vertical: verticalVisibility,
    codes: weatherConditions
      .map(({ intensity, descriptive, phenomenons }) => [String(intensity ?? ''), String(descriptive ?? ''), ...phenomenons.map(String)].join(''))
      .sort(),
  };
}

const perUnit: Readonly<Record<string, number>> = { KT: 1, MPS: 3600 / 1852, KMH: 1000 / 1852 };

function ofOurs({ wind, visibility, clouds, weather }: Conditions, unit: string) {
  const speed = (knots: number | undefined): number | undefined => (knots === undefined ? undefined : Math.round(knots / (perUnit[unit] ?? 1)));
  const layers = clouds ?? [];
  return {
    from: wind?.fromDegrees,
    speed: speed(wind?.knots),
    gust: speed(wind?.gustKnots),
    metres: visibility?.metres,
    clouds: layers.filter(({ amount }) => amount !== 'VV').map(({ amount, feet, kind }) => [String(amount), feet, kind]),
    vertical: layers.find(({ amount }) => amount === 'VV')?.feet,
    codes: [...(weather ?? [])].sort(),
  };
}

const unitOf = (words: readonly string[]): string => /(KT|MPS|KMH)$/.exec(words.find((word) => /(KT|MPS|KMH)$/.test(word)) ?? '')?.[1] ?? 'KT';
/** The library has kilometres an hour by another name, knows one vertical visibility, leaves a height of 000 out, and of M1/4SM keeps the quarter. */
const isShared = (words: readonly string[]): boolean =>
  !words.some((word) => /KMH$|^M1/.test(word)) &&
  words.filter((word) => word.startsWith('VV')).length <= 1 &&
  words.filter((word) => word === 'NSC').length <= 1;

describe('our reader and the library', () => {
  it('say the same of 4,000 reports', () => {
    fc.assert(
      fc.property(observations, ({ words }) => {
        fc.pre(isShared(words));
        const text = `METAR ZZXA 281350Z ${words.join(' ')}`;
        const { observed } = readMetar(text);
        const theirs = parseMetar(text);
        const [mine, other] = [ofOurs(observed, unitOf(words)), ofTheirs(theirs)];
        expect(mine).toEqual({ ...other, metres: mine.metres });
        if (other.metres !== undefined) expect(mine.metres).toBeCloseTo(other.metres === 9999 ? 10_000 : other.metres, -1.3);
        expect(observed.temperatureCelsius).toBe((theirs.temperature ?? NaN) + 0);
        expect(observed.dewPointCelsius).toBe((theirs.dewPoint ?? NaN) + 0);
      }),
      { numRuns: 4000, seed: 105 },
    );
  });

  it('say the same of the groups of 1,500 forecasts', () => {
    fc.assert(
      fc.property(forecasts, partialForecasts, partialForecasts, forecasts, (...parts) => {
        fc.pre(parts.every(({ words }) => isShared(words)));
        const [base, becoming, temporary, from] = parts.map(({ words }) => words.join(' '));
        const text = `TAF ZZXA 281100Z 2812/2918 ${base ?? ''} BECMG 2816/2818 ${becoming ?? ''} TEMPO 2820/2824 ${temporary ?? ''} FM290630 ${from ?? ''}`;
        const theirs: ITAF = parseTAF(text);
        const groups: (ITAF | TAFTrend)[] = [theirs, ...theirs.trends];
        const ours = readTaf(text).groups;
        expect(ours).toHaveLength(groups.length);
        groups.forEach((group, index) => {
          const mine = ofOurs(ours[index]?.conditions ?? { unread: [] }, unitOf(parts[index]?.words ?? []));
          const other = ofTheirs(group);
          expect({ from: mine.from, speed: mine.speed, gust: mine.gust, clouds: mine.clouds }).toEqual({
            from: other.from,
            speed: other.speed,
            gust: other.gust,
            clouds: other.clouds,
          });
          if (other.metres !== undefined) expect(mine.metres).toBeCloseTo(other.metres === 9999 ? 10_000 : other.metres, -1.3);
        });
      }),
      { numRuns: 1500, seed: 106 },
    );
  });
});
