// Slips of typing, and entries that belong to nobody: none of them may leave the trip OK, and the item that tells must say what is wrong.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import type { TemplateValue } from '../../sheets-templates/template';

interface Slip {
  readonly what: string;
  readonly sheet: string;
  readonly typed: Readonly<Record<string, TemplateValue>>;
  /** An item of the trip with its verdict and reason. */
  readonly told: readonly [item: string, verdict: string, reason: RegExp | string];
}

const [trip, balance, card, start] = ['Trip sheet', 'Weight and balance', 'Descent and hold card', 'Start'];
const seeBalance = 'not computed: see Weight and balance';
const noWeight = 'not computed: no weight, see Weight and balance';
const noDay = 'a day is missing, or is none: first day, last day, or as_of on Start';

const slips: readonly Slip[] = [
  { what: 'a station of an aircraft with a slip in its name', sheet: balance, typed: { A9: 'Quilon Four' }, told: ['Loading, take-off', 'UNKNOWN', seeBalance] },
  { what: 'the same, for the runway', sheet: balance, typed: { A9: 'Quilon Four' }, told: ['Take-off runway', 'UNKNOWN', noWeight] },
  { what: 'a station with a blank behind the name of its aircraft', sheet: balance, typed: { A9: 'Quillon Four ' }, told: ['Loading, take-off', 'UNKNOWN', seeBalance] },
  { what: 'a station whose aircraft is an error', sheet: balance, typed: { A9: '=NA()' }, told: ['Loading, take-off', 'UNKNOWN', seeBalance] },
  { what: 'a station without its aircraft', sheet: balance, typed: { A9: '' }, told: ['Loading, zero fuel', 'UNKNOWN', seeBalance] },
  { what: 'a weight that is a text', sheet: balance, typed: { C9: '345 lb' }, told: ['Loading, entries', 'UNKNOWN', seeBalance] },
  { what: 'a blank weight', sheet: balance, typed: { C9: '' }, told: ['Loading, entries', 'UNKNOWN', seeBalance] },
  { what: 'a tank of an aircraft with a slip in its name', sheet: balance, typed: { A29: 'Quilon Four' }, told: ['Loading, landing', 'UNKNOWN', seeBalance] },
  { what: 'a corner of an aircraft with a slip in its name', sheet: balance, typed: { A69: 'Quilon Four' }, told: ['Loading, take-off', 'UNKNOWN', seeBalance] },
  { what: 'a corner without its aircraft', sheet: balance, typed: { A69: '' }, told: ['Loading, take-off', 'UNKNOWN', seeBalance] },
  { what: 'a corner of a category with a slip in its name', sheet: balance, typed: { B69: 'norml' }, told: ['Loading, take-off', 'UNKNOWN', seeBalance] },
  { what: 'gusts across beyond what the manual shows', sheet: trip, typed: { A82: 'METAR ZZXA 281350Z 24012G45KT 9999 FEW040 18/09 Q1009' }, told: ['Crosswind', 'CHECK', '37 kt on departure, 5 at the destination, gusts taken in; shown in the manual 15'] },
  { what: 'a reserve below zero', sheet: trip, typed: { B42: -45 }, told: ['Entries', 'CHECK', 'looks like a slip: reserve wanted -45, usually 10 to 600'] },
  { what: 'a groundspeed with a digit too many', sheet: trip, typed: { B40: 1180 }, told: ['Entries', 'CHECK', 'looks like a slip: cruise groundspeed 1180, usually 20 to 600'] },
  { what: 'a fuel flow of nearly nothing', sheet: trip, typed: { B41: 0.1 }, told: ['Entries', 'CHECK', 'looks like a slip: fuel flow 0.1, usually 1 to 1000'] },
  { what: 'a correction typed as 20 %', sheet: trip, typed: { B27: 0.2 }, told: ['Entries', 'CHECK', /a take-off correction of less than 1 percent: 20 percent is typed 20$/] },
  { what: 'a runway by its number', sheet: trip, typed: { C19: 8 }, told: ['Entries', 'CHECK', /runway direction \(destination\) is in degrees: runway 8 would be 80$/] },
  { what: 'a medical typed without hyphens', sheet: trip, typed: { C78: 20200101 }, told: ['Pilot', 'UNKNOWN', /^medical: a date is missing, or is none/] },
  { what: 'a last day typed without hyphens', sheet: trip, typed: { B9: 20261129 }, told: ['Dates', 'UNKNOWN', noDay] },
  { what: 'an as_of that is no day', sheet: start, typed: { A6: 0 }, told: ['Dates', 'UNKNOWN', noDay] },
  { what: 'a database without its data, and one without its name', sheet: trip, typed: { A73: '', A76: 'terrain' }, told: ['Navigation data', 'UNKNOWN', '3 of 4 current from the first to the last day'] },
  { what: 'a plan of the descent that lies behind', sheet: card, typed: { G24: 100, G25: 100, G26: 100 }, told: ['Descent', 'NO', /^the plan by schedule: the start lies 98.5 NM behind/] },
  { what: 'a plan of the descent without its course', sheet: card, typed: { B28: '' }, told: ['Descent', 'UNKNOWN', /^the plan by schedule: not computed/] },
  { what: 'a restriction without its kind', sheet: card, typed: { E12: '' }, told: ['Descent', 'UNKNOWN', /^not computed: altitude now, or the distance, altitude or kind of a restriction/] },
];

