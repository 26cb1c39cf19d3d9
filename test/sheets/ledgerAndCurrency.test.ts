// The Data ledger and the Currency log in the engine: on the demo club, nearly empty with 3 rows, and with 500.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type CellResult, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { currencyLogSheet, currencyLogWith } from '../../sheets-templates/currency/sheet';
import { dataLedgerSheet, dataLedgerWith } from '../../sheets-templates/ledger/sheet';
import { defaultRoom, placesFor as ledgerPlaces } from '../../sheets-templates/ledger/places';
import { placesFor as currencyPlaces } from '../../sheets-templates/currency/places';
import { fieldsSheet } from '../../sheets-templates/fields/sheet';
import { demoTrip } from '../../sheets-templates/demo/day';
import { tripCells } from '../../sheets-templates/places';
import { startSheet } from '../../sheets-templates/start/sheet';
import type { SheetTemplate, TemplateValue } from '../../sheets-templates/template';
import { tripAsTyped } from '../support/tripAsTyped';
import { changedTemplates } from './changedTemplates';

const ledgerRoom = defaultRoom;
const currencyRoom = { papers: 14, ownRules: 8, pilot: 36, items: 24, flights: 1000, tinted: 60 };

/** The sheet among those it reads, without the rest of the workbook. */
const open = (sheet: SheetTemplate, changes: Readonly<Record<string, TemplateValue>> = {}): Promise<HeadlessWorkbook> =>
  openHeadless(changedTemplates([startSheet, tripAsTyped, fieldsSheet, sheet], sheet.name, changes));
const iso = (serial: unknown): string => new Date((Number(serial) - 25_569) * 86_400_000).toISOString().slice(0, 10);
const sum = (cells: readonly CellResult[]): number =>
  Math.round(cells.reduce<number>((total, cell) => total + (typeof cell === 'number' ? cell * 100 : 0), 0));

/** Empties the rows of a list from one row on. */
const emptied = (first: number, last: number, letters: string): Record<string, TemplateValue> =>
  Object.fromEntries(
    Array.from({ length: last - first + 1 }, (_, index) => [...letters].map((letter) => [`${letter}${first + index}`, ''])).flat() as [
      string,
      TemplateValue,
    ][],
  );

