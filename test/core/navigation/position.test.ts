// Positions as people write them: one position in many writings, and many writings that must not be read.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CoreError } from '../../../core/basics/errors';
import { readPosition } from '../../../core/navigation/position';

/** 31 24 36 N, 041 12 18 W, worked by hand: 24.6 min is 0.41 degrees, 12.3 min is 0.205 degrees. Open ocean. */
const writings: readonly string[] = [
  '31.41, -41.205',
  '31.41,-41.205',
  '31.41 -41.205',
  '31.41\u00b0 -41.205\u00b0',
  '+31.41 -41.205',
  '31.41; -41.205',
  '31,41; -41,205',
  '31,41 -41,205',
  '31.41\u00b0, -41.205\u00b0',
  '\u202f31.41,\u00a0\u221241.205',
  '31.41 \u201341.205',
  '31.41N 41.205W',
  '31.41 N, 41.205 W',
  'N31.41 W41.205',
  'N31.41, W041.205',
  '31.41\u00b0N 041.205\u00b0W',
  '31,41N 41,205W',
  '31 24.6N 041 12.3W',
  "31\u00b024.6'N 41\u00b012.3'W",
  "N31\u00b024.6' W041\u00b012.3'",
  'N31\u00b0 24.6\u2032 W041\u00b0 12.3\u2032',
  '31\u00b024.6N 041\u00b012.3W',
  '31-24.6N 041-12.3W',
  '31:24.6N 41:12.3W',
  '31 24 36N 041 12 18W',
  '31 24 36 N 041 12 18 W',
  'N31 24 36 W041 12 18',
  'N 31 24 36, W 041 12 18',
  'n31 24 36 w041 12 18',
  `31\u00b024'36"N 041\u00b012'18"W`,
  '31\u00b024\u203236\u2033N 41\u00b012\u203218\u2033W',
  '31\u00ba24\u201936\u201dN 41\u00ba12\u201918\u201dW',
  `31\u00b0 24' 36'' N 41\u00b0 12' 18'' W`,
  '31-24-36N 041-12-18W',
  'N31-24-36 W041-12-18',
  '31:24:36N 41:12:18W',
  '31:24:36, -41:12:18',
  '31 24 36 -41 12 18',
  `31\u00b024'36", -41\u00b012'18"`,
  '312436N0411218W',
  '312436N 0411218W',
  'N312436W0411218',
  '3124.6N04112.3W',
  'N3124.6 W04112.3',
  '3124,6N04112,3W',
  '3124.60,N,04112.30,W',
  '312436N/0411218W',
  '312436.0N 0411218.0W',
  '+312436-0411218/',
  '+3124.6-04112.3/',
  '+31.41-041.205/',
  'W041 12 18 N31 24 36',
  '0411218W 312436N',
  '41.205W, 31.41N',
  '  312436N   0411218W  ',
];

/** Each with the reason that must be given. */
const refused: readonly (readonly [string, string])[] = [
  ['31.41', 'not-two'],
  ['31,41', 'not-two'],
  ['3124', 'not-two'],
  ['31.41, -41.205, 100', 'not-two'],
  ['31.41,41,205', 'not-two'],
  ['+31.41-41.205', 'not-two'],
  ['-31-41', 'not-two'],
  ['31 41', 'ambiguous'],
  ['31 24 41 12', 'ambiguous'],
  ['31 24 36 41 12 18', 'ambiguous'],
  ['31 41.205', 'ambiguous'],
  ['31\u00b0 41', 'ambiguous'],
  ['31\u00b0 41.205', 'ambiguous'],
  ['-31 24 36 41 12 18', 'ambiguous'],
  ['31 24 36, 41 12 18', 'ambiguous'],
  ["31\u00b024', 41\u00b012'", 'ambiguous'],
  ['3124 -041-12', 'ambiguous'],
  ['31 24 N', 'letters'],
  ['31 24 36N 041 12 18', 'letters'],
  ['N31 24 36 041 12 18W', 'letters'],
  ['31N W41', 'letters'],
  ['31N 41N', 'letters'],
  ['31E 41W', 'letters'],
  ['N31 24 S41 12', 'letters'],
  ['31NN 41W', 'letters'],
  ['31 N 41 O', 'letters'],
  ['31.41 North 41.205 West', 'letters'],
  ['31d24m36s N 41d12m18s W', 'letters'],
  ['warm', 'letters'],
  ['#N/A', 'letters'],
  ['312436N0411218W2000FT', 'letters'],
  ['-31.41N 41.205W', 'sign-and-letter'],
  ['31.41N -41.205W', 'sign-and-letter'],
  ['+31N 041W', 'sign-and-letter'],
  ['3124N-04112W', 'sign-and-letter'],
  ['312N 041W', 'latitude-form'],
  ['031N 041W', 'latitude-form'],
  ['124.6N 041W', 'latitude-form'],
  ['31243N 04112W', 'latitude-form'],
  ['31.5\u00b024N 041W', 'latitude-form'],
  ['31 24.6 36N 041 12 18W', 'latitude-form'],
  ['31:24-36N 041W', 'latitude-form'],
  ['31.24.36N 41.12.18W', 'latitude-form'],
  ['31,24,36N 41,12,18W', 'latitude-form'],
  ['31 124N 41 12W', 'latitude-form'],
  ['3124, -041.205', 'latitude-form'],
  ['.5N 41W', 'latitude-form'],
  ['31.N 41W', 'latitude-form'],
  ['3124N4112W', 'longitude-form'],
  ['312436N411218W', 'longitude-form'],
  ['31N 0041W', 'longitude-form'],
  ['31.41, -04112', 'longitude-form'],
  ['31N 41 12 18 30W', 'longitude-form'],
  ['31.41 41/205', 'longitude-form'],
  ['31.41 - 41.205', 'longitude-form'],
  ['90.001N 041W', 'latitude-range'],
  ['91.41, -41.205', 'latitude-range'],
  ['3160N04112W', 'latitude-range'],
  ['312460N0411218W', 'latitude-range'],
  ['90 00 01N 041 00 00W', 'latitude-range'],
  ['9001N04112W', 'latitude-range'],
  ['31N 180.001W', 'longitude-range'],
  ['31.41, 241.205', 'longitude-range'],
  ['31N 180 00 01E', 'longitude-range'],
  ['3124N04160W', 'longitude-range'],
  ['31 24 36N 041 12 60W', 'longitude-range'],
];

