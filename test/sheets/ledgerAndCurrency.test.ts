// The Data ledger and the Currency log in the engine: on the demo club, nearly empty with 3 rows, and with 500.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHeadless, type CellResult, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { currencyLogSheet, currencyLogWith } from '../../sheets-templates/currencyLog';
import { dataLedgerSheet, dataLedgerWith } from '../../sheets-templates/dataLedger';
import { placesFor as ledgerPlaces } from '../../sheets-templates/ledgerSections';
import { placesFor as currencyPlaces } from '../../sheets-templates/currencySections';
import { startSheet } from '../../sheets-templates/start';
import type { SheetTemplate, TemplateValue } from '../../sheets-templates/template';
import { tripSheet } from '../../sheets-templates/tripSheet';
import { changedTemplates } from './changedTemplates';

const ledgerRoom = { cards: 24, fleet: 21, licences: 24, members: 30, diary: 120 };
const currencyRoom = { papers: 14, pilot: 30, items: 24, flights: 1000, tinted: 60 };

/** The sheet among those it reads, without the rest of the workbook. */
const open = (sheet: SheetTemplate, changes: Readonly<Record<string, TemplateValue>> = {}): Promise<HeadlessWorkbook> => openHeadless(changedTemplates([startSheet, tripSheet, sheet], sheet.name, changes));
const iso = (serial: unknown): string => new Date((Number(serial) - 25_569) * 86_400_000).toISOString().slice(0, 10);
const sum = (cells: readonly CellResult[]): number => Math.round(cells.reduce<number>((total, cell) => total + (typeof cell === 'number' ? cell * 100 : 0), 0));

/** Empties the rows of a list from one row on. */
const emptied = (first: number, last: number, letters: string): Record<string, TemplateValue> =>
  Object.fromEntries(Array.from({ length: last - first + 1 }, (_, index) => [...letters].map((letter) => [`${letter}${first + index}`, '']))
    .flat() as [string, TemplateValue][]);

