// The Data ledger as it is filled in by people in a hurry: half a card, a row beside its list, an error, a day that is a text.
import { describe, expect, it } from 'vitest';
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { demoCards } from '../../sheets-templates/demo/ledger';
import { dataLedgerSheet } from '../../sheets-templates/ledger/sheet';
import { defaultRoom, placesFor } from '../../sheets-templates/ledger/places';
import { startSheet } from '../../sheets-templates/start/sheet';
import type { TemplateValue } from '../../sheets-templates/template';
import { tripAsTyped } from '../support/tripAsTyped';
import { changedTemplates } from './changedTemplates';

describe('the Data ledger, filled in badly', () => {
  const { cards, fleet, licences, renewals, members, diary, loads } = placesFor(defaultRoom);
  const name = dataLedgerSheet.name;
  /** One that covers them all, so that nothing is said of licences. */
  const everyLicence = Object.entries({ A: 'all', B: 'all', C: 'no end', E: 0, F: 'EUR', G: 'equal' }).map(
    ([letter, value]): [string, TemplateValue] => [`${letter}${licences.first + 9}`, value],
  );
  /** Ten cards that agree, each with one load, current and verified on 15 November 2026. */
  const good: Record<string, TemplateValue> = Object.fromEntries(
    Array.from({ length: 13 }, (_, index): [string, TemplateValue][] => {
      const at = loads.first + index;
      if (index >= 10) return [...'ABCDEFGHI'].map((letter) => [`${letter}${at}`, '']);
      const [aircraft = '', box = '', , series] = demoCards[index] ?? [];
      const day = (long: string): TemplateValue => ({ date: series === '14-day' ? '2026-11-12' : long });
      return [
        [`C${cards.first + index}`, `data ${index}`],
        ...Object.entries({ A: aircraft as string, B: box as string, C: `data ${index}`, G: 'Ada', H: '', I: '' }).map(
          ([letter, text]): [string, TemplateValue] => [`${letter}${at}`, text],
        ),
        [`D${at}`, day('2026-10-29')],
        [`E${at}`, day('2026-10-28')],
        [`F${at}`, day('2026-10-28')],
      ];
    })
      .flat()
      .concat(everyLicence),
  );
  const today = '2026-11-15';
  const opened = (changes: Record<string, TemplateValue>, asOf: TemplateValue = { date: today }): Promise<HeadlessWorkbook> =>
    openHeadless(
      changedTemplates(changedTemplates([startSheet, tripAsTyped, dataLedgerSheet], name, { ...good, ...changes }), startSheet.name, { A6: asOf }),
      today,
    );
  const summary = async (changes: Record<string, TemplateValue>): Promise<string[]> => {
    const workbook = await opened(changes);
    const cells = ['C3', 'E3'].map((cell) => String(workbook.value(name, cell)));
    workbook.dispose();
    return cells;
  };

  it('is OK where every card is, and claims no licence that nobody wrote down', async () => {
    expect(await summary({})).toEqual([
      'OK',
      'Every card is in force and verified. No licence written down for one of them has ended or ends within 30 days.',
    ]);
  });

  it.each([
    ['a box alone', { [`B${cards.first + 12}`]: 'tablet' }, /^UNKNOWN: .*tablet.*series missing/],
    ['a time of change alone', { [`E${cards.first + 12}`]: '0901Z' }, /^UNKNOWN: .*series missing/],
    ['a card below the list', { [`A${cards.last + 1}`]: 'DEMO-9' }, /^A card has no verdict: .*between the first and the last tinted row/],
    ['an error for an aircraft', { [`A${cards.first + 2}`]: '=1/0' }, /UNKNOWN: \? panel, box 1, data 2 \(no load written down/],
  ] as [string, Record<string, TemplateValue>, RegExp][])('is UNKNOWN with %s, and says why', async (_what, changes, why) => {
    const [verdict, reason] = await summary(changes);
    expect(verdict).toBe('UNKNOWN');
    expect(reason).toMatch(why);
  });

  it('keeps the verdicts and the diary where a cell of a licence cannot be read, and says why in the row of that licence', async () => {
    const workbook = await opened({
      [`C${licences.first}`]: '31.3.2027',
      [`D${licences.first + 1}`]: 'once',
      [`E${licences.first + 1}`]: 'n/a',
      [`F${licences.first + 4}`]: '\u20ac',
      [`C${licences.first + 7}`]: 'lifetime',
    });
    expect(workbook.value(name, 'C3')).toBe('OK');
    expect(workbook.values(name, `L${licences.head}:L${licences.first + 8}`).flat()).toEqual([
      'look at',
      'licence end must be a date, or no end; got "31.3.2027"',
      'months must be a whole number from 1 to 600; got "once"; cost must be a number; got "n/a"',
      '',
      '',
      'currency must be three letters, such as EUR; got "\u20ac"',
      '',
      '',
      'licence end must be a date, or no end; got "lifetime"',
      '',
    ]);
    const rows = workbook.values(name, `A${diary.first}:G${diary.last}`);
    expect(rows.filter(([what]) => what === 'load').length).toBeGreaterThan(20);
    expect(rows.filter(([what]) => what === 'look').length).toBe(5);
    expect(workbook.values(name, `I${members.first}:J${members.first}`)).toEqual([['member', 'Ada']]);
    workbook.dispose();
  });

  it('takes neither the check nor the name of the last load for those of the next one', async () => {
    const workbook = await opened({});
    const next = loads.first + 10;
    const record = (): string[] => workbook.values(name, `I${fleet.head + 5}:I${fleet.head + 7}`).map(([line]) => String(line));
    const card = (): unknown[] => workbook.values(name, `G${cards.first}:M${cards.first}`)[0] ?? [];
    const blank = '____________________';
    const typed = (entries: Record<string, TemplateValue>): Promise<void> =>
      workbook.set(name, Object.fromEntries(Object.entries(entries).map(([letter, value]) => [`${letter}${next}`, value])));
    await typed({ A: 'quillon four', B: 'panel, box 1', C: 'data 0', D: { date: '2026-10-29' }, E: { date: '2026-11-14' }, G: 'Bo' });
    expect([card()[1], card()[2], card()[3], card()[6]]).toEqual([46_340, '', 'CHECK', 'not verified']);
    expect(record()).toEqual(['Date of completion: 2026-11-14', `Checked on the unit after loading: ${blank}`, 'Name: Bo']);
    await typed({ F: { date: '2026-11-13' } });
    expect([card()[3], card()[6]]).toEqual(['CHECK', 'verified on 2026-11-13, before this load']);
    expect(record()[1]).toBe(`Checked on the unit after loading: ${blank}`);
    expect(workbook.value(name, `J${next}`)).toBe('verified before it was loaded');
    await typed({ E: { date: '2031-01-01' } });
    expect([card()[0], card()[3], card()[6]]).toEqual(['', 'UNKNOWN', 'load of 2031-01-01, a day still to come, not counted']);
    expect(record()[0]).toBe(`Date of completion: ${blank}`);
    expect(workbook.value(name, `J${next}`)).toBe('loaded on a day still to come: refused');
    await typed({ E: { date: '2026-11-14' }, F: 'yes' });
    expect(card()[6]).toBe('verified, but the day is not written down');
    await typed({ F: '', H: 'yes' });
    expect([card()[1], card()[3], card()[6]]).toEqual([
      46_323,
      'CHECK',
      'load of 2026-11-14 failed, the card is as it was and nobody has looked at it since',
    ]);
    await typed({ C: 'data zero', H: '' });
    expect([card()[3], workbook.value(name, 'C3'), workbook.value(name, `J${next}`)]).toEqual(['OK', 'CHECK', 'names no card of section 1']);
    expect(workbook.value(name, 'E3')).toMatch(/^CHECK: 1 of the loads name no card of section 1/);
    workbook.dispose();
  });

  it('judges a card as issued, and none that is not in use', async () => {
    const workbook = await opened({ [`D${cards.first}`]: 'as issued', [`D${cards.first + 1}`]: 'not in use', [`D${cards.first + 2}`]: 'no end' });
    expect(workbook.values(name, `J${cards.first}:M${cards.first + 2}`)).toEqual([
      ['OK', '', '', 'in force, as issued'],
      ['', '', '', 'not in use'],
      ['OK', '', '', 'in force, no end'],
    ]);
    expect(workbook.value(name, 'C3')).toBe('OK');
    await workbook.set(name, { [`D${cards.first}`]: 'terrain: 2026-10-29, 2026-11-19', [`D${cards.first + 2}`]: 'its own: 2026-09-01, 2026-10-29' });
    expect(workbook.values(name, `J${cards.first}:M${cards.first + 2}`)).toEqual([
      ['CHECK', 4, 46_345, 'lapses soon'],
      ['', '', '', 'not in use'],
      ['UNKNOWN', '', '', 'the dates of its series end with this one: type the next'],
    ]);
    workbook.dispose();
  });

  it('says of a licence and of a member beside their lists that they are not read', async () => {
    const workbook = await opened({ [`A${licences.last + 1}`]: 'Quillon Four', [`A${members.last + 1}`]: 'Gus' });
    expect(workbook.value(name, `A${licences.head - 1}`)).toMatch(/^A licence stands in a row beside its list, where it is not read/);
    expect(workbook.value(name, `A${members.head - 1}`)).toMatch(/^A member stands in a row beside its list, where it is not read/);
    workbook.dispose();
  });

  it('says where a member takes part in an aircraft that no licence names', async () => {
    const help = `I${members.head - 1}`;
    const workbook = await opened({ [`B${members.first}`]: 'quillon_four' });
    expect(workbook.value(name, help)).toBe('At the next renewal of every licence, once each.');
    await workbook.set(name, { [`B${members.first}`]: 'QuillonFour' });
    expect(workbook.value(name, help)).toMatch(/once each\. Rows of members in an aircraft that no licence names: 1\. /);
    workbook.dispose();
  });

  it('adds up a renewal of the very day though that day has a time, and nothing on a day that is a text', async () => {
    const timed = await opened({ [`C${licences.first}`]: { date: '2026-11-15' } }, 46_341.6);
    expect(timed.values(name, `B${renewals.first}:B${renewals.first + 1}`)).toEqual([[480], [480]]);
    timed.dispose();
    const text = await opened({}, '2026-11-15');
    expect(
      text
        .values(name, `B${renewals.first}:C${renewals.last}`)
        .flat()
        .every((cell) => cell === ''),
    ).toBe(true);
    expect(text.value(name, `A${renewals.last + 2}`)).toBe('as_of on the Start sheet is no date');
    text.dispose();
  });

  it('adds nothing up of a diary that goes on in rows which a user added at the end of the sheet', async () => {
    // 13 renewals of each of these licences, besides the rows of the demo: more than the diary has room for.
    const monthly = Object.fromEntries(
      Array.from({ length: 8 }, (_, index): [string, TemplateValue][] => {
        const at = licences.first + 8 + index;
        return [
          [`A${at}`, 'Quillon Four'],
          [`B${at}`, `more ${index}`],
          [`C${at}`, { date: '2026-11-14' }],
          [`D${at}`, 1],
          [`E${at}`, 10],
          [`F${at}`, 'EUR'],
          [`G${at}`, 'equal'],
        ];
      }).flat(),
    );
    const longer = [startSheet, tripAsTyped, { ...dataLedgerSheet, rows: diary.last + 200 }];
    const workbook = await openHeadless(changedTemplates(longer, name, monthly));
    expect(workbook.value(name, `A${diary.last + 1}`)).not.toBe('');
    expect(
      workbook
        .values(name, `B${renewals.first}:C${renewals.last}`)
        .flat()
        .every((cell) => cell === ''),
    ).toBe(true);
    expect(workbook.value(name, `A${renewals.last + 2}`)).toBe(`the diary has more rows than are read: insert rows before row ${diary.last}`);
    workbook.dispose();
  });
});
