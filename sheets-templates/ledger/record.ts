// Two small blocks of the Data ledger: the wording of a maintenance record entry, and renewals by month.
import { area, cell, line, type Field } from '../build';
import { fleetTop, renewalMonths, type LedgerPlaces } from './places';
import { column, listHeading, type List } from '../lists';
import type { TemplateCell, Validation } from '../template';

const blank = '____________________';

/**
 * The entry for one load, or for every load of that aircraft on that day. What nobody has written down stays a blank to be filled in by hand;
 * so does the day of a check that was made before the load, and a name where several people loaded. A load that failed is no work done.
 */
export function recordCells(places: LedgerPlaces): TemplateCell[] {
  const { loads } = places;
  const top = fleetTop(places);
  const [row, visit] = [`$L$${top + 1}`, `$L$${top + 2}`];
  const all = (letter: string): string => column(loads, letter);
  const of = (letter: string): string => `INDEX(${all(letter)},${row}-ROW($A$${loads.head}))`;
  const isRow = `(ROW(${all('A')})=${row})*1`;
  const same = `(${all('A')}=${of('A')})*(${all('E')}=${of('E')})*((${all('H')}="")+(${all('H')}="no")>0)*IF(${visit}="visit",1,${isRow})`;
  const count = `SUMPRODUCT(${same})`;
  const isChecked = `ISNUMBER(${all('F')})*(${all('F')}>=${all('E')})*(${all('F')}<=as_of)`;
  const checked = `IF(SUMPRODUCT(${same}*${isChecked})=${count},TEXT(MAX(IF(${same}*${isChecked},${all('F')},0)),"yyyy-mm-dd"),"${blank}")`;
  const by = `IF(AND(${of('G')}<>"",SUMPRODUCT(${same}*(${all('G')}=${of('G')}))=${count}),${of('G')},"${blank}")`;
  const day = `IF(AND(ISNUMBER(${of('E')}),${of('E')}<=as_of),TEXT(${of('E')},"yyyy-mm-dd"),"${blank}")`;
  const each = `${all('C')}&" of "&${all('B')}&", data effective "&TEXT(${all('D')},"yyyy-mm-dd")`;
  const what = `TEXTJOIN("; ",TRUE,IF(${same},${each},""))`;
  const no = '"the row is not one of a load that went well"';
  const written = (formula: string): string =>
    `=ARRAYFORMULA(IFERROR(IF(AND(${row}>=ROW($A$${loads.first}),${row}<=ROW($A$${loads.last}),${of('E')}<>"",${count}>0),${formula},${no}),${no}))`;
  const lines: readonly (readonly [down: number, content: string])[] = [
    [3, written(`"Aircraft: "&IF(${of('A')}="","${blank}",${of('A')})&"   Hours in service: ________"`)],
    [4, written(`"Description: updated "&${what}`)],
    [7, `   as described in ${blank}`],
    [8, written(`"Date of completion: "&${day}`)],
    [9, written(`"Checked on the unit after loading: "&${checked}`)],
    [10, written(`"Name: "&${by}`)],
    [11, `Signature: ${blank}`],
    [12, `Kind and number of certificate: ${blank}`],
  ];
  const latest = `=SUMPRODUCT(MAX((${all('E')}<>"")*ROW(${all('E')})))`;
  const choice = (down: number, label: string, content: string, note: string, format?: 'whole'): TemplateCell[] =>
    line(
      top + down,
      9,
      [label, 'label'],
      [undefined, 'plain'],
      [undefined, 'plain'],
      [content, format === undefined ? 'inputText' : 'input', { note, ...(format !== undefined && { format }) }],
    );
  return [
    ...listHeading(top, 9, 13, '3  Maintenance record entry', ''),
    ...choice(1, 'sheet row of the load', latest, 'The last line of the history; type the row of another load over it.', 'whole'),
    ...choice(2, 'one entry for', 'visit', 'visit: every load of that aircraft on that day; load: that one alone.'),
    ...lines.map(([down, content]) => cell(top + down, 9, content, down === 4 ? 'text' : 'computedText')),
    cell(top + 14, 9, recordNote, 'text'),
  ];
}

export const recordValidation = (places: LedgerPlaces): Validation => ({
  kind: 'list',
  range: `L${fleetTop(places) + 2}`,
  choices: ['visit', 'load'],
  help: 'One entry for every load of that aircraft on that day, or for the load alone.',
});

export const recordMerges = (places: LedgerPlaces): string[] => {
  const top = fleetTop(places);
  return [area(top + 4, 9, top + 6, 13), area(top + 14, 9, top + 23, 13)];
};