describe('the Data ledger of the demo club', () => {
  const { cards, fleet, licences, members, diary } = ledgerPlaces(ledgerRoom);
  const name = dataLedgerSheet.name;
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await open(dataLedgerSheet);
  });
  afterAll(() => workbook.dispose());
  const column = (letter: string, { first, last }: { readonly first: number; readonly last: number }): CellResult[] => workbook.values(name, `${letter}${first}:${letter}${last}`).flat();

  it('judges each card by what stands beside it (AIRAC dates of 2026 by hand: 29 October, 26 November, 24 December)', () => {
    expect(column('J', cards).filter((word) => word !== '')).toEqual(['CHECK', 'CHECK', 'OK', 'UNKNOWN', 'NO', 'NO', 'CHECK', 'CHECK', 'UNKNOWN', 'OK']);
    expect(column('K', cards).slice(0, 8)).toEqual([1, 1, 29, 29, 1, -27, 1, 29]);
    expect(workbook.named('ledger_verdict')).toEqual([['NO']]);
    expect(workbook.value(name, 'E3')).toMatch(/^NO: DEMO-2 panel, left, navigation \(differs .+UNKNOWN: DEMO-1 tablet.+ CHECK: DEMO-1 panel, box 1, navigation; /);
  });

  it('shows the fleet on the days of the trip, 28 and 29 November', () => {
    expect(workbook.values(name, `A${fleet.head}:E${fleet.head + 5}`)).toEqual([
      ['aircraft', 'all', '14-day', '28-day', '56-day'],
      ['DEMO-1', 'NO', '', 'NO', 'OK'],
      ['DEMO-2', 'NO', '', 'NO', ''],
      ['DEMO-3', 'NO', 'NO', '', 'OK'],
      ['DEMO-4', 'UNKNOWN', '', 'UNKNOWN', 'OK'],
      ['', '', '', '', ''],
    ]);
  });

  it('writes the record entry of the card asked for, with blanks for what nobody wrote down', async () => {
    const entry = (): CellResult[] => workbook.values(name, `I${fleet.head}:I${fleet.head + 8}`).flat();
    expect(entry()[0]).toBe('Aircraft: DEMO-1   Hours in service: ________');
    await workbook.set(name, { [`L${fleet.head - 2}`]: cards.first + 7 });
    expect(entry()).toEqual([
      'Aircraft: DEMO-3   Hours in service: ________', 'Description: database charts of tablet updated,', '   data effective 2026-10-29 (0000Z),', '   as described in ____________________',
      'Date of completion: 2026-11-02', 'Checked on the unit after loading: no', 'Name: Eve', 'Signature: ____________________', 'Kind and number of certificate: ____________________',
    ]);
    await workbook.set(name, { [`L${fleet.head - 2}`]: 3 });
    expect(entry()[0]).toBe('the row is not one of a card');
    await workbook.set(name, { [`L${fleet.head - 2}`]: cards.first });
  });

  it('adds renewals up by month as the diary lists them, and the members to what the licences cost', () => {
    const rows = workbook.values(name, `A${diary.first}:G${diary.last}`).filter((row) => row[0] === 'renew');
    for (const [letter, currency] of [['L', 'EUR'], ['M', 'CHF']] as const) {
      const months = workbook.values(name, `${letter}${licences.first}:${letter}${licences.first + 13}`).flat();
      expect(sum(months)).toBe(sum(rows.filter((row) => row[5] === currency).map((row) => row[4] ?? '')));
      const of = (by: string): number => sum(workbook.values(name, `I${members.first}:L${members.last}`).filter((row) => row[0] === by && row[2] === currency).map((row) => row[3] ?? ''));
      const cost = sum(workbook.values(name, `E${licences.first}:F${licences.last}`).filter((row) => row[1] === currency).map((row) => row[0] ?? ''));
      expect([of('member'), of('aircraft'), of('total')]).toEqual([cost, cost, cost]);
    }
    expect(workbook.value(name, `I${licences.first + 15}`)).toBe('every renewal of the diary is in these sums');
  });

  it('lists 13 visits of the AIRAC calendar and says where the sections begin', () => {
    const loads = workbook.values(name, `A${diary.first}:G${diary.last}`).filter((row) => row[0] === 'load' && row[3] === '0901Z');
    expect(loads.length).toBe(13);
    expect(iso(loads[0]?.[2])).toBe('2026-11-26');
    expect(workbook.value(name, 'C6')).toBe(`fleet and record entry ${fleet.head - 3}, licences and renewals ${licences.head - 2}, members and statement ${members.head - 2}, diary ${diary.head - 2}`);
  });
});

