// The first sheet of the Excel file: what the file is, and what it is not.
import type { Cell, WriteSheet } from 'hucre';
import { fontFamily, styles } from '../../../sheets-templates/look';
import { colour } from './cellLook';
import { fileText } from './fileText';
import { margins } from './sheetContents';

export const aboutName = 'About this file';
export const caution = 'Planning aid only: the approved manual, official data, local rules and the pilot in command decide.';

const charactersInLine = 100;
const linePoints = 15;

const permanent = [
  'Made from the local workbook of Rampwright, for people who do not run it.',
  caution,
  'No live formulas: every number, date and verdict is the value that stood in the workbook when this file was made. Changing a cell here changes no other cell, and no verdict. To calculate again, change the entry in Rampwright and save a new file.',
  'The colour behind a verdict was fixed with the file as well; it does not follow the word if somebody changes it. An error such as #VALUE! is an answer that was not there: the reason stands in Rampwright, below the grid.',
  'Not in this file: formulas, the choices and limits of input cells, colours by rules of your own, links to web pages, letters that differ in look within one cell, and pictures: the sketches of holds and descents stand in Rampwright only.',
];

function colourOf(rgb: string): { color?: { rgb?: string } } {
  const color = colour({ rgb });
  return color === undefined ? {} : { color };
}

/** Each sentence has a row. */
export function aboutSheet(name: string, asOf: string, particular: readonly string[], foot: string): WriteSheet {
  const [made = '', ...others] = permanent;
  const text = { name: fontFamily, size: styles.text.size, ...colourOf(styles.text.color) };
  const title = { name: fontFamily, size: styles.title.size, bold: true, ...colourOf(styles.title.color) };
  const lines = [made, asOf, ...others, ...particular];
  const rows = lines.map((line, index): [string, Partial<Cell>] => [
    `${index + 1},0`,
    { value: fileText(line), style: { font: { ...text, ...(line === caution && { bold: true }) }, alignment: { wrapText: true, vertical: 'top' } } },
  ]);
  return {
    name,
    cells: new Map<string, Partial<Cell>>([['0,0', { value: aboutName, style: { font: title } }], ...rows]),
    columns: [{ width: 88 }],
    rowDefs: new Map([
      [0, { height: 30 }],
      ...lines.map((line, index) => [index + 1, { height: linePoints * Math.ceil(line.length / charactersInLine) + 5 }] as const),
    ]),
    view: { showGridLines: false },
    pageSetup: { orientation: 'portrait', fitToPage: true, fitToWidth: 1, fitToHeight: 0, margins },
    headerFooter: { oddFooter: foot },
  };
}
