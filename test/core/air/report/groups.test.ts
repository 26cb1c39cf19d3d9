// Random reports are read back as they were meant, and what is no code word is never passed over.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readMetar } from '../../../../core/air/report/metar';
import { readTaf } from '../../../../core/air/report/taf';
import type { Conditions } from '../../../../core/air/report/conditions';
import { forecasts, isCode, observations, partialForecasts, weatherCodes, type Meaning } from '../../../support/writtenReports';

const head = 'METAR ZZXA 281350Z';

function expectMeaning(read: Conditions, meaning: Partial<Meaning>): void {
  expect(read.unread).toEqual([]);
  if (meaning.knots !== undefined) {
    expect(read.wind?.fromDegrees).toBe(meaning.from);
    expect(read.wind?.isVariable).toBe(meaning.isVariable);
    expect(read.wind?.knots).toBeCloseTo(meaning.knots, 9);
    if (meaning.gust === undefined) expect(read.wind?.gustKnots).toBeUndefined();
    else expect(read.wind?.gustKnots).toBeCloseTo(meaning.gust, 9);
  } else expect(read.wind).toBeUndefined();
  if (meaning.metres !== undefined) {
    expect(read.visibility?.metres).toBeCloseTo(meaning.metres, 9);
    expect(read.visibility?.orMore).toBe(meaning.orMore);
  } else expect(read.visibility).toBeUndefined();
  expect(read.clouds?.map(({ amount, feet, kind }) => [amount, feet, kind])).toEqual(meaning.clouds);
  expect(read.temperatureCelsius).toBe(meaning.temperature);
  expect(read.dewPointCelsius).toBe(meaning.dewPoint);
  if (meaning.hectopascals !== undefined) expect(read.altimeterHectopascals).toBeCloseTo(meaning.hectopascals, 6);
}