describe('the Data ledger, short and long', () => {
  it('stands with 3 cards, 1 licence, 1 member, and with none', async () => {
    const { cards, licences, members, diary } = ledgerPlaces(ledgerRoom);
    const name = dataLedgerSheet.name;
    const few = { ...emptied(cards.first + 3, cards.first + 9, 'ABCDEFGHI'), ...emptied(licences.first + 1, licences.first + 8, 'ABCDEFG'), ...emptied(members.first + 1, members.first + 9, 'ABCD') };
    const workbook = await open(dataLedgerSheet, few);
    expect(workbook.value(name, 'C3')).toBe('CHECK');
    expect(workbook.values(name, `I${members.first}:L${members.first + 3}`)).toEqual([['member', 'Ada', 'EUR', 480], ['aircraft', 'DEMO-1', 'EUR', 480], ['total', 'all costs', 'EUR', 480], ['', '', '', '']]);
    expect(workbook.value(name, `G${diary.first}`)).toBe('28-day, cycle 2612: navigation (DEMO-1)');
    workbook.dispose();
    const empty = await open(dataLedgerSheet, { ...few, ...emptied(cards.first, cards.last, 'ABCDEFGHI'), ...emptied(licences.first, licences.last, 'ABCDEFG'), ...emptied(members.first, members.last, 'ABCD') });
    expect(empty.value(name, 'C3')).toBe('UNKNOWN');
    expect(empty.values(name, `J${cards.first}:M${cards.last}`).flat().every((cell) => cell === '')).toBe(true);
    expect(empty.values(name, `L${licences.first}:M${licences.first + 14}`).flat().every((cell) => cell === '')).toBe(true);
    empty.dispose();
  });

  it('stands with 500 cards in 125 aircraft', async () => {
    const room = { cards: 500, fleet: 130, licences: 24, members: 30, diary: 120 };
    const { cards, fleet } = ledgerPlaces(room);
    const sheet = dataLedgerWith(room);
    const row = (index: number): [string, TemplateValue][] => {
      const at = cards.first + index;
      const effective = index % 5 === 0 ? '2026-10-01' : '2026-11-26';
      return [[`A${at}`, `AC-${Math.floor(index / 4)}`], [`B${at}`, `box ${index % 4}`], [`C${at}`, `data ${index % 4}`], [`D${at}`, '28-day'], [`E${at}`, { date: effective }], [`H${at}`, '0000Z'], [`I${at}`, 'yes']];
    };
    const changes = Object.fromEntries(Array.from({ length: 500 }, (_, index) => row(index)).flat());
    const templates = changedTemplates([startSheet, tripSheet, sheet], sheet.name, changes);
    const workbook = await openHeadless(changedTemplates(templates, startSheet.name, { A6: { date: '2026-11-26' } }));
    const words = workbook.values(sheet.name, `J${cards.first}:J${cards.last}`).flat();
    expect([words.length, words.filter((word) => word === 'NO').length, words.filter((word) => word === 'OK').length]).toEqual([500, 100, 400]);
    expect(workbook.value(sheet.name, `A${fleet.first + 124}`)).toBe('AC-124');
    expect(workbook.values(sheet.name, `B${fleet.first}:B${fleet.first + 124}`).flat().filter((word) => word === 'NO').length).toBe(100);
    workbook.dispose();
  });
});