describe('the Data ledger of the demo club', () => {
  const { cards, fleet, licences, renewals, members, diary, loads } = ledgerPlaces(ledgerRoom);
  const name = dataLedgerSheet.name;
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await open(dataLedgerSheet);
  });
  afterAll(() => workbook.dispose());
  const column = (letter: string, { first, last }: { readonly first: number; readonly last: number }): CellResult[] =>
    workbook.values(name, `${letter}${first}:${letter}${last}`).flat();

  it('judges each card by what stands beside it (AIRAC dates of 2026 by hand: 29 October, 26 November, 24 December)', () => {
    expect(column('J', cards).filter((word) => word !== '')).toEqual([
      'CHECK',
      'CHECK',
      'OK',
      'CHECK',
      'NO',
      'NO',
      'CHECK',
      'CHECK',
      'UNKNOWN',
      'OK',
    ]);
    expect(column('K', cards).slice(0, 8)).toEqual([1, 1, 29, 1, 1, -27, 1, 29]);
    expect(workbook.named('ledger_verdict')).toEqual([['NO']]);
    expect(workbook.value(name, 'E3')).toMatch(
      /^NO: Brindle Two panel, left, navigation \(differs .+UNKNOWN: Merle Tug panel, navigation.+ CHECK: Quillon Four panel, box 1, navigation; /,
    );
  });

  it('shows the fleet on the days of the trip, and on others typed over them: 28 and 29 November', async () => {
    const days = [dataLedgerSheet.keys.entries['firstDay'] ?? '', dataLedgerSheet.keys.entries['lastDay'] ?? ''] as const;
    expect(days.map((place) => iso(workbook.value(name, place)))).toEqual([demoTrip.firstDay, demoTrip.lastDay]);
    await workbook.set(name, { [days[0]]: { date: '2026-11-28' }, [days[1]]: { date: '2026-11-29' } });
    expect(workbook.values(name, `A${fleet.head}:E${fleet.head + 5}`)).toEqual([
      ['aircraft', 'all', '14-day', '28-day', '56-day'],
      ['Quillon Four', 'NO', '', 'NO', 'OK'],
      ['Brindle Two', 'NO', '', 'NO', ''],
      ['Sable Twin', 'NO', 'NO', '', 'OK'],
      ['Merle Tug', 'UNKNOWN', '', 'UNKNOWN', 'OK'],
      ['', '', '', '', ''],
    ]);
  });

  it('writes the record entry of a visit or of one load, with blanks for what nobody wrote down', async () => {
    const entry = (): CellResult[] => workbook.values(name, `I${fleet.head}:I${fleet.head + 9}`).flat();
    const [row, kind] = [`L${fleet.head - 2}`, `L${fleet.head - 1}`];
    expect([workbook.value(name, row), entry()[1]]).toEqual([
      loads.first + 12,
      'Description: updated navigation of panel, data effective 2026-11-12',
    ]);
    await workbook.set(name, { [row]: loads.first + 4 });
    expect(entry()).toEqual([
      'Aircraft: Quillon Four   Hours in service: ________',
      'Description: updated navigation of panel, box 1, data effective 2026-10-29; navigation of panel, box 2, data effective 2026-10-29; obstacles of panel, box 1, data effective 2026-10-29',
      '',
      '',
      '   as described in ____________________',
      'Date of completion: 2026-10-28',
      'Checked on the unit after loading: 2026-10-28',
      'Name: Ada',
      'Signature: ____________________',
      'Kind and number of certificate: ____________________',
    ]);
    await workbook.set(name, { [kind]: 'load' });
    expect(entry()[1]).toBe('Description: updated navigation of panel, box 1, data effective 2026-10-29');
    await workbook.set(name, { [row]: loads.first + 11 });
    expect(entry().slice(5, 8)).toEqual(['Date of completion: 2026-11-02', 'Checked on the unit after loading: ____________________', 'Name: Eve']);
    for (const none of [3, loads.first + 10, loads.first + 20]) {
      await workbook.set(name, { [row]: none });
      expect(entry()[0]).toBe('the row is not one of a load that went well');
    }
    await workbook.set(name, { [row]: loads.first, [kind]: 'visit' });
  });

  it('adds renewals up by month as the diary lists them, and the members to what the licences cost', () => {
    const rows = workbook.values(name, `A${diary.first}:G${diary.last}`).filter((row) => row[0] === 'renew');
    for (const [letter, currency] of [
      ['B', 'EUR'],
      ['C', 'CHF'],
    ] as const) {
      const months = workbook.values(name, `${letter}${renewals.first}:${letter}${renewals.last - 1}`).flat();
      expect(sum(months)).toBe(sum(rows.filter((row) => row[5] === currency).map((row) => row[4] ?? '')));
      const of = (by: string): number =>
        sum(
          workbook
            .values(name, `I${members.first}:L${members.last}`)
            .filter((row) => row[0] === by && row[2] === currency)
            .map((row) => row[3] ?? ''),
        );
      const cost = sum(
        workbook
          .values(name, `E${licences.first}:F${licences.last}`)
          .filter((row) => row[1] === currency)
          .map((row) => row[0] ?? ''),
      );
      expect([of('member'), of('aircraft'), of('total')]).toEqual([cost, cost, cost]);
      expect(workbook.value(name, `${letter}${renewals.last + 1}`)).toBe(cost / 100);
    }
    expect(workbook.value(name, `A${renewals.last + 2}`)).toBe('every renewal of the diary is in these sums');
  });

  it('lists 13 visits of the AIRAC calendar and says where the sections begin', () => {
    const visits = workbook
      .values(name, `A${diary.first}:G${diary.last}`)
      .filter((row) => row[0] === 'load' && String(row[6]).includes('28-day, cycle'));
    expect(visits.length).toBe(13);
    expect(iso(visits[0]?.[2])).toBe('2026-11-26');
    expect(workbook.value(name, 'C6')).toBe(
      `fleet and record entry ${fleet.head - 3}, licences ${licences.head - 2}, renewals by month ${renewals.head - 2}, members and statement ${members.head - 2}, history of loads ${loads.head - 2}, diary ${diary.head - 2}`,
    );
  });
});

