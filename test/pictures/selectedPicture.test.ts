// The picture of the selected row, from the demo workbook and a user's own sheet as the engine calculates them: the right one, from the
// right cells, wherever rows were inserted; and a sentence where there is none.
import { beforeAll, describe, expect, it } from 'vitest';
import { openHeadless } from '../../addon/local/engine/headless';
import { briefRows } from '../../addon/pictures/selected/flightDrawings';
import { listed, pictured } from '../../addon/workbook/callParameters';
import { selectedPicture } from '../../addon/pictures/selectedPicture';
import type { CellValue, WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { registry } from '../../functions/registry/index.generated';
import { sheetTemplates } from '../../sheets-templates';
import { keysShown } from '../../sheets-templates/keys';
import { headlessSnapshot, ownSheet, selecting, withRowsInserted } from '../support/headlessSnapshot';

const date = (iso: string): { readonly date: string } => ({ date: iso });
const flown: readonly (readonly [string, number])[] = [
  ['2026-09-05', 3],
  ['2026-09-10', 2],
  ['2026-10-03', 3],
  ['2026-11-21', 1],
  ['2026-06-20', 5],
];
const log = Object.fromEntries(
  flown.flatMap(([day, count], index) => [
    [`A${index + 2}`, date(day)],
    [`B${index + 2}`, count],
  ]),
);

const mine = ownSheet('My sheet', {
  A1: 'flights',
  B1: 'landings',
  ...log,
  D2: 'passengers',
  E2: '=RECENCY_DAYS(A2:A6,B2:B6,as_of)',
  D3: 'instruments',
  E3: '=IFERROR(RECENCY_MONTHS($A$2:$A$6,$B$2:$B$6,as_of,6,6),"")',
  D4: 'lapsed',
  E4: "=RECENCY_DAYS(A6:A6,B6:B6,'Start'!A6,90,3)",
  D5: 'not worked out',
  E5: '=RECENCY_DAYS(A2:A6,B2:B6,"2026-11-24"+1)',
  D6: 'inside',
  E6: '=INDEX(RECENCY_DAYS(A2:A6,B2:B6,as_of),1,2)',
  D7: 'nothing flown',
  E7: '=RECENCY_DAYS(A30:A31,B30:B31,as_of)',
  D9: 'insurance',
  C9: date('2026-12-10'),
  D10: 'licence',
  C10: date('2026-10-10'),
  D15: 'no day',
  E15: '=DUE_STATUS(C15,as_of)',
  E9: '=DUE_STATUS(C9:C11,as_of)',
  D13: 'radio',
  C13: date('2027-01-31'),
  E13: '=DUE_STATUS(C13,as_of+0,40)',
  A20: 62,
  A21: 225,
  A22: 260,
  A23: 22,
  D20: '=HOLD_BRIEF(A20,A21,"L",7000,110,"4 NM",A22,A23)',
  A45: 12000,
  B45: 150,
  C45: 700,
  A46: 8000,
  B46: 140,
  C46: 600,
  A47: 0,
  B47: 250,
  C47: 10,
  A48: 13000,
  B48: 270,
  C48: 35,
  A50: '=DESCENT_PLAN(11000,3000,A45:C46,A47:C48,90,0,8)',
  A54: '=DESCENT_PLAN(11000,3000,A45:C46,A47:C47,90)',
  A60: 35,
  B60: 1500,
  A61: 35,
  B61: 1950,
  A62: 39.5,
  B62: 2400,
  A63: 47,
  B63: 2400,
  A64: 47,
  B64: 1500,
  D60: 'two up',
  E60: 2300,
  F60: 42,
  D61: 'four up',
  E61: 2390,
  F61: 48,
  G60: '=BALANCE_CHECK(E60:E61,F60:F61,$A$60:$B$64)',
  A80: 'empty',
  B80: 1000,
  C80: 40,
  A81: 'front',
  B81: 200,
  C81: 42,
  A82: 'rear',
  B82: 100,
  C82: 70,
  A83: 'bags',
  B83: 40,
  C83: 95,
  A84: 'wing',
  B84: 30,
  C84: 1,
  A86: 'wing',
  B86: 0,
  C86: 48,
  A87: 'wing',
  B87: 40,
  C87: 48,
  A88: 38,
  B88: 900,
  A89: 38,
  B89: 1400,
  A90: 40,
  B90: 1700,
  A91: 50,
  B91: 1700,
  A92: 50,
  B92: 900,
  E80: '=LOADING_BRIEF(A80:A83,B80:B83,C80:C83,A84:D84,A86:C87,6,2,18,A88:B92,,,4)',
  D70: 'to see',
  E70: 2300,
  F70: 42,
  G70: '=BALANCE_CHECK(E70,F70,FILTER(A60:B64,A60:A64>0))',
});
const bare = ownSheet('Bare', { A1: 'nothing here', A2: 1 });
const fleet = ownSheet('Fleet', {
  A1: 'registration',
  B1: 'inspection',
  C1: 'done on',
  D1: 'every months',
  A2: 'North',
  B2: 'insurance',
  C2: date('2026-03-01'),
  D2: 12,
  A4: 'South',
  B4: 'radio',
  C4: date('2025-01-15'),
  D4: 12,
  A5: 'South',
  B5: 'annual inspection',
  F1: 'aircraft',
  G1: 'hours now',
  F2: 'North',
  G2: 100,
  F3: 'South',
  G3: 200,
  I2: '=AIRCRAFT_STATUS(A1:D5,F1:G3,as_of)',
});

let workbook: WorkbookSnapshot;
beforeAll(async () => {
  const templates = [...sheetTemplates, mine, bare, fleet];
  const engine = await openHeadless(templates);
  workbook = headlessSnapshot(templates, engine, { sheet: 'Start', row: 1, column: 1 });
  engine.dispose();
}, 60_000);

const size = { width: 276, height: 348 };
interface Seen {
  readonly of: string;
  readonly words: string;
  readonly none: string;
}
function see(sheet: string, row: number, column = 1, given = workbook): Seen {
  const picture = selectedPicture(selecting(given, sheet, row, column), sheetTemplates, size);
  if ('none' in picture) return { of: '', words: '', none: picture.none };
  expect(picture.svg).toMatch(/^<svg /);
  expect(picture.svg).not.toMatch(/NaN|undefined|Infinity/);
  return { of: picture.of, words: /<desc>(.*)<\/desc>/.exec(picture.svg)?.[1] ?? '', none: '' };
}
/** The same workbook with one cell showing something else. */
const showing = (sheetName: string, row: number, column: number, value: CellValue): WorkbookSnapshot => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet) =>
    sheet.name === sheetName
      ? { ...sheet, values: sheet.values.map((line, r) => (r === row - 1 ? line.map((old, c) => (c === column - 1 ? value : old)) : line)) }
      : sheet,
  ),
});

