// The item "Entries" of the Trip sheet: every entry a number, none that looks like a slip of typing, none beside its list.
import { filledOutside } from './build';
import { fieldEntries, singleEntries } from './tripEntries';
import { blockRows, correctionsRead, entryRows as rows, type Block } from './tripRows';

const ends = [['B', 'departure'], ['C', 'destination']] as const;
const joined = (separator: string, texts: readonly string[]): string => `TEXTJOIN("${separator}",TRUE,${texts.join(',')})`;

/** "label (departure)" for each entry that is not a number; nothing when all are there. */
const missing = joined(', ', [
  ...fieldEntries.flatMap(({ row, label }) => ends.map(([column, end]) => `IF(ISNUMBER(${column}${row}),"","${label} (${end})")`)),
  ...singleEntries.map(({ row, label }) => `IF(ISNUMBER(B${row}),"","${label}")`),
]);

const corrections = [
  ['take-off', blockRows.takeoffCorrections],
  ['landing', blockRows.landingCorrections],
] as const;

/** A row put in between the heads and the first correction is not read. */
const stray = corrections.map(([, block]) => filledOutside(correctionsRead(block), 'A', 'D', { above: block.first - 1 })).join('+');

/** Of a runway 27 the direction is near 270. A direction of whole tens up to 30 could be either, and is passed over. */
const designator = ([column, end]: (typeof ends)[number]): string => {
  const cell = `${column}${rows.runway}`;
  return `IF(ISNUMBER(${cell}),IF(AND(${cell}>0,${cell}<37,MOD(${cell},10)<>0),"runway direction (${end}) is in degrees: runway "&${cell}&" would be "&${cell}*10,""),"")`;
};

/** 20 % in a cell is the number 0.2. */
const belowOne = ([name, block]: readonly [string, Block]): string => {
  const percents = `B${correctionsRead(block).first}:B${correctionsRead(block).last}`;
  return `IF(COUNTIFS(${percents},">0",${percents},"<1")+COUNTIFS(${percents},"<0",${percents},">-1")>0,"a ${name} correction of less than 1 percent: 20 percent is typed 20","")`;
};

const unusual = singleEntries.map(({ row, label, usual: [least, most] }) => `IF(ISNUMBER(B${row}),IF(OR(B${row}<${least},B${row}>${most}),"${label} "&B${row}&", usually ${least} to ${most}",""),"")`);
const doubts = joined('; ', [...ends.map(designator), ...corrections.map(belowOne), ...unusual]);

export const entriesVerdict = `=IF(OR(${missing}<>"",${stray}>0),"UNKNOWN",IF(${doubts}="","OK","CHECK"))`;
export const entriesReason =
  `=IF(${missing}<>"","not a number: "&${missing},IF(${stray}>0,"a correction stands right below the heads of its list, where it is not read: move it down",IF(${doubts}="","every entry holds a number","looks like a slip: "&${doubts})))`;
