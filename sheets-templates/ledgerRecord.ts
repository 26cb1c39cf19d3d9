// Two small blocks of the Data ledger beside its lists: the wording of a maintenance record entry, and renewals by month.
import { area, cell, line, type Field } from './build';
import { fleetTop, type LedgerPlaces } from './ledgerSections';
import { column, listHeading, type List } from './lists';
import type { TemplateCell } from './template';

const blank = '____________________';

/** The entry for the card in the row named; what nobody has written down stays a blank to be filled in by hand. */
export function recordCells(places: LedgerPlaces): TemplateCell[] {
  const { cards } = places;
  const top = fleetTop(places);
  const row = `$L$${top + 1}`;
  const of = (letter: string): string => `INDEX($${letter}$1:$${letter}$${cards.last},${row})`;
  const text = (letter: string): string => `IF(${of(letter)}="","${blank}",${of(letter)})`;
  const day = (letter: string): string => `IF(ISNUMBER(${of(letter)}),TEXT(${of(letter)},"yyyy-mm-dd"),"${blank}")`;
  const written = (formula: string): string => `=IFERROR(IF(AND(${row}>=${cards.first},${row}<=${cards.last}),${formula},"the row is not one of a card"),"the row is not one of a card")`;
  const lines: readonly string[] = [
    written(`"Aircraft: "&${text('A')}&"   Hours in service: ________"`),
    written(`"Description: database "&${text('C')}&" of "&${text('B')}&" updated,"`),
    written(`"   data effective "&${day('E')}&" ("&${text('H')}&"),"`),
    `   as described in ${blank}`,
    written(`"Date of completion: "&${day('F')}`),
    written(`"Checked on the unit after loading: "&${text('I')}`),
    written(`"Name: "&${text('G')}`),
    `Signature: ${blank}`,
    `Kind and number of certificate: ${blank}`,
  ];
  return [
    ...listHeading(top, 9, 13, '3  Maintenance record entry', ''),
    ...line(top + 1, 9, ['sheet row of the card', 'label'], [undefined, 'plain'], [undefined, 'plain'], [cards.first, 'input', { format: 'whole', note: 'The number at the left edge of the row of the card above.' }]),
    ...lines.map((line_, index) => cell(top + 3 + index, 9, line_, 'computedText')),
    cell(top + 13, 9, recordNote, 'text'),
  ];
}

export const recordMerges = (places: LedgerPlaces): string[] => [area(fleetTop(places) + 13, 9, fleetTop(places) + 22, 13)];

const recordNote =
  'United States: 14 CFR 43.9(a) asks for the description of the work, the date of completion, the name, and the signature with the number and kind of certificate. ' +
  '14 CFR 43 App. A(c)(32) named updates of navigation databases as preventive maintenance. Since 2013, 14 CFR 43.3(k) says that an update begun from the flight deck, ' +
  'without tools and without taking the unit apart, is not maintenance; keep this entry as your own record. Look both up as they stand today. ' +
  'Anyone else: follow your own authority and the maintenance programme of the aircraft.';

const months = 13;

/** Formula text: whether the diary has more rows than are read of it. */
export const diaryGoesOn = ({ last }: List): string => `$A$${last + 1}<>""`;

/** Why no sum is shown, or what the sums leave out. */
function forecastSaid({ licences, diary }: LedgerPlaces, notRead: string): string {
  const renewed = `(${column(diary, 'A')}="renew")`;
  const elsewhere = `SUMPRODUCT(${renewed}*((${column(diary, 'F')}<>$L$${licences.head})*(${column(diary, 'F')}<>$M$${licences.head})+(${column(diary, 'E')}="")>0))`;
  const looks = `IF(COUNTIF(${column(diary, 'A')},"look")=0,"","; see the rows of the diary marked look")`;
  const why = `IF(NOT(ISNUMBER(as_of)),"as_of on the Start sheet is no date",IF(${diaryGoesOn(diary)},"the diary has more rows than are read: insert rows before row "&ROW($A$${diary.last}),"the diary is empty, or cannot be read"))`;
  return `=IF(${notRead},${why},IF(${elsewhere}>0,${elsewhere}&" in another currency, or without a cost, not in these sums","every renewal of the diary is in these sums")&${looks})`;
}

/** Renewals of the diary added up by month and currency, from the ones overdue to the last month begun. */
export function forecastCells(places: LedgerPlaces): TemplateCell[] {
  const { licences, diary } = places;
  const top = licences.head - 2;
  /** No day in the diary, no day to reckon from, or more rows than are read: then no sum is shown, and not a nought either. */
  const notRead = `OR(COUNT(${column(diary, 'C')})=0,NOT(ISNUMBER(as_of)),${diaryGoesOn(diary)})`;
  /** Of a day with a time of day only the day counts. */
  const today = 'INT(as_of)';
  const sums = (letter: string, from: string | undefined, to: string): string => {
    const begin = from === undefined ? '' : `,${column(diary, 'C')},">="&(${from})`;
    return `=IF(${notRead},"",SUMIFS(${column(diary, 'E')},${column(diary, 'A')},"renew",${column(diary, 'F')},${letter}$${licences.head}${begin},${column(diary, 'C')},"<="&(${to})))`;
  };
  const row = (at: number, label: Field, from: string | undefined, to: string): TemplateCell[] =>
    line(at, 10, label, [undefined, 'plain'], ...(['L', 'M'] as const).map((letter): Field => [sums(letter, from, to), 'computed', { format: 'two' }]));
  const first = licences.first;
  const whole = ['L', 'M'].map((letter): Field => [`=IF(${notRead},"",SUM(${letter}${first}:${letter}${first + months}))`, 'computed', { format: 'two', note: 'Licences that have ended, and the next 12 months.' }]);
  return [
    ...listHeading(top, 9, 13, '5  Renewals by month', 'From the diary below; type the two currencies over the columns.'),
    ...line(licences.head, 10, ['month', 'columnHead'], ['', 'columnHead'], ['EUR', 'inputText'], ['CHF', 'inputText']),
    ...row(first, ['ended', 'computedText'], undefined, `${today}-1`),
    ...Array.from({ length: months }, (_, index) => {
      const at = first + 1 + index;
      const month: Field = [`=IF(ISNUMBER(as_of),EOMONTH(as_of,${index - 1})+1,"")`, 'computed', { format: 'month' }];
      return row(at, month, index === 0 ? today : `$J$${at}`, `EOMONTH($J$${at},0)`);
    }).flat(),
    ...line(first + months + 1, 10, ['in all', 'label'], [undefined, 'plain'], ...whole),
    cell(first + months + 2, 9, forecastSaid(places, notRead), 'subtitle'),
  ];
}
