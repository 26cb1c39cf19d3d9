// A visit written as lines of the history: what is shown is what the ledger then says, and nothing is written of what cannot be.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { cardsToLoad, visitLines, type Visit } from '../../addon/workbook/loadVisit';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';

const usual: Visit = { cards: [{ at: 0, failed: false }], day: '2026-11-25', by: 'Dag', seen: true, remark: '' };

describe('a visit', () => {
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await openHeadless(sheetTemplates);
  });
  afterAll(() => workbook.dispose());
  const lines = (visit: Partial<Visit>): ReturnType<typeof visitLines> => visitLines(workbook.snapshot(), sheetTemplates, { ...usual, ...visit });

  it('lists the cards that the Load list asks to load, and the day of the ledger', () => {
    const { cards, day } = cardsToLoad(workbook.snapshot(), sheetTemplates);
    expect([cards.length, day]).toEqual([9, '2026-11-25']);
    expect(cards[0]).toEqual({
      ...{ when: 'overdue', aircraft: 'Brindle Two', who: 'Dag', box: 'panel, right', database: 'navigation', cycle: '2611', effective: 46_324 },
    });
  });

  it.each<readonly [string, Partial<Visit>, RegExp]>([
    ['no card', { cards: [] }, /^No card is ticked\.$/],
    ['no name', { by: ' ' }, /^Say who loaded the cards\.$/],
    ['a day in words', { day: 'today' }, /^The day of the visit must be a date/],
    ['a day that is none', { day: '2026-11-31' }, /^The day of the visit must be a date/],
    ['a day still to come', { day: '2026-11-26' }, /^The day of the visit lies after 2026-11-25/],
  ])('asks, and writes nothing: %s', (_, visit, said) => expect(() => lines(visit)).toThrow(said));

  it('is read by the ledger once it is written, a failed load as one', async () => {
    const visit = { cards: [0, 1].map((at) => ({ at, failed: at === 1 })), remark: 'hangar' };
    const { sheet, firstRow, entries, shown } = lines(visit);
    expect(shown).toEqual([
      'Brindle Two, panel, right, navigation: cycle 2611, effective 2026-10-29, seen on the unit 2026-11-25',
      'Merle Tug, panel, navigation: cycle 2611, effective 2026-10-29, the load failed',
    ]);
    await workbook.set(sheet, Object.fromEntries(entries.map(({ row, column, content }) => [address(row, column), content])));
    expect(workbook.values('Data ledger', 'G16:J16')).toEqual([[46_324, 46_351, 46_351, 'CHECK']]);
    expect(workbook.value('Data ledger', 'M19')).toMatch(/load of 2026-11-25 failed, the card is as it was/);
    expect(workbook.values('Data ledger', `H${firstRow}:I${firstRow + 1}`)).toEqual([
      ['', 'hangar'],
      ['yes', 'hangar'],
    ]);
    expect(lines({}).firstRow).toBe(firstRow + 2);
  });
});
