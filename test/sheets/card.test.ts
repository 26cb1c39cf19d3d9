// The Descent and hold card, evaluated: what the pilot types, what the card answers, and that nothing missing passes for OK.
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type CellResult, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { descentHoldCard } from '../../sheets-templates/card/sheet';
import type { TemplateValue } from '../../sheets-templates/template';
import { tripAsTyped } from '../support/tripAsTyped';

const sheet = descentHoldCard.name;
let workbook: HeadlessWorkbook;
let undo: Record<string, TemplateValue> = {};

beforeAll(async () => {
  workbook = await openHeadless([tripAsTyped, descentHoldCard]);
});
afterAll(() => workbook.dispose());
afterEach(async () => {
  // An empty change would start no calculation to wait for.
  if (Object.keys(undo).length > 0) await workbook.set(sheet, undo);
  undo = {};
});

const value = (cell: string): CellResult => workbook.value(sheet, cell);
/** Types values, and remembers what stood there. */
async function type(cells: Record<string, TemplateValue>): Promise<void> {
  const typed = (cell: string): TemplateValue =>
    descentHoldCard.cells.find(({ row, column }) => `${'ABCDEFGHIJK'[column - 1]}${row}` === cell)?.value ?? '';
  undo = { ...undo, ...Object.fromEntries(Object.keys(cells).map((cell) => [cell, typed(cell)])) };
  await workbook.set(sheet, cells);
}
const rowOf = (label: string): number => descentHoldCard.cells.find((cell) => cell.column === 1 && cell.value === label)?.row ?? 0;
const entry = (label: string): string => `B${rowOf(label)}`;
const brief = (item: string): CellResult => workbook.values(sheet, 'E54:G74').find(([name]) => name === item)?.[1] ?? 'no such item';