const recordNote =
  'United States: 14 CFR 43.9(a) asks for the description of the work, the date of completion, the name, and the signature with the number and kind of certificate. ' +
  '14 CFR 43 App. A(c)(32) named updates of navigation databases as preventive maintenance. Since 2013, 14 CFR 43.3(k) says that an update begun from the flight deck, ' +
  'without tools and without taking the unit apart, is not maintenance; keep this entry as your own record. Look both up as they stand today. ' +
  'Anyone else: follow your own authority and the maintenance programme of the aircraft.';

/** Formula text: whether the diary has more rows than are read of it. */
export const diaryGoesOn = ({ last }: List): string => `$A$${last + 1}<>""`;

/** Why no sum is shown, or what the sums leave out. */
function forecastSaid({ renewals, diary }: LedgerPlaces, notRead: string): string {
  const renewed = `(${column(diary, 'A')}="renew")`;
  const elsewhere = `SUMPRODUCT(${renewed}*((${column(diary, 'F')}<>$B$${renewals.head})*(${column(diary, 'F')}<>$C$${renewals.head})+(${column(diary, 'E')}="")>0))`;
  const looks = `IF(COUNTIF(${column(diary, 'A')},"look")=0,"","; see the rows of the diary marked look")`;
  const why = `IF(NOT(ISNUMBER(as_of)),"as_of on the Start sheet is no date",IF(${diaryGoesOn(diary)},"the diary has more rows than are read: insert rows before row "&ROW($A$${diary.last}),"the diary is empty, or cannot be read"))`;
  return `=IF(${notRead},${why},IF(${elsewhere}>0,${elsewhere}&" in another currency, or without a cost, not in these sums","every renewal of the diary is in these sums")&${looks})`;
}

/** Renewals of the diary added up by month and currency, from the ones overdue to the last month begun. */
export function forecastCells(places: LedgerPlaces): TemplateCell[] {
  const { renewals, diary, licences } = places;
  /** No day in the diary, no day to reckon from, or more rows than are read: then no sum is shown, and not a nought either. */
  const notRead = `OR(COUNT(${column(diary, 'C')})=0,NOT(ISNUMBER(as_of)),${diaryGoesOn(diary)})`;
  /** Of a day with a time of day only the day counts. */
  const today = 'INT(as_of)';
  const sums = (letter: string, from: string | undefined, to: string): string => {
    const begin = from === undefined ? '' : `,${column(diary, 'C')},">="&(${from})`;
    return `=IF(${notRead},"",SUMIFS(${column(diary, 'E')},${column(diary, 'A')},"renew",${column(diary, 'F')},${letter}$${renewals.head}${begin},${column(diary, 'C')},"<="&(${to})))`;
  };
  const row = (at: number, label: Field, from: string | undefined, to: string): TemplateCell[] =>
    line(at, 1, label, ...(['B', 'C'] as const).map((letter): Field => [sums(letter, from, to), 'computed', { format: 'two' }]));
  const { first, last } = renewals;
  const whole = ['B', 'C'].map((letter): Field => [
    `=IF(${notRead},"",SUM(${letter}${first}:${letter}${last - 1}))`,
    'computed',
    { format: 'two', note: 'Licences that have ended, and the next 12 months.' },
  ]);
  const once = ['B', 'C'].map((letter): Field => [
    `=SUMIFS(${column(licences, 'E')},${column(licences, 'F')},${letter}$${renewals.head})`,
    'computed',
    { format: 'two', note: 'Every licence at one renewal: the total of section 7, unless a licence is unknown there.' },
  ]);
  return [
    ...listHeading(
      renewals.head - 2,
      1,
      13,
      '5  Renewals by month',
      'Every renewal in the diary below: a monthly one comes twelve times here, and once in section 7. Type the two currencies over the columns.',
    ),
    ...line(renewals.head, 1, ['month', 'columnHead'], ['EUR', 'inputText'], ['CHF', 'inputText']),
    ...row(first, ['ended', 'computedText'], undefined, `${today}-1`),
    ...Array.from({ length: renewalMonths }, (_, index) => {
      const at = first + 1 + index;
      const month: Field = [`=IF(ISNUMBER(as_of),EOMONTH(as_of,${index - 1})+1,"")`, 'computed', { format: 'month' }];
      return row(at, month, index === 0 ? today : `$A$${at}`, `EOMONTH($A$${at},0)`);
    }).flat(),
    ...line(last, 1, ['in all', 'label'], ...whole),
    ...line(last + 1, 1, ['each once', 'label'], ...once),
    cell(last + 2, 1, forecastSaid(places, notRead), 'subtitle'),
  ];
}
