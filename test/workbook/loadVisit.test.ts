// A visit written as lines of the history: what is shown is what the ledger then says, and nothing is written of what cannot be.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { cardsToLoad, visitLines, type Visit } from '../../addon/workbook/loadVisit';
import { sheetTemplates } from '../../sheets-templates';
import { address } from '../../sheets-templates/build';
import { defaultRoom, placesFor } from '../../sheets-templates/ledger/places';
import type { List } from '../../sheets-templates/lists';

const serialOf = (iso: string): number => Date.parse(iso) / 86_400_000 + 25_569;

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

describe("a treasurer's month, from an empty ledger", () => {
  // AIRAC dates of 2026, 28 days apart from 29 October: 26 November, 24 December.
  const aircraft = ['Alder', 'Birch', 'Cedar', 'Dogwood'];
  const cards = Array.from({ length: 17 }, (_, index) => [aircraft[index % 4] ?? '', `box ${Math.floor(index / 4) + 1}`, `data ${index}`, '28-day']);
  const { cards: list, licences, loads, members } = placesFor(defaultRoom);
  const blank = (rows: List, letters: string): [string, string][] =>
    Array.from({ length: rows.last - rows.first + 1 }, (_, down) =>
      [...letters].map((letter): [string, string] => [`${letter}${rows.first + down}`, '']),
    ).flat();

  it('is written in 8 entries for 17 cards, and the ledger then says OK', async () => {
    const workbook = await openHeadless(sheetTemplates);
    const shown = { ...loads, last: loads.first + 40 };
    await workbook.set(
      'Data ledger',
      Object.fromEntries([...blank(list, 'ABCDEF'), ...blank(licences, 'ABCDEFGHIJ'), ...blank(members, 'ABCD'), ...blank(shown, 'ABCDEFGHI')]),
    );
    expect(workbook.value('Data ledger', 'C3')).toBe('UNKNOWN');
    // The cards are pasted in once.
    await workbook.set(
      'Data ledger',
      Object.fromEntries(cards.flatMap((card, down) => card.map((text, at) => [`${'ABCD'[at] ?? ''}${list.first + down}`, text]))),
    );
    for (const [day, effective] of [
      ['2026-11-25', '2026-10-29'],
      ['2026-12-24', '2026-12-24'],
    ] as const) {
      await workbook.set('Start', { A6: { date: day } });
      const { cards: asked } = cardsToLoad(workbook.snapshot(), sheetTemplates);
      const now = asked.flatMap((card, at) => (card.when === 'next' ? [] : [{ at, failed: false }]));
      expect(now.length).toBe(17);
      // The press that lists, one for each aircraft, the name, the press that shows, the press that writes.
      const entries = 1 + new Set(now.map(({ at }) => asked[at]?.aircraft)).size + 1 + 1 + 1;
      expect(entries).toBeLessThanOrEqual(20);
      const written = visitLines(workbook.snapshot(), sheetTemplates, { ...usual, cards: now, day });
      await workbook.set(written.sheet, Object.fromEntries(written.entries.map(({ row, column, content }) => [address(row, column), content])));
      expect(workbook.values('Data ledger', `J${list.first}:J${list.first + 16}`).flat()).toEqual(
        Array(17).fill(day === '2026-11-25' ? 'CHECK' : 'OK'),
      );
      expect(new Set(workbook.values('Data ledger', `G${list.first}:G${list.first + 16}`).flat())).toEqual(new Set([serialOf(effective)]));
    }
    workbook.dispose();
  }, 60_000);
});
