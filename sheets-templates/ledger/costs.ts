// The sections of the Data ledger about money and days to come: licences, who shares in them, and the diary.
import { cell } from '../build';
import { demoLicences, demoMembers } from '../demo/ledger';
import {
  column,
  columnWithHead,
  entryList,
  headWords,
  helpUnlessBeside,
  listHeading,
  listHeads,
  shownNumber,
  shownText,
  spillList,
  spillRoom,
  typedDate,
  typedNumber,
  typedText,
  type Look,
} from '../lists';
import { formulaCall, type TemplateCell } from '../template';
import { type LedgerPlaces, licenceTable } from './places';

/** Formula text: what the diary cannot read of each licence, in the row of that licence, under a head of its own. */
function licenceSlips({ licences, diary }: LedgerPlaces): string {
  const rows = columnWithHead(licences, 'A');
  const said = column(diary, 'G');
  const about = `IFERROR(LEFT(${said},FIND(":",${said})-1),"")`;
  const what = `IFERROR(MID(${said},FIND(":",${said})+2,500),"")`;
  const row = `ROW(${rows})-ROW($A$${licences.head})`;
  return `=ARRAYFORMULA(IF(${row}=0,"look at",IFERROR(XLOOKUP("licence in row "&(${row})&" of the list",${about},${what}),"")))`;
}

const licenceLooks: readonly Look[] = [
  ...[typedText, typedText, typedDate, typedNumber('whole'), typedNumber('two'), typedText, typedText],
  ...[typedDate, typedText, typedText],
];

export function licenceCells(places: LedgerPlaces): TemplateCell[] {
  const { licences } = places;
  return [
    ...listHeading(
      licences.head - 2,
      1,
      13,
      '4  Licences and what they cost',
      helpUnlessBeside(
        licences,
        'A',
        'A licence',
        'For one aircraft or "all". Covers every box and series where those are blank. End: its last day, or no end.',
      ),
    ),
    ...listHeads(licences.head, 1, ['aircraft']),
    cell(licences.head, 2, 'database', 'columnHead', { note: 'Which it covers: one, several with commas between, or all.' }),
    cell(licences.head, 3, 'licence end', 'columnHead', { note: 'Its last day; no end where it has none. Cards that no licence covers are told.' }),
    cell(licences.head, 4, 'months', 'columnHead', { note: 'From one renewal to the next; blank where it is not renewed.' }),
    ...listHeads(licences.head, 5, ['cost', 'currency', 'shared by']),
    cell(licences.head, 8, 'starts', 'columnHead', {
      note: 'The first day on which it was held; it stays when the licence is renewed. Blank: held ever since.',
    }),
    cell(licences.head, 9, 'box or card', 'columnHead', { note: 'Which it covers, several with semicolons between; blank for every one.' }),
    cell(licences.head, 10, 'series', 'columnHead', { note: 'Such as 28-day; several with semicolons between; blank for every one.' }),
    ...entryList(licences, 1, licenceLooks, demoLicences),
    cell(licences.head, 12, licenceSlips(places), 'columnHead', {
      note: 'What cannot be read of the licence, as the diary says it. Nothing else is spoilt by it.',
    }),
    ...spillRoom(licences, 12, [shownText]),
  ];
}

/** An aircraft spelled otherwise among the members leaves its whole cost to the others: that is said. Spellings as our functions compare them. */
function statementHelp({ members, licences }: Pick<LedgerPlaces, 'members' | 'licences'>): string {
  const plain = (range: string): string => `SUBSTITUTE(SUBSTITUTE(LOWER(TRIM(${range})),"-"," "),"_"," ")`;
  const aircraft = column(members, 'B');
  const strangers = `SUMPRODUCT((${aircraft}<>"")*(${plain(aircraft)}<>"all")*ISNA(MATCH(${plain(aircraft)},${plain(column(licences, 'A'))},0)))`;
  const help = 'At the next renewal of every licence, once each.';
  return `=IFERROR("${help}"&IF(${strangers}=0,""," Rows of members in an aircraft that no licence names: "&${strangers}&". Where it is only spelled otherwise, the others bear its cost alone."),"${help}")`;
}

export function memberCells({ members, statement, licences }: LedgerPlaces): TemplateCell[] {
  const of = (letter: string): string => column(licences, letter);
  const words = ['by', 'name', '', 'amount', 'of which'];
  const call = formulaCall('COST_STATEMENT', of('A'), of('E'), of('F'), of('G'), `$A$${members.first}:$D$${members.last}`, headWords(words));
  const looks: readonly Look[] = [
    ['computedText', undefined, 'COST_STATEMENT: shares by the largest remainder, so that they add up to the cent; currencies are never added.'],
    shownText,
    shownText,
    shownNumber('two'),
    shownText,
  ];
  return [
    ...listHeading(
      members.head - 2,
      1,
      7,
      '6  Who takes part in which aircraft',
      helpUnlessBeside(members, 'A', 'A member', 'Hours flown and agreed shares; aircraft "all" takes part in every one.'),
    ),
    ...listHeads(members.head, 1, ['member', 'aircraft', 'hours', 'share']),
    ...entryList(members, 1, [typedText, typedText, typedNumber('one'), typedNumber('one')], demoMembers),
    ...listHeading(members.head - 2, 9, 13, '7  What each member owes, and each aircraft costs', statementHelp({ members, licences })),
    ...spillList(statement, 9, looks, words, call),
  ];
}

export function diaryCells(places: LedgerPlaces): TemplateCell[] {
  const { diary, cards } = places;
  const words = ['do', 'from, sheet time', 'date', 'at, UTC', 'cost', 'currency', 'what'];
  const call = formulaCall(
    'LEDGER_DIARY',
    ...['A', 'C', 'D'].map((letter) => column(cards, letter)),
    'as_of',
    '12',
    licenceTable(places),
    column(cards, 'E'),
    headWords(words),
  );
  const looks: readonly Look[] = [
    [
      'computedText',
      undefined,
      'LEDGER_DIARY: AIRAC dates from the ICAO annex, the 56-day series from the FAA cut-off dates; 14-day is common practice, no source.',
    ],
    shownNumber('dateTime'),
    shownNumber('date'),
    shownText,
    shownNumber('two'),
    shownText,
    shownText,
  ];
  return [
    ...listHeading(
      diary.head - 2,
      1,
      13,
      '9  Diary of the next 12 months: visits with what changes on each, and renewals',
      'Load before the first flight after the moment shown, not before it, unless the box holds two cycles and changes over by itself.',
    ),
    ...spillList(diary, 1, looks, words, call),
  ];
}
