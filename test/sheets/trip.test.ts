// The whole workbook as its users meet it: the demo trip, then one thing wrong at a time; the verdict and who says so.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import type { TemplateValue } from '../../sheets-templates/template';

type Entries = Readonly<Record<string, Readonly<Record<string, TemplateValue>>>>;

interface Case {
  readonly what: string;
  readonly change: Entries;
  readonly back: Entries;
  readonly verdict: string;
  /** Items that must not be OK any more. */
  readonly items: readonly string[];
}

const trip = (change: Readonly<Record<string, TemplateValue>>): Entries => ({ 'Trip sheet': change });
const balance = (change: Readonly<Record<string, TemplateValue>>): Entries => ({ 'Weight and balance': change });

const cases: readonly Case[] = [
  { what: 'a report with a stronger wind from the side', change: trip({ A82: 'METAR ZZXA 281350Z 24025KT 9999 FEW040 18/09 Q1009' }), back: trip({ A82: 'METAR ZZXA 281350Z 22012KT 9999 FEW040 18/09 Q1009' }), verdict: 'CHECK', items: ['Crosswind'] },
  { what: 'a report of yesterday', change: trip({ A83: 'METAR ZZXB 271350Z 09008KT CAVOK 21/12 Q1007' }), back: trip({ A83: 'METAR ZZXB 281350Z 09008KT CAVOK 21/12 Q1007' }), verdict: 'CHECK', items: ['Dates'] },
  { what: 'a report with a variable wind', change: trip({ A83: 'METAR ZZXB 281350Z VRB03KT CAVOK 21/12 Q1007' }), back: trip({ A83: 'METAR ZZXB 281350Z 09008KT CAVOK 21/12 Q1007' }), verdict: 'UNKNOWN', items: ['Entries', 'Landing runway'] },
  { what: 'a report that cannot be read', change: trip({ A82: 'windy and warm' }), back: trip({ A82: 'METAR ZZXA 281350Z 22012KT 9999 FEW040 18/09 Q1009' }), verdict: 'UNKNOWN', items: ['Entries', 'Take-off runway'] },
  { what: 'a temperature beyond the tables', change: trip({ B16: 48 }), back: trip({ B16: 18 }), verdict: 'UNKNOWN', items: ['Take-off runway', 'Climb'] },
  { what: 'no temperature', change: trip({ B16: '' }), back: trip({ B16: 18 }), verdict: 'UNKNOWN', items: ['Entries', 'Take-off runway', 'Climb'] },
  { what: 'words for a temperature', change: trip({ C16: 'warm' }), back: trip({ C16: 21 }), verdict: 'UNKNOWN', items: ['Entries', 'Landing runway'] },
  { what: 'a short runway', change: trip({ B20: 2800 }), back: trip({ B20: 3400 }), verdict: 'NO', items: ['Take-off runway'] },
  { what: 'a strong crosswind', change: trip({ B17: 300, B18: 20 }), back: trip({ B17: 241, B18: 12 }), verdict: 'CHECK', items: ['Crosswind'] },
  { what: 'an altimeter setting in no unit', change: trip({ B15: 500 }), back: trip({ B15: 1009 }), verdict: 'UNKNOWN', items: ['Take-off runway', 'Climb', 'Crosswind'] },
  { what: 'no fuel flow', change: trip({ B41: '' }), back: trip({ B41: 10.5 }), verdict: 'UNKNOWN', items: ['Entries', 'Fuel', 'Loading, landing', 'Landing runway'] },
  { what: 'a trip that begins before as_of', change: trip({ B8: { date: '2026-11-20' } }), back: trip({ B8: { date: '2026-11-28' } }), verdict: 'NO', items: ['Dates', 'Navigation data'] },
  { what: 'a card out of date', change: trip({ C73: { date: '2026-10-29' } }), back: trip({ C73: { date: '2026-11-26' } }), verdict: 'NO', items: ['Navigation data'] },
  { what: 'a card with no date', change: trip({ C73: '' }), back: trip({ C73: { date: '2026-11-26' } }), verdict: 'UNKNOWN', items: ['Navigation data'] },
  { what: 'a medical that ends on the trip', change: trip({ C78: { date: '2026-11-28' } }), back: trip({ C78: { date: '2027-06-30' } }), verdict: 'NO', items: ['Pilot'] },
  { what: 'too much baggage, too far aft', change: balance({ C11: 400 }), back: balance({ C11: 45 }), verdict: 'NO', items: ['Loading, take-off', 'Loading, zero fuel', 'Loading, whole burn'] },
  { what: 'a seat left blank', change: balance({ C9: '' }), back: balance({ C9: 345 }), verdict: 'UNKNOWN', items: ['Loading, take-off', 'Take-off runway'] },
  { what: 'weight and arm swapped', change: balance({ C9: 86.5, D9: 945 }), back: balance({ C9: 345, D9: 86.5 }), verdict: 'NO', items: ['Loading, entries'] },
  { what: 'a station twice', change: balance({ B10: 'front seats' }), back: balance({ B10: 'rear seats' }), verdict: 'CHECK', items: ['Loading, entries'] },
  { what: 'corners out of order', change: balance({ C69: 92, D69: 2650, C71: 82, D71: 2150 }), back: balance({ C69: 82, D69: 2150, C71: 92, D71: 2650 }), verdict: 'UNKNOWN', items: ['Loading, take-off', 'Loading, entries'] },
  { what: 'less fuel than the trip takes', change: balance({ C28: 3, C29: 3 }), back: balance({ C28: 24, C29: 24 }), verdict: 'NO', items: ['Fuel', 'Loading, landing'] },
  { what: 'more fuel than is usable', change: { 'Manual tables': { G6: 40 } }, back: { 'Manual tables': { G6: 60 } }, verdict: 'NO', items: ['Fuel'] },
  { what: "more fuel in a tank than its arms reach", change: balance({ C28: 31 }), back: balance({ C28: 24 }), verdict: 'UNKNOWN', items: ['Loading, take-off', 'Loading, whole burn'] },
  { what: 'the utility category', change: balance({ F4: 'utility' }), back: balance({ F4: 'normal' }), verdict: 'NO', items: ['Loading, take-off'] },
  { what: 'a category that is not there', change: balance({ F4: 'acrobatic' }), back: balance({ F4: 'normal' }), verdict: 'UNKNOWN', items: ['Loading, take-off'] },
  { what: 'an aircraft that is not there', change: { Start: { A7: 'Nobody' } }, back: { Start: { A7: 'Quillon Four' } }, verdict: 'UNKNOWN', items: ['Loading, take-off', 'Take-off runway', 'Fuel'] },
];

