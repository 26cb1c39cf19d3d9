// What each licence covers: boxes, databases, series, days; said on the card, in the load list and for a flight, and only where the list has
// the columns for it. AIRAC dates of 2024: 31 October, 28 November, 26 December.
import { describe, expect, it } from 'vitest';
import { call, plain } from '../../support/call';

type Row = readonly unknown[];

const card: Row = ['North', 'left', 'navigation', '28-day'];
const load: Row = ['North', 'left', 'navigation', '2024-10-31', '2024-10-30', '2024-10-30', 'Ada', ''];
const licence = (changes: Readonly<Record<number, unknown>> = {}): Row =>
  Object.entries(changes).reduce<unknown[]>(
    (row, [at, value]) => [...row.slice(0, Number(at)), value, ...row.slice(Number(at) + 1)],
    ['North', 'navigation', '2025-10-31', 12, 300, 'EUR', 'equal', '', '', ''],
  );
const columns = (rows: readonly Row[]): unknown[][][] => [0, 1, 2, 3].map((at) => rows.map((row) => [row[at]]));

/** Verdict and reason of each card on a day of November 2024. */
const cards = (licences: readonly Row[], asOf = '2024-11-11', rows: readonly Row[] = [card], loads: readonly Row[] = [load]): unknown[][] =>
  (call('LEDGER_CARDS', ...columns(rows), loads, asOf, licences) as unknown[][]).map((row) => [row[3], row[6]]);
const one = (changes: Readonly<Record<number, unknown>>, asOf?: string): unknown[] => cards([licence(changes)], asOf)[0] ?? [];

const inForce = ['OK', 'in force'];
const none = ['CHECK', 'no licence that can be read covers it'];
const unclear = ['CHECK', 'nothing tells whether its licence covers it: look at what that licence is for'];

describe('what a licence covers', () => {
  it.each([
    ['its database', {}, inForce],
    ['another database', { 1: 'charts' }, none],
    ['several databases', { 1: 'charts, Navigation' }, inForce],
    ['every database', { 1: 'all' }, inForce],
    ['another aircraft', { 0: 'South' }, none],
    ['the fleet', { 0: 'all' }, inForce],
    ['its box', { 8: 'Left' }, inForce],
    ['several boxes', { 8: 'right; left' }, inForce],
    ['another box', { 8: 'right' }, none],
    ['its series', { 9: '28 days' }, inForce],
    ['another series', { 9: '56-day' }, none],
    ['several series', { 9: '56-day; 28-day' }, inForce],
    ['a series that cannot be read', { 9: 'monthly' }, unclear],
    ['a start that cannot be read', { 7: 'spring' }, unclear],
    ['no end', { 2: 'no end' }, inForce],
    ['an end that cannot be read', { 2: 'lifetime' }, ['CHECK', 'licence end not written down, or not a date']],
    ['an end before its start', { 2: '2024-01-31', 7: '2024-02-01' }, unclear],
  ] as const)('%s', (_what, changes, said) => {
    expect(one(changes)).toEqual(said);
  });

  it('is asked on the day, and on the day of the cycle', () => {
    expect(one({ 7: '2024-10-31' })).toEqual(inForce);
    expect(one({ 7: '2024-11-01' })).toEqual(['CHECK', 'no licence holds on 2024-10-31, the day of this cycle']);
    expect(one({ 7: '2024-11-12' })).toEqual(['CHECK', 'licence begins only on 2024-11-12; no licence holds on 2024-10-31, the day of this cycle']);
    expect(one({ 2: '2024-10-31' })).toEqual(['CHECK', 'licence ended 2024-10-31']);
    expect(one({ 2: '2024-10-30' })).toEqual(['CHECK', 'licence ended 2024-10-30; no licence holds on 2024-10-31, the day of this cycle']);
    const first = licence({ 2: '2024-11-15' });
    expect(cards([first])).toEqual([['CHECK', 'licence ends 2024-11-15']]);
    expect(cards([first, licence({ 7: '2024-11-16' })])).toEqual([inForce]);
    expect(cards([first, licence({ 7: '2024-11-17' })])).toEqual([['CHECK', 'licence ends 2024-11-15']]);
  });

  it('asks no cycle of data without one, and no licence of a card where the list has no columns for it', () => {
    const issued: Row = ['North', 'left', 'navigation', 'as issued'];
    expect(cards([licence({ 7: '2024-11-01' })], '2024-11-11', [issued])).toEqual([['OK', 'in force, as issued']]);
    expect(cards([licence({ 0: 'South' }).slice(0, 7)])).toEqual([inForce]);
    expect(cards([])).toEqual([inForce]);
  });

  it('spoils no licence but the one with the slip', () => {
    const right: Row = ['North', 'right', 'charts', '56-day'];
    const ofRight: Row = ['North', 'right', 'charts', '2024-10-31', '2024-10-30', '2024-10-30', 'Ada', ''];
    const list = [licence({ 7: 'spring', 9: 'monthly', 6: 'by luck' }), licence({ 1: 'charts' })];
    expect(cards(list, '2024-11-11', [card, right], [load, ofRight])).toEqual([unclear, inForce]);
    const diary = call('LEDGER_DIARY', [['North']], [['navigation']], [['28-day']], '2024-11-11', 1, list) as unknown[][];
    expect(diary[0]?.[6]).toBe(
      'licence in row 1 of the list: starts must be a date; got "spring"; series must be like that of a card, such as 28-day; got "monthly"; shared by must be equal, hours or share; got "by luck"',
    );
  });
});

describe('a licence, elsewhere', () => {
  const due = (licences: readonly Row[], asOf: string): unknown[] =>
    ((call('LEDGER_DUE', ...columns([card]), [load], asOf, [['Ada']], licences) as unknown[][])[0] ?? []).filter((_, at) => [0, 7, 10].includes(at));

  it('is asked in the load list for the cycle that is to be loaded', () => {
    const told = (licences: readonly Row[], asOf: string): unknown[] => due(licences, asOf).map(plain);
    expect(told([licence()], '2024-11-11')).toEqual(['next', '2024-11-28', '']);
    expect(told([licence({ 2: '2024-11-27' })], '2024-11-11')).toEqual([
      'next',
      '2024-11-28',
      'no licence holds on 2024-11-28, the day of this cycle',
    ]);
    expect(told([licence({ 8: 'right' })], '2024-11-28')).toEqual(['overdue', '2024-11-28', 'out of date; no licence that can be read covers it']);
  });

  it('is asked for a flight, and by LEDGER_STATUS, of boxes only where they are given', () => {
    const [aircraft, box, database, series] = columns([card]);
    const list = [licence({ 8: 'right' })];
    const given = [aircraft, database, series, [['2024-10-31']], [['2024-10-30']]];
    const flight = (...more: unknown[]): unknown[] =>
      (
        call(
          'LEDGER_FOR_FLIGHT',
          ...given,
          list,
          [['0000Z']],
          'North',
          '2024-11-11',
          '2024-11-12',
          '2024-11-11',
          [['2024-10-30']],
          ...more,
        ) as unknown[][]
      )[0] ?? [];
    expect(flight(box)[3]).toBe(`navigation: ${none[1] ?? ''}`);
    expect(flight()[3]).toBe(`navigation: ${unclear[1] ?? ''}`);
    const status = (...more: unknown[]): unknown =>
      (call('LEDGER_STATUS', ...given, '2024-11-11', list, 5, '0000Z', [['2024-10-30']], ...more) as unknown[][])[0]?.[3];
    expect(status('', box)).toBe(none[1]);
    expect(status()).toBe(unclear[1]);
  });
});
