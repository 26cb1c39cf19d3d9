// The Data ledger as it is filled in by people in a hurry: half a card, a row beside its list, an error, a day that is a text.
import { describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { dataLedgerSheet } from '../../sheets-templates/dataLedger';
import { placesFor } from '../../sheets-templates/ledgerSections';
import { startSheet } from '../../sheets-templates/start';
import type { TemplateValue } from '../../sheets-templates/template';
import { tripSheet } from '../../sheets-templates/tripSheet';
import { changedTemplates } from './changedTemplates';

describe('the Data ledger, filled in badly', () => {
  const { cards, licences, members, diary } = placesFor({ cards: 24, fleet: 21, licences: 24, members: 30, diary: 120 });
  const name = dataLedgerSheet.name;
  /** Ten cards that agree, each current and verified on 15 November 2026. */
  const good: Record<string, TemplateValue> = Object.fromEntries(
    Array.from({ length: 10 }, (_, index): [string, TemplateValue][] => {
      const at = cards.first + index;
      return [[`C${at}`, `data ${index}`], [`E${at}`, { date: index === 6 ? '2026-11-12' : '2026-10-29' }], [`I${at}`, 'yes']];
    }).flat(),
  );
  const opened = (changes: Record<string, TemplateValue>, asOf: TemplateValue = { date: '2026-11-15' }): Promise<HeadlessWorkbook> =>
    openHeadless(changedTemplates(changedTemplates([startSheet, tripSheet, dataLedgerSheet], name, { ...good, ...changes }), startSheet.name, { A6: asOf }));
  const summary = async (changes: Record<string, TemplateValue>): Promise<string[]> => {
    const workbook = await opened(changes);
    const cells = ['C3', 'E3'].map((cell) => String(workbook.value(name, cell)));
    workbook.dispose();
    return cells;
  };

  it('is OK where every card is, and claims no licence that nobody wrote down', async () => {
    expect(await summary({})).toEqual(['OK', 'Every card is in force and verified. No licence written down for one of them has ended or ends within 30 days.']);
  });

  it.each([
    ['a box alone', { [`B${cards.first + 12}`]: 'tablet' }, /^A card has no verdict: give its aircraft/],
    ['a time of change alone', { [`H${cards.first + 12}`]: '0901Z' }, /^UNKNOWN: .*series missing/],
    ['a card below the list', { [`A${cards.last + 1}`]: 'DEMO-9' }, /^A card has no verdict: .*between the first and the last tinted row/],
    ['an error for an aircraft', { [`A${cards.first + 2}`]: '=1/0' }, /^UNKNOWN: \? panel, box 1, data 2 \(cannot be compared/],
    ['licences that cannot be read', { [`C${licences.first}`]: '31.3.2027' }, /^The cards below cannot be judged/],
  ] as [string, Record<string, TemplateValue>, RegExp][])('is UNKNOWN with %s, and says why', async (_what, changes, why) => {
    const [verdict, reason] = await summary(changes);
    expect(verdict).toBe('UNKNOWN');
    expect(reason).toMatch(why);
  });

  it('says of a licence and of a member beside their lists that they are not read', async () => {
    const workbook = await opened({ [`A${licences.last + 1}`]: 'DEMO-1', [`A${members.last + 1}`]: 'Gus' });
    expect(workbook.value(name, `A${licences.head - 1}`)).toMatch(/^A licence stands in a row beside its list, where it is not read/);
    expect(workbook.value(name, `A${members.head - 1}`)).toMatch(/^A member stands in a row beside its list, where it is not read/);
    workbook.dispose();
  });

  it('says where a member takes part in an aircraft that no licence names', async () => {
    const help = `I${members.head - 1}`;
    const workbook = await opened({ [`B${members.first}`]: 'demo_1' });
    expect(workbook.value(name, help)).toBe('At the next renewal of every licence, once each.');
    await workbook.set(name, { [`B${members.first}`]: 'DEMO1' });
    expect(workbook.value(name, help)).toMatch(/once each\. Rows of members in an aircraft that no licence names: 1\. /);
    workbook.dispose();
  });

  it('adds up a renewal of the very day though that day has a time, and nothing on a day that is a text', async () => {
    const timed = await opened({ [`C${licences.first}`]: { date: '2026-11-15' } }, 46_341.6);
    expect(timed.values(name, `L${licences.first}:L${licences.first + 1}`)).toEqual([[480], [480]]);
    timed.dispose();
    const text = await opened({}, '2026-11-15');
    expect(text.values(name, `L${licences.first}:M${licences.first + 14}`).flat().every((cell) => cell === '')).toBe(true);
    expect(text.value(name, `I${licences.first + 15}`)).toBe('as_of on the Start sheet is no date');
    text.dispose();
  });

  it('adds nothing up of a diary that goes on in rows which a user added at the end of the sheet', async () => {
    // 13 renewals of each of these licences, besides the 59 rows of the demo.
    const monthly = Object.fromEntries(Array.from({ length: 5 }, (_, index): [string, TemplateValue][] => {
      const at = licences.first + 8 + index;
      return [[`A${at}`, 'DEMO-1'], [`B${at}`, `more ${index}`], [`C${at}`, { date: '2026-11-14' }], [`D${at}`, 1], [`E${at}`, 10], [`F${at}`, 'EUR'], [`G${at}`, 'equal']];
    }).flat());
    const longer = [startSheet, tripSheet, { ...dataLedgerSheet, rows: diary.last + 200 }];
    const workbook = await openHeadless(changedTemplates(longer, name, monthly));
    expect(workbook.value(name, `A${diary.last + 1}`)).not.toBe('');
    expect(workbook.values(name, `L${licences.first}:M${licences.first + 14}`).flat().every((cell) => cell === '')).toBe(true);
    expect(workbook.value(name, `I${licences.first + 15}`)).toBe(`the diary has more rows than are read: insert rows before row ${diary.last}`);
    workbook.dispose();
  });
});