describe('the trip of the invented aircraft', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
  });
  afterAll(() => workbook.dispose());

  const set = async (entries: Entries): Promise<void> => {
    for (const [sheet, cells] of Object.entries(entries)) await workbook.set(sheet, cells);
  };
  const verdict = (): unknown => workbook.named('trip_verdict')[0]?.[0];
  const notOk = (): unknown[] => workbook.named('trip_reasons').filter(([, word]) => word !== 'OK').map(([item]) => item);

  it('is OK as it comes', () => {
    expect(notOk()).toEqual([]);
    expect(verdict()).toBe('OK');
  });

  it.each(cases)('$what: $verdict', async ({ change, back, verdict: wanted, items }) => {
    await set(change);
    const got = { verdict: verdict(), items: items.filter((item) => !notOk().includes(item)) };
    const reasons = workbook.named('trip_reasons').map(([, , reason]) => String(reason));
    await set(back);
    expect(got).toEqual({ verdict: wanted, items: [] });
    expect(reasons.filter((reason) => reason === '' || reason.startsWith('#'))).toEqual([]);
    expect(notOk()).toEqual([]);
  });

  const second: Entries = { Start: { A7: 'Brindle Two' }, 'Trip sheet': { B20: 1100, C20: 1200, B41: 20 } };
  const first: Entries = { Start: { A7: 'Quillon Four' }, 'Trip sheet': { B20: 3400, C20: 3600, B41: 10.5 } };

  it('judges the second aircraft, in other units, on the same sheets', async () => {
    await set(second);
    expect(notOk()).toEqual([]);
    expect(workbook.value('Weight and balance', 'D39')).toBe('kg');
    // By hand: 445 + 78 + 70 + 9 = 602 kg of stations, 70 less 1.4 litres of fuel at 0.72 kg.
    expect(workbook.value('Weight and balance', 'C39')).toBeCloseTo(602 + 68.6 * 0.72, 6);
    await set(first);
  });

  const burn = (): unknown => workbook.named('trip_reasons').find(([item]) => item === 'Loading, whole burn')?.slice(1);

  it.each([
    { what: 'no arm of a tank', gap: balance({ E30: '' }), back: balance({ E30: 0 }), verdict: 'UNKNOWN', reason: 'lateral: tank "main" has no lateral arm' },
    { what: 'no arm of a station', gap: balance({ E13: '' }), back: balance({ E13: -230 }), verdict: 'UNKNOWN', reason: 'lateral: station "left seat" has no lateral arm' },
    { what: 'no arm of a tank, and baggage too far aft', gap: balance({ E30: '', C15: 60, D15: 2500 }), back: balance({ E30: 0, C15: 9, D15: 1150 }), verdict: 'NO', reason: /^on the way: worst of the burn, \S+ behind the aft limit; reserve: worst beyond landing, \S+ behind the aft limit; lateral: tank "main" has no lateral arm$/ },
    { what: 'a seat far out to one side', gap: balance({ E13: 900 }), back: balance({ E13: -230 }), verdict: 'NO', reason: /^lateral: from \S+ to \S+, limits -60 to 60$/ },
    { what: 'too heavy at take-off alone', gap: { 'Manual tables': { J7: 600 } }, back: { 'Manual tables': { J7: 720 } }, verdict: 'NO', reason: 'take-off, landing or zero fuel is not OK' },
  ])('with lateral limits, $what: $verdict', async ({ gap, back, verdict: wanted, reason }) => {
    await set(second);
    await set(gap);
    const got = { verdict: verdict(), burn: burn() };
    await set(back);
    const mended = notOk();
    await set(first);
    expect(got).toEqual({ verdict: wanted, burn: [wanted, typeof reason === 'string' ? reason : expect.stringMatching(reason)] });
    expect(mended).toEqual([]);
    expect(notOk()).toEqual([]);
  });
});
