// The row of the log from the times of a flight: hours, and day or night by the Sun at the fields. The Sun itself is checked where SUN_TIMES is. Here the
// demonstration's fields are moved to 51.5074 N 0.1278 W: sunset 2022 UTC on 21 June (US Naval Observatory), end of civil twilight 2109 (from memory).
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { flightRow, type Flown } from '../../addon/workbook/afterFlight';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import { tripRows } from '../../sheets-templates/trip/rows';

const usual: Flown = {
  ...{ offBlock: '1425', takeOff: '1433', landing: '1529', onBlock: '15:35Z' },
  ...{ landings: '1', fullStops: '1', byNight: '', approaches: '', flownAs: 'in command', remark: '' },
};

describe('after the flight', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
    const names = workbook.values('Fields', 'A1:D40');
    const rows = names.flatMap(([name], index) => (['Marrowfield', 'Tansy Ridge'].includes(String(name)) ? [index + 1] : []));
    await workbook.setSheets({
      Fields: Object.fromEntries(rows.flatMap((row) => [[`C${row}`, 51.5074] as const, [`D${row}`, -0.1278] as const])),
      'Trip sheet': { [`B${tripRows.firstDay}`]: { date: '2025-06-21' } },
    });
  });
  afterAll(() => workbook.dispose());

  const rowOf = (flown: Partial<Flown>): ReturnType<typeof flightRow> => flightRow(workbook.snapshot(), sheetTemplates, { ...usual, ...flown });
  const shownOf = (flown: Partial<Flown>): Record<string, string> => Object.fromEntries(rowOf(flown).shown);

  it('shows the row, below the last flight, with hours from block to block', () => {
    const { sheet, row, shown, said } = rowOf({ remark: ' first solo away ' });
    expect(sheet).toBe('Currency log');
    const above = workbook.values('Currency log', `A${row - 1}:B${row}`);
    expect([above[0]?.[0] !== '', above[1]?.[0]]).toEqual([true, '']);
    expect(shown).toEqual([
      ['aircraft', 'Quillon Four'],
      ['date', '2025-06-21'],
      ['landings by day', '1'],
      ['to a full stop by day', '1'],
      ['hours, block to block', '1.17'],
      ['hours in command', '1.17'],
      ['remark', 'first solo away'],
      ['from', 'Marrowfield'],
      ['to', 'Tansy Ridge'],
      ['take-off, UTC', '1433Z'],
      ['landing, UTC', '1529Z'],
    ]);
    expect(said).toContain('Block 70 minutes, in the air 56 minutes. Take-off by day, landing by day; night is from one hour after sunset');
  });

  it('counts a landing as night by the night of the authority', async () => {
    // 2115 is after the end of civil twilight (2109), and before one hour after sunset (2122).
    const dusk = { offBlock: '2020', takeOff: '2030', landing: '2115', onBlock: '2120' };
    expect(shownOf(dusk)).toMatchObject({ 'landings by day': '1' });
    await workbook.set('Currency log', { B5: 'EASA' });
    expect(shownOf(dusk)).toMatchObject({ 'landings by night': '1', 'to a full stop by night': '1' });
    await workbook.set('Currency log', { B5: 'FAA and EASA' });
    expect(shownOf(dusk)).toMatchObject({ 'landings by day': '1' });
    expect(shownOf({ offBlock: '2120', takeOff: '2124', landing: '0010', onBlock: '0015' })).toMatchObject({
      'landings by night': '1',
      'hours, block to block': '2.92',
    });
    await workbook.set('Currency log', { B5: 'FAA' });
  });

  it.each<readonly [string, Partial<Flown>, RegExp]>([
    ['no time', { landing: '' }, /^The time of landing must be a time of day in UTC/],
    ['a time that is none', { takeOff: '2575' }, /^The time of take-off must be/],
    ['times out of order', { onBlock: '1400' }, /^The times are out of order/],
    ['half a landing', { landings: '1.5' }, /^The number of landings must be a whole number from 0 to 99\.$/],
    ['more stops than landings', { fullStops: '2' }, /^More landings to a full stop/],
    ['more by night than all', { byNight: '2' }, /by night, than landings/],
    [
      'landings from day into night',
      { offBlock: '2020', takeOff: '2030', landing: '2330', onBlock: '2335', landings: '3', fullStops: '3' },
      /^The flight began by day and ended by night, with 3 landings\. Say how many of them were by night\.$/,
    ],
    ['which landings were to a full stop', { landings: '3', fullStops: '2', byNight: '1' }, /Write this flight into the log by hand\.$/],
  ])('asks, and writes nothing: %s', (_, flown, said) => expect(() => rowOf(flown)).toThrow(said));

  it('takes what the pilot says in the place of the Sun', () => {
    expect(shownOf({ landings: '3', fullStops: '3', byNight: '1' })).toMatchObject({
      'landings by day': '2',
      'to a full stop by day': '2',
      'landings by night': '1',
      'to a full stop by night': '1',
    });
    expect(shownOf({ landings: '0', fullStops: '' })).not.toHaveProperty('landings by day');
  });

  it('asks how many were by night where a field has no position', async () => {
    await workbook.set('Trip sheet', { [`C${tripRows.field}`]: '' });
    expect(() => rowOf({})).toThrow(/^A field of the trip has no position on Fields/);
    expect(shownOf({ byNight: '0' })).toMatchObject({ 'landings by day': '1' });
    await workbook.set('Trip sheet', { [`C${tripRows.field}`]: 'Tansy Ridge' });
  });

  it('is read by the lists once it is written', async () => {
    const { row, entries } = rowOf({});
    await workbook.set('Currency log', Object.fromEntries(entries.map(({ column, content }) => [address(row, column), content])));
    expect(rowOf({}).row).toBe(row + 1);
  });
});
