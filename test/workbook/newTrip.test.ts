// A new trip and the next leg in the whole workbook: what is emptied makes the trip UNKNOWN and is named; what belongs to aircraft and pilot stays.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { newTrip, nextLeg, type TripChange } from '../../addon/workbook/newTrip';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import { tankRows } from '../../sheets-templates/balance/rows';
import { tripRows as rows } from '../../sheets-templates/trip/rows';

describe('a new trip', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
  });
  afterAll(() => workbook.dispose());

  const trip = (cell: string): unknown => workbook.value('Trip sheet', cell);
  const words = (): Map<unknown, readonly unknown[]> =>
    new Map(workbook.values('Trip sheet', `G${rows.judged.first}:I${rows.judged.last}`).map(([item, ...said]) => [item, said]));
  async function write({ entries }: TripChange): Promise<void> {
    for (const sheet of new Set(entries.map((one) => one.sheet))) {
      const cells = entries.filter((one) => one.sheet === sheet).map(({ row, column, content }) => [address(row, column), content] as const);
      await workbook.set(sheet, Object.fromEntries(cells));
    }
  }

  it('begins the next leg at the destination, with its reports, no fuel in the tanks, and the planned rest told', async () => {
    const [metar, taf] = [trip(`A${rows.metars.first + 1}`), trip(`A${rows.tafs.first + 1}`)];
    const change = nextLeg(workbook.snapshot(), sheetTemplates);
    // 48 on board, less 1.4 for taxi, 0.8 for the climb and 107.6 NM at 118 kt and 10.5 an hour: 36.2 and a little.
    expect(change.said).toContain('The plan leaves 36.2 US gal: look into the tanks');
    await write(change);
    expect([trip(`B${rows.field}`), trip(`C${rows.field}`), trip(`D${rows.field}`), trip(`B${rows.runwayName}`)]).toEqual([
      'Tansy Ridge',
      '',
      '',
      '',
    ]);
    expect([trip(`A${rows.metars.first}`), trip(`A${rows.metars.first + 1}`), trip(`A${rows.tafs.first}`)]).toEqual([metar, '', taf]);
    expect([trip(`B${rows.takeoffTime}`), trip(`B${rows.groundspeed}`), trip(`B${rows.pilot}`), trip(`B${rows.reserve}`)]).toEqual([
      '',
      '',
      'A. Invented',
      45,
    ]);
    const tanks = workbook.values('Weight and balance', `A${tankRows.first}:C${tankRows.last}`);
    expect(tanks.filter(([aircraft]) => aircraft === 'Quillon Four').map(([, , fuel]) => fuel)).toEqual(['', '']);
    expect(tanks.filter(([aircraft]) => aircraft === 'Brindle Two').every(([, , fuel]) => Number(fuel) > 0)).toBe(true);
    expect(trip('B3')).toBe('UNKNOWN');
    expect(words().get('Fuel')?.[0]).toBe('UNKNOWN');
    expect(words().get('Loading, take-off')?.[0]).toBe('UNKNOWN');
  });

  it('empties the entries of the trip, names what is missing, and leaves what belongs to the pilot', async () => {
    await write(newTrip(workbook.snapshot(), sheetTemplates));
    for (const row of [rows.firstDay, rows.takeoffTime, rows.passengers, rows.field, rows.runwayName, rows.groundspeed, rows.gradient])
      expect(trip(`B${row}`), String(row)).toBe('');
    expect(
      workbook
        .values('Trip sheet', `A${rows.metars.first}:A${rows.tafs.last}`)
        .flat()
        .every((text) => text === ''),
    ).toBe(true);
    expect([trip(`B${rows.pilot}`), trip(`B${rows.climbSpeed}`), trip(`B${rows.contingency}`), trip(`B${rows.reserve}`)]).toEqual([
      'A. Invented',
      85,
      5,
      45,
    ]);
    expect(trip('B3')).toBe('UNKNOWN');
    const [word, reason] = words().get('Entries') ?? [];
    expect(word).toBe('UNKNOWN');
    for (const missing of ['field (departure)', 'field (destination)', 'take-off, UTC', 'passengers', 'night', 'instrument flight', 'time en route'])
      expect(reason).toContain(missing);
    // Whatever cannot be judged says why.
    for (const [item, [verdict, why]] of words()) if (verdict === 'UNKNOWN') expect(why, String(item)).not.toBe('');
  });

  it('has no next leg without a destination', () => {
    expect(() => nextLeg(workbook.snapshot(), sheetTemplates)).toThrow('no destination');
  });
});
