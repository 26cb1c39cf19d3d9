// The whole printed table of cold temperature errors. It takes the source at sea level and rounds up to the next 10 ft.
// FAA AIM, table 7-2-3 of 3 April 2014 (now 7-3-1), ICAO Cold Temperature Error Table (R).
import { describe, expect, it } from 'vitest';
import { call } from '../../support/call';

const heights = [200, 300, 400, 500, 600, 700, 800, 900, 1000, 1500, 2000, 3000, 4000, 5000];

const table: readonly (readonly [number, readonly number[]])[] = [
  [10, [10, 10, 10, 10, 20, 20, 20, 20, 20, 30, 40, 60, 80, 90]],
  [0, [20, 20, 30, 30, 40, 40, 50, 50, 60, 90, 120, 170, 230, 280]],
  [-10, [20, 30, 40, 50, 60, 70, 80, 90, 100, 150, 200, 290, 390, 490]],
  [-20, [30, 50, 60, 70, 90, 100, 120, 130, 140, 210, 280, 420, 570, 710]],
  [-30, [40, 60, 80, 100, 120, 140, 150, 170, 190, 280, 380, 570, 760, 950]],
  [-40, [50, 80, 100, 120, 150, 170, 190, 220, 240, 360, 480, 720, 970, 1210]],
  [-50, [60, 90, 120, 150, 180, 210, 240, 270, 300, 450, 590, 890, 1190, 1500]],
];

describe('COLD_TEMPERATURE_CORRECTION', () => {
  it.each(table)('the table at %d degrees, all 14 heights', (celsius, corrections) => {
    expect(corrections.length).toBe(heights.length);
    const got = heights.map((height) => Math.ceil(Number(call('COLD_TEMPERATURE_CORRECTION', height, 0, celsius)) / 10) * 10);
    expect(got).toEqual(corrections);
  });
});