function reasonOf(text: string): string {
  try {
    return JSON.stringify(readPosition(text));
  } catch (thrown) {
    return thrown instanceof CoreError && 'reason' in thrown.detail ? String(thrown.detail.reason) : String(thrown);
  }
}

describe('readPosition', () => {
  it('has at least forty of each', () => {
    expect(new Set(writings).size).toBe(writings.length);
    expect(writings.length).toBeGreaterThanOrEqual(40);
    expect(refused.length).toBeGreaterThanOrEqual(40);
  });

  it.each(writings)('reads %s', (text) => {
    const { latitudeDegrees, longitudeDegrees } = readPosition(text);
    expect(latitudeDegrees).toBeCloseTo(31.41, 12);
    expect(longitudeDegrees).toBeCloseTo(-41.205, 12);
  });

  it.each(refused)('refuses %s: %s', (text, reason) => expect(reasonOf(text)).toBe(reason));

  it('reads the equator, Greenwich, the poles and the date line, without a negative zero', () => {
    expect(readPosition('0S 0W')).toEqual({ latitudeDegrees: 0, longitudeDegrees: 0 });
    expect(readPosition('-0.0, -0.0')).toEqual({ latitudeDegrees: 0, longitudeDegrees: 0 });
    expect(readPosition('900000S1800000W')).toEqual({ latitudeDegrees: -90, longitudeDegrees: -180 });
    expect(readPosition('31.41\u00b0 41\u00b0')).toEqual({ latitudeDegrees: 31.41, longitudeDegrees: 41 });
    expect(readPosition('90N 180E')).toEqual({ latitudeDegrees: 90, longitudeDegrees: 180 });
  });

  it('gives back any position to the second, in every packed, marked and spaced writing', () => {
    const seconds = (degrees: number) => fc.integer({ min: 0, max: degrees * 3600 });
    const pad = (value: number, width: number): string => String(value).padStart(width, '0');
    fc.assert(
      fc.property(seconds(90), seconds(180), fc.boolean(), fc.boolean(), (latitude, longitude, south, west) => {
        const parts = (total: number): [number, number, number] => [Math.floor(total / 3600), Math.floor(total / 60) % 60, total % 60];
        const [a, b, c] = parts(latitude);
        const [d, e, f] = parts(longitude);
        const [y, x] = [south ? 'S' : 'N', west ? 'W' : 'E'];
        const texts = [
          `${pad(a, 2)}${pad(b, 2)}${pad(c, 2)}${y}${pad(d, 3)}${pad(e, 2)}${pad(f, 2)}${x}`,
          `${y}${a} ${b} ${c} ${x}${d} ${e} ${f}`,
          `${a}\u00b0${b}\u2032${c}\u2033${y} ${d}\u00b0${e}\u2032${f}\u2033${x}`,
          `${south ? '-' : '+'}${pad(a, 2)}${pad(b, 2)}${pad(c, 2)}${west ? '-' : '+'}${pad(d, 3)}${pad(e, 2)}${pad(f, 2)}/`,
        ];
        for (const text of texts) {
          const read = readPosition(text);
          expect(read.latitudeDegrees * 3600).toBeCloseTo(south ? -latitude : latitude, 6);
          expect(read.longitudeDegrees * 3600).toBeCloseTo(west ? -longitude : longitude, 6);
        }
      }),
    );
  });

  it('throws nothing but its own error, whatever the text', () => {
    const alphabet = fc.constantFrom(...'0123456789NSEW+-.,;:/ \u00b0\'"');
    fc.assert(
      fc.property(fc.string({ unit: alphabet, maxLength: 24 }), (text) => {
        const reason = reasonOf(text);
        if (!reason.startsWith('{')) expect(reason).toMatch(/^(not-two|letters|sign-and-letter|ambiguous|(latitude|longitude)-(form|range))$/);
        else {
          const { latitudeDegrees, longitudeDegrees } = JSON.parse(reason) as Record<string, number>;
          expect(Math.abs(latitudeDegrees ?? 99)).toBeLessThanOrEqual(90);
          expect(Math.abs(longitudeDegrees ?? 999)).toBeLessThanOrEqual(180);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
