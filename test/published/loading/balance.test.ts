// Published loadings, whose columns the tables of this folder cannot hold. Tolerance: half the last printed digit.
import { describe, expect, it } from 'vitest';
import { answer } from '../../support/call';
import { halfLastDigit } from '../../support/publishedRows';

interface PublishedLoading {
  readonly id: string;
  readonly source: string;
  readonly status: string;
  readonly items: readonly (readonly [weight: number, arm: number])[];
  readonly weight: string;
  readonly arm: string;
}

const loadings: readonly PublishedLoading[] = [
  {
    id: 'WB-01', source: 'FAA-H-8083-25A figure 9-5, 25B figure 10-5', status: 'R +C (arms M)',
    items: [[2100, 78.3], [340, 85], [350, 121], [450, 75], [80, 150]], weight: '3320', arm: '84.8',
  },
  { id: 'WB-02', source: 'FAA-H-8083-25 chapter on weight and balance: 100 lb from station 30 to 150, 616,000 lb-in before', status: 'R +C', items: [[8000, 77], [-100, 30], [100, 150]], weight: '8000', arm: '78.5' },
  { id: 'WB-04', source: 'FAA test question 3664: 151,593 lb-in empty at 101.4, 380 lb at 64, 30 gal at 96', status: 'R +C', items: [[1495, 101.4], [380, 64], [180, 96]], weight: '2055', arm: '94.01' },
  { id: 'WB-11', source: 'FAA commercial test: 4,800 lb at 98, 90 lb from 145 to 45', status: 'M (weights R*) +C', items: [[4800, 98], [-90, 145], [90, 45]], weight: '4800', arm: '96.13' },
  { id: 'WB-12', source: 'FAA commercial test', status: 'M +C', items: [[155, 45], [165, 145], [95, 185]], weight: '415', arm: '116.8' },
  { id: 'WB-13', source: 'FAA commercial test: 1.5 h at 13.7 gph and 6 lb/gal burned off', status: 'M +C', items: [[4137, 67.8], [-123.3, 68]], weight: '4013.7', arm: '67.79' },
  { id: 'WB-22', source: 'FAA-H-8083-1B chapter 2, three weights on a board', status: 'M', items: [[100, 50], [100, 90], [200, 150]], weight: '400', arm: '110.0' },
  { id: 'WB-23', source: 'FAA-H-8083-25 chapter on weight and balance: 140 lb added at station 150 to 6,860 lb at 80', status: 'M', items: [[6860, 80], [140, 150]], weight: '7000', arm: '81.4' },
  { id: 'WB-24', source: 'FAA-H-8083-25 chapter on weight and balance: 100 lb taken from station 150 of 6,100 lb at 78', status: 'M', items: [[6100, 78], [-100, 150]], weight: '6000', arm: '76.8' },
];

describe('published loadings', () => {
  it('holds as many as were transcribed', () => expect(loadings.length).toBe(9));

  it.each(loadings)('$id $source', ({ items, weight, arm }) => {
    const weights = items.map(([each]) => [each]);
    const arms = items.map(([, each]) => [each]);
    const total = answer('BALANCE_TOTAL', weights, arms);
    expect(Math.abs(Number(total['weight']) - Number(weight))).toBeLessThanOrEqual(halfLastDigit(weight) + 1e-9);
    // FAA answers of 96.125 printed as 96.13 lie exactly half a digit away.
    expect(Math.abs(Number(total['arm']) - Number(arm))).toBeLessThanOrEqual(halfLastDigit(arm) + 1e-9);
    expect(answer('BALANCE_CG', weights, arms)['arm']).toBe(total['arm']);
  });

  it('WB-01 lies within the limits: to 3,400 lb, 78 to 86 inches (FAA-H-8083-25A, page with figure 9-5; R)', () => {
    const envelope = [[78, 2100], [78, 3400], [86, 3400], [86, 2100]];
    const place = answer('BALANCE_CHECK', 3320, 84.8, envelope);
    expect(place['verdict']).toBe('OK');
    expect(place['forward_margin']).toBeCloseTo(6.8, 9);
    expect(place['aft_margin']).toBeCloseTo(1.2, 9);
    expect(place['weight_margin']).toBe(80);
  });
});