describe('the Data ledger, short and long', () => {
  it('stands with 3 cards, 1 licence, 1 member, and with none', async () => {
    const { cards, licences, renewals, members, diary, loads } = ledgerPlaces(ledgerRoom);
    const name = dataLedgerSheet.name;
    const few = {
      ...emptied(cards.first + 3, cards.first + 9, 'ABCDEF'),
      ...emptied(licences.first + 1, licences.first + 8, 'ABCDEFGHIJ'),
      ...emptied(members.first + 1, members.first + 9, 'ABCD'),
    };
    const workbook = await open(dataLedgerSheet, few);
    expect(workbook.value(name, 'C3')).toBe('CHECK');
    expect(workbook.values(name, `I${members.first}:L${members.first + 3}`)).toEqual([
      ['member', 'Ada', 'EUR', 480],
      ['aircraft', 'Quillon Four', 'EUR', 480],
      ['total', 'all costs', 'EUR', 480],
      ['', '', '', ''],
    ]);
    expect(workbook.value(name, `G${diary.first}`)).toBe('28-day, cycle 2612: navigation (Quillon Four)');
    workbook.dispose();
    const empty = await open(dataLedgerSheet, {
      ...few,
      ...emptied(cards.first, cards.last, 'ABCDEF'),
      ...emptied(loads.first, loads.first + 12, 'ABCDEFGHI'),
      ...emptied(licences.first, licences.last, 'ABCDEFGHIJ'),
      ...emptied(members.first, members.last, 'ABCD'),
    });
    expect(empty.value(name, 'C3')).toBe('UNKNOWN');
    expect(
      empty
        .values(name, `J${cards.first}:M${cards.last}`)
        .flat()
        .every((cell) => cell === ''),
    ).toBe(true);
    expect(
      empty
        .values(name, `B${renewals.first}:C${renewals.last}`)
        .flat()
        .every((cell) => cell === ''),
    ).toBe(true);
    empty.dispose();
  });

  it('stands with 500 cards in 125 aircraft', async () => {
    const room = { cards: 500, fleet: 130, licences: 24, members: 30, diary: 120, loads: 600 };
    const { cards, fleet, licences, loads } = ledgerPlaces(room);
    const sheet = dataLedgerWith(room);
    const row = (index: number): [string, TemplateValue][] => {
      const at = cards.first + index;
      const effective = index % 5 === 0 ? '2026-10-01' : '2026-11-26';
      return [
        [`A${at}`, `AC-${Math.floor(index / 4)}`],
        [`B${at}`, `box ${index % 4}`],
        [`C${at}`, `data ${index % 4}`],
        [`D${at}`, '28-day'],
        [`E${at}`, '0000Z'],
        ...Object.entries({ A: `AC-${Math.floor(index / 4)}`, B: `box ${index % 4}`, C: `data ${index % 4}` }).map(
          ([column, text]): [string, TemplateValue] => [`${column}${loads.first + index}`, text],
        ),
        ...['D', 'E', 'F'].map((column): [string, TemplateValue] => [`${column}${loads.first + index}`, { date: effective }]),
        ...['H', 'I'].map((column): [string, TemplateValue] => [`${column}${loads.first + index}`, '']),
      ];
    };
    const changes = Object.fromEntries(Array.from({ length: 500 }, (_, index) => row(index)).flat());
    Object.entries({ A: 'all', B: 'all', C: 'no end' }).forEach(([letter, text]) => (changes[`${letter}${licences.first + 9}`] = text));
    const templates = changedTemplates([startSheet, tripAsTyped, fieldsSheet, sheet], sheet.name, changes);
    const days = { [tripCells.firstDay]: { date: '2026-11-28' }, [tripCells.lastDay]: { date: '2026-11-29' } };
    const onTrip = changedTemplates(templates, tripAsTyped.name, days);
    const workbook = await openHeadless(changedTemplates(onTrip, startSheet.name, { A6: { date: '2026-11-26' } }));
    const words = workbook.values(sheet.name, `J${cards.first}:J${cards.last}`).flat();
    expect([words.length, words.filter((word) => word === 'NO').length, words.filter((word) => word === 'OK').length]).toEqual([500, 100, 400]);
    expect(workbook.value(sheet.name, `A${fleet.first + 124}`)).toBe('AC-124');
    expect(
      workbook
        .values(sheet.name, `B${fleet.first}:B${fleet.first + 124}`)
        .flat()
        .filter((word) => word === 'NO').length,
    ).toBe(100);
    workbook.dispose();
  });
});