describe('a slip of typing', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
  });
  afterAll(() => workbook.dispose());

  const stood = (sheet: string, place: string): TemplateValue => {
    const cell = sheetTemplates.find(({ name }) => name === sheet)?.cells.find(({ row, column }) => address(row, column) === place);
    return cell?.formula ?? cell?.value ?? '';
  };
  const tried = async <Seen>(sheet: string, typed: Slip['typed'], see: () => Seen): Promise<Seen> => {
    await workbook.set(sheet, typed);
    const seen = see();
    await workbook.set(sheet, Object.fromEntries(Object.keys(typed).map((place) => [place, stood(sheet, place)])));
    expect(workbook.named('trip_verdict')).toEqual([['OK']]);
    return seen;
  };
  const item = (name: string): unknown[] | undefined => workbook.named('trip_reasons').find(([one]) => one === name);

  it.each(slips)('$what', async ({ sheet, typed, told: [name, verdict, reason] }) => {
    const seen = await tried(sheet, typed, () => ({ verdict: workbook.named('trip_verdict')[0]?.[0], told: item(name) }));
    expect(seen.verdict).not.toBe('OK');
    expect(seen.told).toEqual([name, verdict, typeof reason === 'string' ? reason : expect.stringMatching(reason)]);
  });

  it('is told on Weight and balance, where its points stay UNKNOWN', async () => {
    const seen = await tried(balance, { A9: 'Quilon Four', A69: '' }, () => workbook.values(balance, 'A25:A44').flat().concat(workbook.value(balance, 'B45')));
    expect(seen[0]).toMatch(/^A station lacks a weight, an arm or an aircraft of Manual tables/);
    expect(seen[16]).toMatch(/^A corner lacks an aircraft/);
    expect(workbook.value(balance, 'A41')).toMatch(/^Every/);
    expect(seen.at(-1)).toBe('');
  });

  it('never shows more minutes of fuel than are left', async () => {
    const left = Number(workbook.value(trip, 'B45'));
    const wanted = Math.ceil(left);
    const seen = await tried(trip, { B42: wanted }, () => item('Fuel'));
    expect(left % 1).toBeGreaterThan(0.5);
    expect(seen).toEqual(['Fuel', 'NO', `${wanted - 1} minutes left at landing, ${wanted} wanted`]);
  });

  it('leaves a descent without a schedule to its restrictions', async () => {
    const blank = Object.fromEntries([24, 25, 26].flatMap((row) => ['E', 'F', 'G'].map((column) => [`${column}${row}`, ''])));
    expect(await tried(card, blank, () => item('Descent'))).toEqual(['Descent', 'OK', expect.stringMatching(/^3 of 3 met/)]);
  });

  it.each([['225', 45], ['045', 225], [225, 45]])('takes a side to hold on, %s, for degrees also where the cell keeps it as text', async (typed, inbound) => {
    expect(await tried(card, { B54: typed }, () => workbook.value(card, 'B55'))).toBe(inbound);
  });

  it('shows the units of the aircraft in use beside the entries that are in them', async () => {
    const units = (): unknown[] => ['D20', 'C41', 'C44'].map((place) => workbook.value(trip, place));
    expect(units()).toEqual(['ft', 'US gal an hour', 'US gal']);
    expect(await tried(start, { A7: 'Brindle Two' }, units)).toEqual(['m', 'L an hour', 'L']);
  });
});
