// FIELD_ENTRIES: each finding in its sentence, and honest lists left alone.
import { describe, expect, it } from 'vitest';
import { call } from '../../support/call';

const fieldHeads = ['field', 'station', 'latitude', 'longitude', 'elevation, ft'];
const runwayHeads = ['field', 'runway', 'direction', 'take-off available', 'landing available', 'length in', 'surface', 'slope, %'];
const north = ['North', 'ZZXA', 10, 20, 500];
const south = ['South', 'ZZXB', 9, 20.5, 40];
const strips: readonly unknown[][] = [
  ['North', '03', '', 900, 850, 'm', 'grass, dry', 1],
  ['North', '21', 212, 900, 900, 'm', 'grass, dry', -1],
  ['South', '09L', 92, 5000, 5000, 'ft', 'paved, dry', 0],
  ['South', '27R', 272, 5000, 5000, 'ft', 'paved, dry', 0],
];
const look = (fields: readonly unknown[][], runways: readonly unknown[][]): unknown[][] =>
  call('FIELD_ENTRIES', [fieldHeads, ...fields], [runwayHeads, ...runways]) as unknown[][];
const ofNorth = (field: readonly unknown[], first: readonly unknown[] = strips[0] ?? []): unknown[] =>
  look([[...field], south], [[...first], ...strips.slice(1)])[0] ?? [];
const changed = (row: readonly unknown[], changes: Readonly<Record<number, unknown>>): unknown[] => row.map((cell, index) => changes[index] ?? cell);
const strip = (changes: Readonly<Record<number, unknown>>): unknown[] => changed(strips[0] ?? [], changes);

describe('FIELD_ENTRIES', () => {
  it('leaves an honest list alone, row by row with its blank rows', () => {
    expect(look([north, ['', '', '', '', ''], south], strips as unknown[][])).toEqual([
      ['OK', 'complete, 2 runway directions'],
      ['', ''],
      ['OK', 'complete, 2 runway directions'],
    ]);
  });

  it.each([
    ['a sign', changed(north, { 2: -10 }), 'CHECK', '1,135 NM from South, the nearest other field: a sign or a digit of the position?'],
    ['the position of another field', changed(north, { 2: 9, 3: 20.5 }), 'CHECK', 'the same position as South'],
    ['metres and feet', changed(north, { 4: 15_000 }), 'CHECK', 'elevation of 15,000 ft: is it in feet?'],
    ['no elevation', changed(north, { 4: ' ' }), 'UNKNOWN', 'elevation is missing or cannot be read'],
    ['no longitude', changed(north, { 3: 'E 20' }), 'UNKNOWN', 'latitude or longitude is missing or cannot be read'],
  ])('says what looks wrong with a field: %s', (_, field, verdict, reason) => expect(ofNorth(field)).toEqual([verdict, reason]));

  it.each([
    ['the number for the direction', { 1: '20', 2: 20 }, 'CHECK', 'runway 20: direction 20 degrees, where its name says about 200'],
    ['a digit too many', { 3: 9000, 4: 9000 }, 'CHECK', 'runway 03: 9,000 m is no usual length (200 to 5,500 m): digits or unit?'],
    ['the other unit', { 3: 2950, 4: 2950 }, 'CHECK', 'runway 03: 2,950 m, its other end 21: 900 m'],
    ['two lengths exchanged', { 3: 600, 4: 850 }, 'CHECK', 'runway 03: 850 m to land on, but only 600 m to take off'],
    ['one sign of the slope', { 7: -1 }, 'CHECK', 'runways 03 and 21, two ends of one strip, slope the same way: one of them has the wrong sign'],
    ['one end paved', { 6: 'paved, dry' }, 'CHECK', 'runways 03 and 21, two ends of one strip, differ in their surfaces'],
    ['one slope of 5', { 7: 5 }, 'CHECK', 'runways 03 and 21, two ends of one strip, differ in their slopes by more than 1 %'],
    ['no unit', { 5: '?' }, 'UNKNOWN', 'runway 03: length unit (ft or m) missing or not readable'],
    ['a surface nobody publishes', { 6: 'ice' }, 'UNKNOWN', 'runway 03: surface missing or not readable'],
    ['a direction that is none', { 2: 3000 }, 'UNKNOWN', 'runway 03: direction missing or not readable'],
  ])('says what looks wrong with a runway: %s', (_, changes, verdict, reason) => {
    expect(ofNorth(north, strip(changes))[0]).toBe(verdict);
    expect(ofNorth(north, strip(changes))[1]).toContain(reason);
  });

  it('takes 15 degrees from the name for the turning of the field, 16 for a slip', () => {
    expect(ofNorth(north, strip({ 2: 45 }))[0]).toBe('OK');
    expect(ofNorth(north, strip({ 2: 46 }))[0]).toBe('CHECK');
    expect(ofNorth(north, strip({ 1: '36', 2: 351 }))[0]).toBe('OK');
  });

  it('says a field that stands in the list twice, under any spelling', () => {
    expect(look([north, changed(south, { 0: 'north ' })], strips as unknown[][])[0]).toEqual(['UNKNOWN', 'the field stands in the list twice']);
  });
});