describe('a report', () => {
  it('of random groups says what was meant', () => {
    fc.assert(
      fc.property(observations, ({ words, meaning }) => {
        const { observed } = readMetar([head, ...words].join(' '));
        expectMeaning(observed, meaning);
        expect(observed.weather).toEqual(meaning.weather);
      }),
      { numRuns: 5000, seed: 101 },
    );
  });

  it('says the same in any order of its groups', () => {
    fc.assert(
      fc.property(observations, fc.array(fc.nat(), { minLength: 12, maxLength: 12 }), ({ words, meaning }, keys) => {
        const shuffled = words.map((word, index) => ({ word, key: keys[index] ?? 0 })).sort((one, other) => one.key - other.key);
        const { observed } = readMetar([head, ...shuffled.map(({ word }) => word)].join(' '));
        expect(observed.unread).toEqual([]);
        expect(observed.visibility?.metres).toBeCloseTo(meaning.metres ?? NaN, 9);
        expect([...(observed.weather ?? [])].sort()).toEqual([...(meaning.weather ?? [])].sort());
      }),
      { numRuns: 1000, seed: 102 },
    );
  });

  it('knows every group of code table 4678, and as recent weather those without intensity', () => {
    for (const code of weatherCodes) expect(readMetar(`${head} ${code}`).observed, code).toMatchObject({ weather: [code], unread: [] });
    const recent = weatherCodes.filter((code) => !/[-+]|^VC/.test(code));
    for (const code of recent) expect(readMetar(`${head} RE${code}`).observed, code).toMatchObject({ recent: [code], unread: [] });
    for (const code of weatherCodes.filter((other) => /[-+]|^VC/.test(other)))
      expect(readMetar(`${head} RE${code}`).observed.unread, code).toEqual([`RE${code}`]);
  });

  it('never passes over a group that one wrong key has spoilt', () => {
    const keys = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789/+- '];
    const edits = fc.tuple(fc.nat(), fc.nat(), fc.constantFrom(...keys), fc.constantFrom('replace', 'insert', 'delete', 'swap'));
    let spoilt = 0;
    fc.assert(
      fc.property(observations, edits, ({ words }, [which, where, key, kind]) => {
        // Temperature and pressure are not the weather; two words of a visibility are one group.
        const groups = words.slice(0, -2).filter((word) => !word.includes(' '));
        const word = groups[which % Math.max(1, groups.length)] ?? '';
        const at = where % Math.max(1, word.length);
        const swapped = word.slice(0, at) + (word[at + 1] ?? '') + (word[at] ?? '') + word.slice(at + 2);
        const edited = {
          replace: word.slice(0, at) + key + word.slice(at + 1),
          insert: word.slice(0, at) + key + word.slice(at),
          delete: word.slice(0, at) + word.slice(at + 1),
          swap: swapped,
        }[kind];
        const mistakes = edited.split(' ').filter((part) => part !== '' && !isCode(part));
        // A dew point above the temperature refuses the whole report.
        fc.pre(!/^\d\d\/\d\d$/.test(edited));
        const { observed } = readMetar(`${head} ${edited}`);
        const passedOver = mistakes.filter((mistake) => !observed.unread.includes(mistake) && !known.test(mistake));
        expect(passedOver, edited).toEqual([]);
        spoilt += mistakes.length;
      }),
      { numRuns: 8000, seed: 103 },
    );
    expect(spoilt).toBeGreaterThan(4000);
  });

  it.each([
    'ABCD',
    '220155',
    'BKNO15',
    'BKN15',
    'OVC',
    'VV01',
    '999',
    '99999',
    '0855',
    'TSR',
    'RARA',
    '-TS',
    'FZSN',
    'SHDZ',
    'MIBR',
    '11/2SM',
    '4/2SM',
    'SM',
    'M1SM',
    '22015KTS',
    'R37/0550',
    'R21/49053',
    'R21/490596',
    'R21/499135',
    'WSR21',
    '37015KT',
    '22015G10KT',
    '00003KT',
    '360V400',
    'XYZ',
    '+',
    '-',
    'RE',
    'RE+RA',
    'CAVOKK',
    'KCAVOK',
    'NSWW',
  ])('names %s as unread', (word) => expect(readMetar(`${head} 22012KT 9999 NSC 18/09 Q1009 ${word}`).observed.unread).toEqual([word]));

  it.each([
    ['21016KT 23018KT', '23018KT'],
    ['9999 8000', '8000'],
    ['CAVOK 9999', '9999'],
    ['CAVOK RA', undefined],
    ['NSC OVC010', undefined],
    ['18/09 17/09', '17/09'],
    ['Q1009 Q1013', 'Q1013'],
    ['Q1009 A2980', undefined],
    ['RA SN GR TS', 'TS'],
    ['NSW NSW', 'NSW'],
    ['180V240 190V250', '190V250'],
    ['OVC010 NSC', 'NSC'],
  ])('of %s takes each once', (groups, unread) =>
    expect(readMetar(`${head} ${groups}`).observed.unread).toEqual(unread === undefined ? [] : [unread]),
  );

  it('reads what is missing as missing', () => {
    const { observed } = readMetar(`${head} AUTO /////KT //// // ////// ///// Q////`);
    expect(observed).toMatchObject({
      wind: { knots: undefined },
      weatherMissing: true,
      clouds: [{ amount: undefined, feet: undefined }],
      unread: [],
    });
    expect([observed.visibility, observed.weather, observed.temperatureCelsius, observed.altimeterHectopascals]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
});

/** Words of reports that one wrong key can make of another group, and that say nothing of the weather, or that something is missing;
 * 0000 with a stroke is a temperature, 1000 behind a Q a pressure, and then visibility is missing. */
const known = /^(\/{2}|\/{4,6}|\d\d\/\d\d|[QA]\d{4}|NSW|COR|AUTO|RED|AMB|GRN|WHT|BLU)$/;

describe('a forecast', () => {
  it('of random groups says what was meant', () => {
    fc.assert(
      fc.property(forecasts, partialForecasts, partialForecasts, forecasts, (base, becoming, temporary, from) => {
        const taf = readTaf(
          [
            'TAF ZZXA 281100Z 2812/2918',
            ...base.words,
            'BECMG 2816/2818',
            ...becoming.words,
            'PROB40 TEMPO 2820/2824',
            ...temporary.words,
            'FM290630',
            ...from.words,
          ].join(' '),
        );
        expect(taf.unread).toEqual([]);
        expect(taf.groups.map(({ written }) => written)).toEqual(['', 'BECMG 2816/2818', 'PROB40 TEMPO 2820/2824', 'FM290630']);
        [base, becoming, temporary, from].forEach(({ meaning }, index) =>
          expectMeaning(taf.groups[index]?.conditions ?? { unread: ['none'] }, meaning),
        );
      }),
      { numRuns: 2000, seed: 104 },
    );
  });
});
