// Published loadings told to LOADING_BRIEF, their fuel in a tank. Tolerance: half the last printed digit.
import { describe, expect, it } from 'vitest';
import { call } from '../../support/call';
import { halfLastDigit } from '../../support/publishedRows';

interface PublishedFlight {
  readonly id: string;
  readonly source: string;
  readonly status: string;
  readonly stations: readonly (readonly [name: string, weight: number, arm: number])[];
  readonly fuel: { readonly quantity: number; readonly arm: number; readonly each: number; readonly trip: number };
  /** The envelope is the source's own where it prints one; else wide enough to say nothing. */
  readonly envelope: readonly (readonly [arm: number, weight: number])[];
  readonly point: string;
  readonly weight: string;
  readonly arm: string;
  readonly verdict: string;
}

const wide = [[0, 1], [0, 10_000], [200, 10_000], [200, 1]] as const;
const gross3400 = [[78, 2100], [78, 3400], [86, 3400], [86, 2100]] as const;

const flights: readonly PublishedFlight[] = [
  {
    id: 'WB-01', source: 'FAA-H-8083-25A figure 9-5, 25B figure 10-5: 75 gallons in the tank, within 3,400 lb and 78 to 86 inches', status: 'R +C (arms M)',
    stations: [['empty', 2100, 78.3], ['front', 340, 85], ['rear', 350, 121], ['baggage', 80, 150]],
    fuel: { quantity: 75, arm: 75, each: 6, trip: 0 }, envelope: gross3400, point: 'take-off', weight: '3320', arm: '84.8', verdict: 'OK',
  },
  {
    id: 'WB-04', source: 'FAA test question 3664: 151,593 lb-in empty at 101.4, 380 lb at 64, 30 gallons at 96', status: 'R +C',
    stations: [['empty', 1495, 101.4], ['seats', 380, 64]],
    fuel: { quantity: 30, arm: 96, each: 6, trip: 0 }, envelope: wide, point: 'take-off', weight: '2055', arm: '94.01', verdict: 'OK',
  },
  {
    // 4,137 lb at 67.8 with the fuel to be burned among it: 123.3 lb at 68 of it stand in the tank.
    id: 'WB-13', source: 'FAA commercial test: 4,137 lb at 67.8, 1.5 h at 13.7 gallons an hour burned at 68.0', status: 'M +C',
    stations: [['aircraft without that fuel', 4137 - 123.3, (4137 * 67.8 - 123.3 * 68) / (4137 - 123.3)]],
    fuel: { quantity: 20.55, arm: 68, each: 6, trip: 20.55 }, envelope: wide, point: 'landing', weight: '4013.7', arm: '67.79', verdict: 'OK',
  },
];

const brief = ({ stations, fuel, envelope }: PublishedFlight): unknown[][] =>
  call(
    'LOADING_BRIEF', stations.map(([name]) => [name]), stations.map(([, weight]) => [weight]), stations.map(([, , arm]) => [arm]),
    [['tank', fuel.quantity, 1, '']], [['tank', 0, fuel.arm], ['tank', 100, fuel.arm]], fuel.each, 0, fuel.trip, envelope,
  ) as unknown[][];
const rowOf = (rows: readonly unknown[][], point: string): unknown[] => rows.find(([name]) => name === point) ?? [];

describe('published loadings, as flights', () => {
  it('holds as many as were transcribed', () => expect(flights.length).toBe(3));

  it.each(flights)('$id $source', (flight) => {
    const [, verdict, weight, arm] = rowOf(brief(flight), flight.point);
    expect(verdict).toBe(flight.verdict);
    expect(Math.abs(Number(weight) - Number(flight.weight))).toBeLessThanOrEqual(halfLastDigit(flight.weight) + 1e-9);
    expect(Math.abs(Number(arm) - Number(flight.arm))).toBeLessThanOrEqual(halfLastDigit(flight.arm) + 1e-9);
  });

  it('WB-05: 110 lb over gross weight is 18.4 gallons of fuel to drain (FAA test question 3662; R +C)', () => {
    const heavy: PublishedFlight = { ...(flights[0] as PublishedFlight), stations: [['empty', 2100, 80], ['load', 960, 88]] };
    const over = (quantity: number): unknown[][] => brief({ ...heavy, fuel: { quantity, arm: 75, each: 6, trip: 0 } });
    expect(rowOf(over(75), 'take-off').slice(1, 3)).toEqual(['NO', 3510]);
    expect(rowOf(over(75), 'suggested change')[7]).toBe('take 110 out: too heavy at take-off');
    expect(rowOf(over(75 - 18.4), 'take-off')[1]).toBe('OK');
    expect(rowOf(over(75 - 18.3), 'take-off')[1]).toBe('NO');
  });
});