describe('the Currency log', () => {
  const { pilot, items, papers, ownRules, flights } = currencyPlaces(currencyRoom);
  const name = currencyLogSheet.name;
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await open(currencyLogSheet);
  });
  afterAll(() => workbook.dispose());
  const list = (): Record<string, unknown[]> =>
    Object.fromEntries(
      workbook
        .values(name, `A${pilot.first}:F${pilot.last}`)
        .filter((row) => row[0] !== '')
        .map(([item, counted, needed, verdict, through, days]) => [item, [counted, needed, verdict, through === '' ? '' : iso(through), days]]),
    );

  it('says when each item of the demo pilot lapses (by hand from the flights on the sheet)', () => {
    expect(list()).toMatchObject({
      'passengers, SEL': [17, 3, 'OK', '2027-02-11', 78],
      'passengers, MEL': [1, 3, 'NO', '2026-11-05', -20],
      'passengers, tailwheel, SEL': [3, 3, 'OK', '2026-12-31', 36],
      'passengers at night, SEL': [3, 3, 'CHECK', '2026-12-08', 13],
      'passengers at night, MEL': [0, 3, 'NO', '', ''],
      'instrument flight, airplane': [3, 3, 'OK', '2027-01-31', 67],
      'IFR, no check due, airplane': [3, 3, 'OK', '2027-07-31', 248],
      'flight review': ['', '', 'OK', '2028-06-30', 583],
      'medical, commercial': ['', '', 'NO', '2026-09-30', -56],
      'medical, private': ['', '', 'OK', '2027-09-30', 309],
      'club recency, Quillon Four': [7, 3, 'OK', '2027-01-12', 48],
      'insurer, hours, SEL': [20.8, 5, 'OK', '2027-04-23', 149],
      'club checkout': ['', '', 'OK', '2027-02-20', 87],
    });
    expect(workbook.value(name, 'B3')).toBe(
      '12 OK. NO: passengers, MEL; passengers at night, MEL; medical, commercial. CHECK: passengers at night, SEL. ',
    );
    expect(workbook.value(name, 'D5')).toBe("The pilot's next lapse: 2026-12-08, passengers at night, SEL");
  });

  it('says how each inspection of the demo aircraft stands', () => {
    const rows = workbook
      .values(name, `J${items.first}:M${items.first + 11}`)
      .map(([verdict, through, days, hours]) => [verdict, through === '' ? '' : iso(through), days, hours]);
    expect(rows).toEqual([
      ['OK', '2027-03-31', 126, ''],
      ['OK', '', '', 17.4],
      ['OK', '2027-01-31', 67, ''],
      ['OK', '2026-12-31', 36, ''],
      ['OK', '2026-12-01', 6, ''],
      ['OK', '2027-03-31', 126, ''],
      ['OK', '2027-08-31', 279, ''],
      ['OK', '2027-03-01', 96, 17.4],
      ['CHECK', '2026-11-30', 5, ''],
      ['UNKNOWN', '', '', ''],
      ['CHECK', '2027-01-15', 51, ''],
      ['', '', '', ''],
    ]);
  });

  it('follows the other authority, and both', async () => {
    await workbook.set(name, { B5: 'EASA' });
    expect(list()).toMatchObject({
      'class rating': ['', '', 'OK', '2027-03-31', 126],
      'class rating by experience, SEL': [4, 4, 'OK', '2027-03-31', 126],
      'medical, private': ['', '', 'OK', '2027-09-03', 282],
    });
    expect(list()['flight review']).toBeUndefined();
    await workbook.set(name, { B5: 'FAA and EASA' });
    expect(list()['flight review']?.[2]).toBe('OK');
    await workbook.set(name, { B5: 'FAA' });
  });

  it('stands with 3 flights and with none', async () => {
    const few = await open(currencyLogSheet, emptied(flights.first, flights.first + 21, 'ABCDEFGHJKMNO'));
    const rows = few.values(name, `A${pilot.first}:D${pilot.last}`).filter((row) => row[0] === 'passengers, SEL');
    expect(rows).toEqual([['passengers, SEL', 4, 3, 'OK']]);
    few.dispose();
    const none = await open(currencyLogSheet, {
      ...emptied(flights.first, flights.first + 24, 'ABCDEFGHJKMNO'),
      ...emptied(papers.first, papers.first + 6, 'ABC'),
      ...emptied(items.first, items.first + 10, 'ABCDEFGH'),
    });
    expect([...new Set(none.values(name, `D${pilot.first}:D${pilot.last}`).flat())]).toEqual(['UNKNOWN', '']);
    expect(
      none
        .values(name, `J${items.first}:N${items.last}`)
        .flat()
        .every((cell) => cell === ''),
    ).toBe(true);
    none.dispose();
  });

  it('stands with 500 flights', async () => {
    const sheet = currencyLogWith({ ...currencyRoom, tinted: 500 });
    const flight = (index: number): [string, TemplateValue][] => {
      const at = flights.first + index;
      return [
        [`A${at}`, 'Quillon Four'],
        [`B${at}`, { date: new Date(Date.UTC(2024, 0, 1) + index * 2 * 86_400_000).toISOString().slice(0, 10) }],
        [`C${at}`, 1],
        [`D${at}`, 1],
        [`K${at}`, 1.1],
      ];
    };
    const workbook500 = await open(sheet, {
      ...emptied(flights.first, flights.first + 24, 'EFGHJMNO'),
      ...Object.fromEntries(Array.from({ length: 500 }, (_, index) => flight(index)).flat()),
    });
    // The last flights are on 21, 23 and 25 September 2026 (the last 998 days after 1 January 2024); the 90th day from the 21st is 19 December.
    const row = workbook500.values(name, `A${pilot.first}:E${pilot.last}`).find(([item]) => item === 'passengers, SEL');
    expect([row?.[3], iso(row?.[4])]).toEqual(['OK', '2026-12-19']);
    workbook500.dispose();
  });

  it('judges the row that spills into the air below the list', async () => {
    const own = Array.from({ length: 6 }, (_, index): [string, TemplateValue][] => [
      [`A${papers.first + 7 + index}`, `own ${index}`],
      [`B${papers.first + 7 + index}`, { date: index === 5 ? '2020-01-01' : '2027-01-01' }],
    ]).flat();
    const rules = Array.from({ length: 4 }, (_, index): [string, TemplateValue][] =>
      Object.entries({ A: `rule ${index}`, B: 'landings', C: 1, D: 30, E: 'days' }).map(([column, value]) => [
        `${column}${ownRules.first + 2 + index}`,
        value,
      ]),
    ).flat();
    const full = await open(currencyLogSheet, { B5: 'FAA and EASA', ...Object.fromEntries([...own, ...rules]) });
    expect(full.values(name, `A${pilot.last + 1}:D${pilot.last + 1}`)).toEqual([['own 5', '', '', 'NO']]);
    expect(full.value(name, 'B3')).toMatch(/^\d+ OK\. NO: .*; own 5\. /);
    full.dispose();
  });

  it('says that it cannot tell where a list cannot be read, and what stands beside a list', async () => {
    const bad = await open(currencyLogSheet, {
      [`B${flights.first}`]: '17.1.2026',
      [`A${items.first + 8}`]: '=1/0',
      [`A${papers.last + 1}`]: 'BasicMed course',
    });
    expect(bad.value(name, 'B3')).toBe(
      'UNKNOWN: A paper stands in a row beside its list, where it is not read: insert rows between its first and its last tinted row, and move it there. UNKNOWN: the list below is empty, or cannot be read.',
    );
    expect(bad.value(name, 'B4')).toBe('8 OK. UNKNOWN: Brindle Two ?; Sable Twin annual inspection. CHECK: Sable Twin oxygen bottle 3AA. ');
    bad.dispose();
  });
});
