// AIRCRAFT_ENTRIES: each finding in its sentence; a list without slips left alone; a bad table spoils only its own row.
import { describe, expect, it } from 'vitest';
import { call } from '../../support/call';

const heads = [
  'aircraft',
  'weight in',
  'arm in',
  'distance in',
  'fuel in',
  'fuel weight, each',
  'usable fuel',
  'demonstrated crosswind, kt',
  'maximum zero-fuel weight',
  'maximum take-off weight',
  'maximum landing weight',
  'cruise true airspeed, kt',
  'cruise fuel flow, an hour',
  'taxi fuel',
];
const pounds = ['North', 'lb', 'in', 'ft', 'US gal', 6, 40, 15, 2200, 2300, 2300, 110, 8.5, 1];
const kilograms = ['South', 'kg', 'm', 'm', 'L', 0.72, 110, 17, '', 750, 750, 100, 22, 3];
const table = [
  ['weight', 'pressure altitude', 'temperature', 'over 50 ft'],
  [2300, 0, 15, 1500],
];
const look = (row: readonly unknown[], takeoff: unknown = table): unknown[][] =>
  call('AIRCRAFT_ENTRIES', [heads, [...row], kilograms], row[0], takeoff, table, table) as unknown[][];
const changed = (column: string, value: unknown): unknown[] => pounds.map((cell, index) => (heads[index] === column ? value : cell));

describe('AIRCRAFT_ENTRIES', () => {
  it('leaves two honest aircraft in different units alone', () => {
    expect(look(pounds)[0]).toEqual(['aircraft list', 'OK', 'complete, and nothing looks wrong']);
    expect((call('AIRCRAFT_ENTRIES', [heads, pounds, kilograms], 'south', table, table, table) as unknown[][])[0]?.[1]).toBe('OK');
  });

  it.each([
    [
      'fuel weight, each',
      0.72,
      'CHECK',
      '0.72 lb is no weight of 1 US gal of fuel: avgas is 6.0 lb a US gallon, 0.72 kg a litre; jet fuel 6.7 lb, 0.80 kg',
    ],
    ['fuel weight, each', 60, 'CHECK', '60 lb is no weight of 1 US gal of fuel'],
    ['fuel weight, each', '', 'UNKNOWN', 'weight of one unit of fuel is missing or cannot be read'],
    ['usable fuel', '', 'UNKNOWN', 'usable fuel is missing or cannot be read'],
    ['fuel in', 'barrels', 'UNKNOWN', 'fuel unit (US gal, L, lb or kg) is missing or cannot be read'],
    ['weight in', '', 'UNKNOWN', 'weight unit (lb or kg) is missing or cannot be read'],
    ['maximum take-off weight', 230, 'CHECK', 'maximum take-off weight of 230 lb: digits or unit?'],
    ['maximum take-off weight', '', 'UNKNOWN', 'maximum take-off weight is missing or cannot be read'],
    ['maximum landing weight', 2400, 'CHECK', 'maximum landing weight 2,400 lb is above the maximum take-off weight 2,300 lb'],
    ['usable fuel', 400, 'CHECK', 'full tanks weigh 2,400 lb, more than half of the maximum take-off weight 2,300 lb'],
    ['cruise fuel flow, an hour', 0.85, 'CHECK', 'at 0.85 US gal an hour 40 US gal would last 47.06 h, usually 1.5 to 14 h'],
    ['demonstrated crosswind, kt', 150, 'CHECK', 'demonstrated crosswind of 150 kt, usually 5 to 35 kt'],
    ['cruise true airspeed, kt', 1100, 'CHECK', 'cruise true airspeed of 1,100 kt, usually 40 to 350 kt'],
    ['taxi fuel', 14, 'CHECK', 'taxi fuel of 14 US gal, usually 0 to 4 US gal'],
  ])('says what looks wrong: %s %s', (column, value, verdict, reason) => {
    const [, said, why] = look(changed(column, value))[0] ?? [];
    expect(said).toBe(verdict);
    expect(why).toContain(reason);
  });

  it('lets a table that cannot be read spoil its own row only', () => {
    const rows = look(pounds, '#N/A');
    expect(rows.map(([, verdict]) => verdict)).toEqual(['OK', 'UNKNOWN', 'OK', 'OK']);
  });

  it('says an aircraft that the list does not have', () => {
    const [first] = call('AIRCRAFT_ENTRIES', [heads, pounds], 'West', table, table, table) as unknown[][];
    expect(first).toEqual(['aircraft list', 'UNKNOWN', '"West" is not in the aircraft list']);
  });
});