describe('the card as it comes', () => {
  it('makes four calls of ours', () => {
    const calls = descentHoldCard.cells.flatMap(({ formula = '' }) => formula.match(/\b(DESCENT|HOLD)_[A-Z]+\(/g) ?? []);
    expect(calls.sort()).toEqual(['DESCENT_CROSSINGS(', 'DESCENT_PLAN(', 'HOLD_BRIEF(', 'HOLD_UNTIL(']);
  });

  it('has an answer everywhere: three verdicts, a decided start, a plan, an entry', () => {
    expect(workbook.values(sheet, 'E2:E4').flat()).toEqual(['OK', 'OK', 'OK']);
    expect(value('B2')).toBe('OK');
    expect(value('F9')).toBe('Tansy');
    expect(value('F7')).toBeCloseTo(34 - 4000 / (6076.12 * Math.tan((1.9 * Math.PI) / 180)), 2);
    expect(brief('entry')).toBe('teardrop');
  });

  it('puts the start of the plan its miles before the crossing point', () => {
    const total = workbook
      .values(sheet, 'A40:H49')
      .filter(([from]) => from !== '')
      .at(-1);
    expect(value(entry('start, by schedule'))).toBeCloseTo(34 - (Number(total?.[7]) - 8), 9);
  });

  it('fits beside the panel at 1280 pixels', () => {
    expect(descentHoldCard.columnWidths.reduce((sum, width) => sum + width, 0)).toBeLessThanOrEqual(980 - 44);
  });
});

describe('crossings', () => {
  it('takes eight, and names the one that decides', async () => {
    await type({
      A15: 'Fourth',
      B15: 20,
      D15: 9000,
      E15: 'at or below',
      A16: 'Fifth',
      B16: 70,
      D16: 3000,
      E16: 'at',
      A17: 'Sixth',
      B17: 75,
      D17: 3000,
      E17: 'at',
      A18: 'Seventh',
      B18: 80,
      D18: 2500,
      E18: 'at',
      A19: 'Eighth',
      B19: 90,
      D19: 2000,
      E19: 'at or above',
    });
    expect(value('F9')).toBe('Fourth');
    expect(
      workbook
        .values(sheet, 'J12:J19')
        .flat()
        .filter((verdict) => verdict === 'OK').length,
    ).toBe(8);
    expect(value('E2')).toBe('OK');
  });

  it('says NO where the start lies behind, in words', async () => {
    await type({ B13: 18 });
    expect(value('E2')).toBe('NO');
    expect(value('B2')).toBe('NO');
    expect(value('K13')).toMatch(/^\d,?\d* ft too high: start \d+\.\d NM behind$/);
    expect(value('E3')).toBe('NO');
    expect(value('F3')).toMatch(/^by your schedule and the winds: the start lies [\d.]+ NM behind/);
  });

  it('is UNKNOWN with a half-filled row, with none, and without the altitude', async () => {
    await type({ B14: '' });
    expect(workbook.values(sheet, 'E2:E3').flat()).toEqual(['UNKNOWN', 'UNKNOWN']);
    await type({ A12: '', B12: '', D12: '', E12: '', A13: '', B13: '', C13: '', D13: '', E13: '', A14: '', D14: '', E14: '' });
    expect(workbook.values(sheet, 'E2:E3').flat()).toEqual(['UNKNOWN', 'UNKNOWN']);
    expect(value('F2')).toBe('no restriction entered');
  });

  it('is UNKNOWN without the altitude now', async () => {
    await type({ B7: '' });
    expect(workbook.values(sheet, 'E2:E3').flat()).toEqual(['UNKNOWN', 'UNKNOWN']);
    expect(value('B2')).toBe('UNKNOWN');
  });
});

describe('the plan', () => {
  it('can be made for another crossing than the deciding one', async () => {
    await type({ B23: 'Marrow' });
    expect([value('B25'), value('B26'), value('B27')]).toEqual([4500, 0, 58]);
    expect(value('E3')).toBe('OK');
    await type({ B23: 'Nowhere' });
    expect(value('E3')).toBe('UNKNOWN');
    expect(value('C23')).toBe('no such fix');
  });

  it('is never made from the fix itself where the miles before it are there, but no number', async () => {
    // The crossings read "8,0" as 8; with "eight" there is no crossing that decides.
    for (const [miles, planned] of [
      ['8,0', '8,0'],
      ['eight', ''],
    ] as const) {
      await type({ C13: miles });
      expect([value('B26'), value('B27'), value('B32'), value('E3'), value('B2')]).toEqual([planned, '', '', 'UNKNOWN', 'UNKNOWN']);
    }
    await type({ C13: 8, B13: '42' });
    expect([value('B26'), value('B27'), value('B32'), value('E3')]).toEqual([8, '', '', 'UNKNOWN']);
  });

  it('has to be looked at where the crossings are judged at another angle', async () => {
    await type({ B8: 3 });
    expect(value('E3')).toBe('CHECK');
    expect(value('F3')).toContain('its angle is 1.9, crossings are judged at 3');
  });

  it('is UNKNOWN where schedule or winds do not reach, and the reason is at hand', async () => {
    await type({ E34: 10000 });
    expect(value('E3')).toBe('UNKNOWN');
    expect(workbook.sentences(sheet, 'A39')).toEqual([
      'DESCENT_PLAN: winds must reach from 7,000 to 11,000 feet, since nothing is extrapolated; got 3,000 to 10,000 feet.',
    ]);
  });
});

describe('the hold', () => {
  const points = ['N', 'NNE', 'NE', 'ENE', 'E', 'ESE', 'SE', 'SSE', 'S', 'SSW', 'SW', 'WSW', 'W', 'WNW', 'NW', 'NNW'];

  it('reads the side in letters, in words and in degrees', async () => {
    const inbound = entry('inbound course');
    for (const [index, point] of points.entries()) {
      await type({ [entry('hold on the side')]: point.toLowerCase() });
      expect(value(inbound), point).toBe((index * 22.5 + 180) % 360 || 360);
    }
    for (const [side, course] of [
      ['south-west', 45],
      ['North', 180],
      ['north north east', 202.5],
      ['SOUTH', 360],
      [0, 180],
      [180, 360],
      [43, 223],
      ['hold west', 90],
      ['R270', 90],
      ['r-090', 270],
      ['270 radial', 90],
      ['Radial 180', 360],
    ] as const) {
      await type({ [entry('hold on the side')]: side });
      expect(value(inbound), String(side)).toBe(course);
    }
  });

  it.each([['somewhere'], [''], [400]])('is UNKNOWN where the side is %j', async (side) => {
    await type({ [entry('hold on the side')]: side });
    expect(value(entry('inbound course'))).toBe('');
    expect(value('E4')).toBe('UNKNOWN');
  });

  it('is NO where it is too fast, where the wind is too strong, and where the fuel does not last', async () => {
    await type({ [entry('holding speed')]: 240 });
    expect([value('E4'), value('F4')]).toEqual(['NO', expect.stringContaining('; too fast')]);
    await type({ [entry('holding speed')]: 110, [entry('wind')]: 60, [entry('wind from')]: 225, [entry('leg')]: '1 min' });
    expect([value('E4'), value('F4')]).toEqual(['NO', expect.stringContaining('wind too strong for a racetrack')]);
    await type({ [entry('wind')]: 22, [entry('wind from')]: 260, [entry('leg')]: '4 NM', [entry('usable fuel now')]: 17 });
    expect([value('E4'), value('F4')]).toEqual(['NO', expect.stringMatching(/; fuel: leave by \d{4}Z$/)]);
  });

  it('is UNKNOWN without fuel or without a wind, though the speed be right', async () => {
    await type({ [entry('usable fuel now')]: '' });
    expect([value('E4'), value('F4')]).toEqual(['UNKNOWN', expect.stringContaining('fuel not computed')]);
    await type({ [entry('wind')]: '' });
    expect(value('E4')).toBe('UNKNOWN');
  });

  it('works across midnight', async () => {
    await type({ [entry('time now')]: '2350Z', [entry('EFC')]: '0010Z' });
    expect(value(`A${rowOf('laps until then') + 1}`)).toBeCloseTo(20 / Number(brief('lap minutes')), 9);
  });
});