it('knows the parameters of the functions whose calls are found', () => {
  for (const [name, parameters] of Object.entries({ ...pictured, ...listed })) {
    const all = Object.keys(registry.find((one) => one.name === name)?.parameters ?? {});
    expect([name, ...parameters]).toEqual([name, ...all.slice(0, parameters.length)]);
    // Where there is one more, it is that of the headings, by which the place of the answer is known.
    expect(['headings', undefined]).toContain(all[parameters.length]);
  }
});

it('knows how many rows a brief has', () => {
  const [example] = registry.find(({ name }) => name === 'HOLD_BRIEF')?.examples ?? [];
  expect(example?.gives).toHaveLength(briefRows);
});

describe("a sheet of the user's own", () => {
  it("draws recency in days, the row's own", () => {
    expect(see('My sheet', 2)).toMatchObject({ of: 'passengers: My sheet, row 2' });
    expect(see('My sheet', 2).words).toBe(
      'passengers: OK as of 2026-11-25, 36 days left. Good through 2026-12-31. 9 counted, 3 needed. Looked back over 90 days, from 2026-08-28 to 2026-11-25: 3 on 2026-09-05, 2 on 2026-09-10, 3 on 2026-10-03, 1 on 2026-11-21.',
    );
  });

  it('draws recency in months, the month of the day left out, through IFERROR', () =>
    expect(see('My sheet', 3).words).toContain(
      '13 counted, 6 needed. Looked back over 6 calendar months, from 2026-05-01 to 2026-10-31: 3 on 2026-09-05, 2 on 2026-09-10, 3 on 2026-10-03, 5 on 2026-06-20.',
    ));

  it('says what has lapsed', () =>
    expect(see('My sheet', 4).words).toContain('lapsed: NO as of 2026-11-25, lapsed 69 days ago. Good through 2026-09-17. 0 counted, 3 needed.'));

  it('names an argument that is a formula', () =>
    expect(see('My sheet', 5).none).toBe(
      'RECENCY_DAYS in E5: its as_of is a formula, which is not worked out here. Put it into a cell of its own, and give that cell.',
    ));

  it('says that a call inside another formula shows no answer to draw', () =>
    expect(see('My sheet', 6).none).toContain('RECENCY_DAYS is part of a longer formula'));

  it('draws nothing for an empty log, and says UNKNOWN', () =>
    expect(see('My sheet', 7).words).toBe('Nothing to draw: RECENCY_DAYS in E7 is UNKNOWN, as its log is empty.'));

  it('draws a due day, each row of a column its own', () => {
    expect(see('My sheet', 9)).toMatchObject({
      of: 'insurance: My sheet, row 9',
      words: 'insurance: CHECK as of 2026-11-25, 15 days left. Good through 2026-12-10.',
    });
    expect(see('My sheet', 10)).toMatchObject({
      of: 'licence: My sheet, row 10',
      words: 'licence: NO as of 2026-11-25, lapsed 46 days ago. Good through 2026-10-10.',
    });
    expect(see('My sheet', 11).words).toBe('Nothing to draw: DUE_STATUS in E9 shows nothing in this row.');
    expect(see('My sheet', 15).words).toBe('Nothing to draw: DUE_STATUS in E15 is UNKNOWN, as no due day is written down.');
  });

  it('works the day out of the days left where the call holds a formula for it', () =>
    expect(see('My sheet', 13).words).toBe('radio: OK as of 2026-11-25, 67 days left. Good through 2027-01-31.'));

  it('draws a hold from any of its rows, with the turns that the brief tells', () => {
    for (const row of [20, 31, 40]) expect(see('My sheet', row, 4)).toMatchObject({ of: 'Hold: My sheet, row 20' });
    expect(see('My sheet', 31, 4).words).toMatch(
      /^Holding pattern with left turns, drawn to scale with magnetic north up\. entry teardrop\. .*wind from 260 at 22 kt, magnetic\.$/,
    );
    expect(see('My sheet', 41).none).toContain('No picture belongs to row 41 of "My sheet". Select rows 20 to 40 (HOLD_BRIEF)');
  });

  it("puts the fix of a descent at the plan's own distance, the end its miles before", () => {
    const plan = workbook.sheets.find(({ name }) => name === 'My sheet')?.values.slice(49, 53) ?? [];
    const total = Number(plan[2]?.[7]);
    expect(total - Number(plan[0]?.[7]) - Number(plan[1]?.[7])).toBeCloseTo(8, 9);
    expect(see('My sheet', 51)).toEqual({
      of: 'Descent profile: My sheet, row 50',
      none: '',
      words: `From 11,000 to 3,000 feet, start ${total.toFixed(1)} NM before the fix, down at ${(total - 8).toFixed(1)} NM.`,
    });
  });

  it('shows the error where the plan is one', () =>
    expect(see('My sheet', 54).words).toMatch(/^Nothing to draw: DESCENT_PLAN in A54 shows &quot;#.*&quot;\.$/));

  it('draws a corner of the envelope that was pasted as text, as BALANCE_CHECK reads it', () => {
    const drawn = (given: WorkbookSnapshot): unknown => selectedPicture(selecting(given, 'My sheet', 60), sheetTemplates, size);
    expect(drawn(showing('My sheet', 62, 1, '39,5'))).toEqual(drawn(workbook));
  });

  it('rings the loading of the selected row', () => {
    expect(see('My sheet', 60).words).toBe(
      'Weight against arm. two up is OK. loadings at arm 42, weight 2300. loadings at arm 48, weight 2390. selected: two up, OK, at arm 42, weight 2300.',
    );
    expect(see('My sheet', 61).words).toContain('selected: four up, NO, at arm 48, weight 2390.');
    expect(see('My sheet', 70).none).toContain('BALANCE_CHECK in G70: its envelope is a formula');
  });

  it('draws a whole loading with its burn, the point of the row ringed', () => {
    expect(see('My sheet', 81, 5).of).toBe('Loading in the envelope: My sheet, row 81');
    expect(see('My sheet', 81, 5).words).toMatch(
      /zero fuel at arm 44\.1791, weight 1340\. take-off at arm 44\.6048, weight 1508\. landing at arm 44\.3429, weight 1400\. selected: take-off, OK, at arm 44\.6048, weight 1508\.$/,
    );
    expect(see('My sheet', 90, 5).words).toMatch(/selected: burn, OK, /);
    expect(see('My sheet', 85, 5).words).not.toContain('selected');
    expect(see('My sheet', 91, 5).none).toContain('rows 80 to 90 (LOADING_BRIEF)');
  });

  it('draws the list of an aircraft with its own headings, and never a blank row', () => {
    expect(see('Fleet', 2)).toMatchObject({ of: 'insurance, North: Fleet, row 2' });
    expect(see('Fleet', 2).words).toContain('insurance, North: OK as of 2026-11-25');
    expect(see('Fleet', 2).words).toContain('NO: radio, South (lapsed 2026-01-15). UNKNOWN: annual inspection, South (no last good day).');
    expect(see('Fleet', 3).of).toBe('insurance, North: Fleet, row 2');
    expect(see('Fleet', 6).none).toContain('No picture belongs to row 6');
  });

  it('says what to select where nothing has a picture', () => {
    expect(see('Bare', 1).none).toMatch(
      /^Nothing on "Bare" has a picture\. Select a row of Descent and hold card, Weight and balance, Currency log, or of your own with one of these calls: HOLD_BRIEF, /,
    );
    expect(see('Trip sheet', 9).none).toMatch(/^Nothing on "Trip sheet" has a picture/);
    expect(see('Gone', 1).none).toBe('The sheet "Gone", which the selected row reads, is not there.');
  });
});

describe('the sheets of ours', () => {
  it.each([
    ['Descent and hold card', 13, 'Descent profile: Descent and hold card, row 40'],
    ['Descent and hold card', 2, 'Descent profile: Descent and hold card, row 40'],
    ['Descent and hold card', 60, 'Hold: Descent and hold card, row 54'],
    ['Descent and hold card', 90, 'Hold: Descent and hold card, row 54'],
    ['Weight and balance', 45, 'Loading in the envelope: Weight and balance, row 45'],
    ['Weight and balance', 9, 'Loading in the envelope: Weight and balance, row 9'],
  ])('%s, row %i', (sheet, row, of) => expect(see(sheet, row).of).toBe(of));

  it('marks the selected point of the loading, and none in a row without one', () => {
    expect(see('Weight and balance', 44).words).toMatch(/selected: zero fuel, at arm [\d.]+, weight [\d.]+\.$/);
    expect(see('Weight and balance', 45).words).toContain('selected: take-off');
    expect(see('Weight and balance', 48).words).toContain('selected: burning into the reserve');
    expect(see('Weight and balance', 9).words).not.toContain('selected');
  });

  it("draws the pilot's item of the row, and the next lapse from any other row", () => {
    const currency = workbook.sheets.find(({ name }) => name === 'Currency log')?.values ?? [];
    const [first, last] = [currency.findIndex(([item]) => item === 'item') + 2, 45];
    expect(see('Currency log', first + 1).of).toBe(`${String(currency[first]?.[0])}: Currency log, row ${first + 1}`);
    const next = currency
      .slice(first - 1, last)
      .filter(([, , , , through]) => Number(through) >= 46351)
      .sort((one, other) => Number(one[4]) - Number(other[4]))[0]?.[0];
    expect(see('Currency log', 2).of.startsWith(`${String(next)}: `)).toBe(true);
  });

  it("draws the aircraft's item of the row, an UNKNOWN without a day", () => {
    const currency = workbook.sheets.find(({ name }) => name === 'Currency log')?.values ?? [];
    const row = currency.findIndex(([item, aircraft]) => item === 'annual inspection' && aircraft === 'Sable Twin') + 1;
    const { of, words } = see('Currency log', row);
    expect(of).toBe(`annual inspection, Sable Twin: Currency log, row ${row}`);
    expect(words).toMatch(/^annual inspection, Sable Twin: UNKNOWN as of 2026-11-25, no last good day\. no date written down/);
    expect(words).not.toMatch(/^[^.]*Good through/);
  });

  it.each(['Descent and hold card', 'Weight and balance', 'Currency log', 'My sheet', 'Fleet'])(
    'draws the same after rows were inserted above: %s',
    (sheet) => {
      const moved = withRowsInserted(workbook, sheet, 2, 3);
      for (const row of [9, 13, 33, 45, 46, 51, 60, 75]) {
        const [before, after] = [see(sheet, row), see(sheet, row + 3, 1, moved)];
        expect(after.words).toBe(before.words);
        if (before.none === '') expect(after.of).toBe(before.of.replace(/\d+$/, (text) => String(Number(text) + 3)));
      }
    },
  );

  it('draws the same after rows were inserted into the card', () => {
    const moved = withRowsInserted(workbook, 'Descent and hold card', 15, 2);
    expect(see('Descent and hold card', 13, 1, moved).words).toBe(see('Descent and hold card', 13).words);
    expect(see('Descent and hold card', 62, 1, moved).words).toBe(see('Descent and hold card', 60).words);
  });

  it('says so where the keys that lead to its cells are gone, and needs no words', () => {
    const name = 'Weight and balance';
    const unlabelled = {
      ...workbook,
      sheets: workbook.sheets.map((sheet) =>
        sheet.name === name ? { ...sheet, values: sheet.values.map((line) => line.map((value) => (typeof value === 'string' ? '' : value))) } : sheet,
      ),
    };
    expect(see(name, 45, 1, unlabelled).of).toBe('Loading in the envelope: Weight and balance, row 45');
    const keyless = {
      ...workbook,
      sheets: workbook.sheets.map((sheet) => ({ ...sheet, formulas: sheet.formulas.filter(({ text }) => !text.includes(keysShown)) })),
    };
    expect(see(name, 45, 1, keyless).none).toBe(
      'The cells behind "Loading in the envelope" are not found on "Weight and balance": it is of a version before sheets had keys, or has lost them. Bring the sheet up to date, or insert it anew.',
    );
    // The card has calls from which its pictures are drawn.
    expect(see('Descent and hold card', 60, 1, keyless).of).toMatch(/^HOLD_BRIEF|Hold/);
  });

  it('finds the sheets under other names', () => {
    const renamed = {
      ...workbook,
      sheets: workbook.sheets.map((sheet) => (sheet.name === 'Weight and balance' ? { ...sheet, name: 'Loading of the blue one' } : sheet)),
    };
    expect(see('Loading of the blue one', 45, 1, renamed).of).toBe('Loading in the envelope: Loading of the blue one, row 45');
  });
});

describe('cells that do not hold what they should', () => {
  it.each([
    ['an error in the brief', 'Descent and hold card', 54, 5, '#ERROR!', 60, 'Nothing to draw: no entry yet.'],
    ['no wind in the cell', 'Descent and hold card', 61, 2, '', 60, 'Nothing to draw: no wind speed yet.'],
    ['an error in place of the plan', 'Descent and hold card', 40, 1, '#ERROR!', 40, 'Nothing to draw: no descent plan yet.'],
    ['a plan whose total is gone', 'Descent and hold card', 42, 1, '', 40, 'Nothing to draw: no descent plan yet.'],
    ['an error in place of the hold', 'My sheet', 20, 4, '#ERROR!', 20, 'Nothing to draw: HOLD_BRIEF in D20 shows &quot;#ERROR!&quot;.'],
    ['no wind for the hold', 'My sheet', 23, 1, 'strong', 20, 'Nothing to draw: no wind_kt yet for HOLD_BRIEF in D20.'],
    [
      'a count that its rows do not add up to',
      'My sheet',
      2,
      2,
      4,
      2,
      'Nothing to draw: RECENCY_DAYS in E2 counts 9, but the rows it reads add up to 10; look at their dates.',
    ],
    [
      'a date that cannot be read',
      'My sheet',
      2,
      1,
      'last week',
      2,
      'Nothing to draw: RECENCY_DAYS in E2 counts 9, but the rows it reads add up to 6; look at their dates.',
    ],
    ['days that do not agree', 'My sheet', 9, 6, 99, 9, 'Nothing to draw: the due day of DUE_STATUS in E9 and its days left do not agree.'],
    ['a blank in place of a verdict', 'My sheet', 61, 7, '', 61, 'Nothing to draw: BALANCE_CHECK in G60 shows nothing in this row.'],
    ['a day to judge on that is no day', 'Start', 6, 1, 'today', 2, ''],
  ] as const)('%s', (_, sheet, row, column, value, selectedRow, words) => {
    const selectedSheet = sheet === 'Start' ? 'My sheet' : sheet;
    const seen = see(selectedSheet, selectedRow, sheet === 'My sheet' && selectedRow === 20 ? 4 : 1, showing(sheet, row, column, value));
    expect(seen.none).toBe('');
    expect(seen.words.startsWith('Nothing to draw: ')).toBe(words !== '' || sheet === 'Start');
    if (words !== '') expect(seen.words).toBe(words);
  });

  it("shows the error where the pilot's list is one", () => {
    const failed = {
      ...workbook,
      sheets: workbook.sheets.map((sheet) => ({
        ...sheet,
        values:
          sheet.name !== 'Currency log'
            ? sheet.values
            : sheet.values.map((line, index) =>
                index < 40 || index > 76 ? line : line.map((_, column) => (index === 40 && column === 0 ? '#ERROR!' : '')),
              ),
      })),
    };
    expect(see('Currency log', 42, 1, failed)).toMatchObject({
      of: 'PILOT_STATUS: Currency log, row 42',
      words: 'Nothing to draw: PILOT_STATUS in A41 shows &quot;#ERROR!&quot;.',
    });
  });

  it('finds the total of a plan by itself, and draws none without it', () => {
    const cut = showing('My sheet', 52, 1, '');
    expect(see('My sheet', 50, 1, cut).words).toBe('Nothing to draw: the rows of DESCENT_PLAN in A50 do not end with the whole descent.');
  });

  it('refuses a formula whose arguments cannot be told apart', () => {
    const mixed = {
      ...workbook,
      sheets: workbook.sheets.map((sheet) => ({
        ...sheet,
        formulas: sheet.formulas.map((cell) =>
          cell.text.startsWith('=RECENCY_DAYS(A2:A6,B2:B6,as_of)') ? { ...cell, text: '=RECENCY_DAYS(A2:A6;B2:B6;as_of;90;0,5)' } : cell,
        ),
      })),
    };
    expect(see('My sheet', 2, 1, mixed).none).toContain('is part of a longer formula');
  });

  it('reads semicolons, small letters and blanks as well', () => {
    const local = {
      ...workbook,
      sheets: workbook.sheets.map((sheet) => ({
        ...sheet,
        formulas: sheet.formulas.map((cell) =>
          cell.text === '=RECENCY_DAYS(A2:A6,B2:B6,as_of)' ? { ...cell, text: "= recency_days( $A$2:$A ; 'My sheet'!B2:B ; AS_OF ; ; 3 )" } : cell,
        ),
      })),
    };
    expect(see('My sheet', 2, 1, local)).toEqual(see('My sheet', 2));
  });
});