describe('the Currency log', () => {
  const { pilot, items, papers, flights } = currencyPlaces(currencyRoom);
  const name = currencyLogSheet.name;
  let workbook: HeadlessWorkbook;
  beforeAll(async () => {
    workbook = await open(currencyLogSheet);
  });
  afterAll(() => workbook.dispose());
  const list = (): Record<string, unknown[]> => Object.fromEntries(workbook.values(name, `A${pilot.first}:F${pilot.last}`).filter((row) => row[0] !== '').map(([item, counted, needed, verdict, through, days]) => [item, [counted, needed, verdict, through === '' ? '' : iso(through), days]]));

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
      'club checkout': ['', '', 'OK', '2027-02-20', 87],
    });
    expect(workbook.value(name, 'B3')).toBe('10 OK. NO: passengers, MEL; passengers at night, MEL; medical, commercial. CHECK: passengers at night, SEL. ');
    expect(workbook.value(name, 'D5')).toBe("The pilot's next lapse: 2026-12-08, passengers at night, SEL");
  });

  it('says how each inspection of the demo aircraft stands', () => {
    const rows = workbook.values(name, `J${items.first}:M${items.first + 11}`).map(([verdict, through, days, hours]) => [verdict, through === '' ? '' : iso(through), days, hours]);
    expect(rows).toEqual([
      ['OK', '2027-03-31', 126, ''], ['OK', '', '', 17.4], ['OK', '2027-01-31', 67, ''], ['OK', '2026-12-31', 36, ''], ['OK', '2026-12-01', 6, ''], ['OK', '2027-03-31', 126, ''],
      ['OK', '2027-08-31', 279, ''], ['OK', '2027-03-01', 96, 17.4], ['CHECK', '2026-11-30', 5, ''], ['UNKNOWN', '', '', ''], ['CHECK', '2027-01-15', 51, ''], ['', '', '', ''],
    ]);
  });

  it('follows the other authority, and both', async () => {
    await workbook.set(name, { B5: 'EASA' });
    expect(list()).toMatchObject({ 'class rating': ['', '', 'OK', '2027-03-31', 126], 'class rating by experience, SEL': [4, 4, 'OK', '2027-03-31', 126], 'medical, private': ['', '', 'OK', '2027-09-03', 282] });
    expect(list()['flight review']).toBeUndefined();
    await workbook.set(name, { B5: 'FAA, EASA' });
    expect(list()['flight review']?.[2]).toBe('OK');
    await workbook.set(name, { B5: 'FAA' });
  });

  it('stands with 3 flights and with none', async () => {
    const few = await open(currencyLogSheet, emptied(flights.first, flights.first + 21, 'ABCDEFGHJKMNO'));
    const rows = few.values(name, `A${pilot.first}:D${pilot.last}`).filter((row) => row[0] === 'passengers, SEL');
    expect(rows).toEqual([['passengers, SEL', 4, 3, 'OK']]);
    few.dispose();
    const none = await open(currencyLogSheet, { ...emptied(flights.first, flights.first + 24, 'ABCDEFGHJKMNO'), ...emptied(papers.first, papers.first + 6, 'ABC'), ...emptied(items.first, items.first + 10, 'ABCDEFGH') });
    expect([...new Set(none.values(name, `D${pilot.first}:D${pilot.last}`).flat())]).toEqual(['UNKNOWN', '']);
    expect(none.values(name, `J${items.first}:N${items.last}`).flat().every((cell) => cell === '')).toBe(true);
    none.dispose();
  });

  it('stands with 500 flights', async () => {
    const sheet = currencyLogWith({ ...currencyRoom, tinted: 500 });
    const flight = (index: number): [string, TemplateValue][] => {
      const at = flights.first + index;
      return [[`A${at}`, 'DEMO-1'], [`B${at}`, { date: new Date(Date.UTC(2024, 0, 1) + index * 2 * 86_400_000).toISOString().slice(0, 10) }], [`C${at}`, 1], [`D${at}`, 1], [`K${at}`, 1.1]];
    };
    const workbook500 = await open(sheet, { ...emptied(flights.first, flights.first + 24, 'EFGHJMNO'), ...Object.fromEntries(Array.from({ length: 500 }, (_, index) => flight(index)).flat()) });
    // The last flights are on 21, 23 and 25 September 2026 (the last 998 days after 1 January 2024); the 90th day from the 21st is 19 December.
    const row = workbook500.values(name, `A${pilot.first}:E${pilot.last}`).find(([item]) => item === 'passengers, SEL');
    expect([row?.[3], iso(row?.[4])]).toEqual(['OK', '2026-12-19']);
    workbook500.dispose();
  });

  it('judges the row that spills into the air below the list', async () => {
    const own = Array.from({ length: 6 }, (_, index): [string, TemplateValue][] => [[`A${papers.first + 7 + index}`, `own ${index}`], [`B${papers.first + 7 + index}`, { date: index === 5 ? '2020-01-01' : '2027-01-01' }]]).flat();
    const full = await open(currencyLogSheet, { B5: 'FAA, EASA', ...Object.fromEntries(own) });
    expect(full.values(name, `A${pilot.last + 1}:D${pilot.last + 1}`)).toEqual([['own 5', '', '', 'NO']]);
    expect(full.value(name, 'B3')).toMatch(/^\d+ OK\. NO: .*; own 5\. /);
    full.dispose();
  });

  it('says that it cannot tell where a list cannot be read, and what stands beside a list', async () => {
    const bad = await open(currencyLogSheet, { [`B${flights.first}`]: '17.1.2026', [`A${items.first + 8}`]: '=1/0', [`A${papers.last + 1}`]: 'BasicMed course' });
    expect(bad.value(name, 'B3')).toBe('UNKNOWN: A paper stands in a row beside its list, where it is not read: insert rows between its first and its last tinted row, and move it there. UNKNOWN: the list below is empty, or cannot be read.');
    expect(bad.value(name, 'B4')).toBe('8 OK. UNKNOWN: DEMO-2 ?; DEMO-3 annual inspection. CHECK: DEMO-3 oxygen bottle 3AA. ');
    bad.dispose();
  });
});
