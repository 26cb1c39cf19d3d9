// What the engine keeps beside the cells: names, verdict tints, choices and limits of inputs, notes, charts, pictures. Each is a
// JSON text under the name of the engine's plugin.
import { verdictTints } from '../../../sheets-templates/look';
import type { ChartSeries, ScatterChart, SheetPicture, SheetTemplate, Validation } from '../../../sheets-templates/template';
import { a1FromRange, quoteSheetName, rangeFromA1 } from './a1';
import { chartPlace } from './chartPlace';
import { serialFromIso } from '../../workbook/serialDates';
import { chartComponent, pictureComponent, sheetIdOf } from './workbookIds';

interface Resource {
  readonly name: string;
  readonly data: string;
}

/** A chart as the workbook keeps it; each series names its two columns. */
export interface ChartRecord {
  readonly title: string;
  readonly description: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly width: number;
  readonly height: number;
  readonly series: readonly ChartSeries[];
}

/** A picture as the workbook keeps it; its ranges go by names of the workbook. */
export interface PictureRecord {
  readonly width: number;
  readonly height: number;
  readonly drawn: SheetPicture['drawn'];
}

const absolute = (template: SheetTemplate, reference: string): string => `${quoteSheetName(template.name)}!${a1FromRange(rangeFromA1(reference), '$')}`;

const bySheet = <Value>(templates: readonly SheetTemplate[], make: (template: SheetTemplate) => Value): Record<string, Value> =>
  Object.fromEntries(templates.map((template) => [sheetIdOf(template.key), make(template)]));

/** The name that a chart's column of numbers goes by, so that it follows the cells when rows are put in or taken out. */
const seriesName = (template: SheetTemplate, chart: number, series: number, axis: 'x' | 'y'): string => `chart_${template.key}_${chart + 1}_${axis}${series + 1}`;

/** The name that a range behind a picture goes by, for the same reason. */
const pictureName = (template: SheetTemplate, picture: number, part: string): string => `picture_${template.key}_${picture + 1}_${part}`;

function names(templates: readonly SheetTemplate[]): object {
  const entry = (name: string, formulaOrRefString: string, hidden: boolean) => [name, { id: name, name, formulaOrRefString, localSheetId: 'AllDefaultWorkbook', hidden }] as const;
  const own = templates.flatMap((template) => template.names.map(({ name, range }) => entry(name, absolute(template, range), false)));
  const charted = templates.flatMap((template) =>
    template.charts.flatMap((chart, c) =>
      chart.series.flatMap((series, s) => (['x', 'y'] as const).map((axis) => entry(seriesName(template, c, s, axis), absolute(template, series[axis]), true))),
    ),
  );
  const pictured = templates.flatMap((template) =>
    (template.pictures ?? []).flatMap(({ drawn }, index) => Object.entries(drawn.from).map(([part, range]) => entry(pictureName(template, index, part), absolute(template, range), true))),
  );
  return Object.fromEntries([...own, ...charted, ...pictured]);
}

/** A word and its tint; the word itself is always in the cell. A rule about text would not see the cells of a spill. */
function tints(template: SheetTemplate): object[] {
  return template.verdictRanges.flatMap((reference, index) => {
    const range = rangeFromA1(reference);
    const first = a1FromRange({ ...range, endRow: range.startRow, endColumn: range.startColumn });
    return Object.entries(verdictTints).map(([word, rgb]) => ({
      cfId: `verdict-${index}-${word}`,
      ranges: [range],
      stopIfTrue: false,
      rule: { type: 'highlightCell', subType: 'formula', value: `=${first}="${word}"`, style: { bg: { rgb } } },
    }));
  });
}

const earliestDate = serialFromIso('1950-01-01');
const latestDate = serialFromIso('2100-12-31');

function limits(validation: Validation): object {
  switch (validation.kind) {
    case 'list':
      return { type: 'list', formula1: validation.choices.join(',') };
    case 'listFrom':
      return { type: 'list', formula1: `=${validation.source}` };
    case 'number':
      return { type: 'decimal', operator: 'between', formula1: String(validation.minimum), formula2: String(validation.maximum) };
    case 'date':
      return { type: 'date', operator: 'between', formula1: String(earliestDate), formula2: String(latestDate) };
  }
}

/** Refuses what does not fit (error style 1) and says what would; a choice keeps the look of its cell (render mode 1). */
function validations(template: SheetTemplate): object[] {
  return template.validations.map((validation, index) => ({
    uid: `${template.key}-input-${index}`,
    ranges: [rangeFromA1(validation.range)],
    allowBlank: true,
    errorStyle: 1,
    renderMode: 1,
    showErrorMessage: true,
    error: validation.help,
    ...limits(validation),
  }));
}

function notes(template: SheetTemplate): object {
  const rows: Record<number, Record<number, object>> = {};
  for (const { row, column, note } of template.cells) {
    if (note === undefined) continue;
    const height = 40 + 16 * Math.ceil(note.length / 30);
    rows[row - 1] = { ...rows[row - 1], [column - 1]: { id: `${template.key}-${row}-${column}`, row: row - 1, col: column - 1, width: 220, height, note } };
  }
  return rows;
}

function chart(template: SheetTemplate, description: ScatterChart, index: number, unitId: string): object {
  const subUnitId = sheetIdOf(template.key);
  const place = chartPlace(template, description);
  const { title, xTitle, yTitle, width, height } = description;
  const series = description.series.map((one, s) => ({ title: one.title, drawn: one.drawn, x: seriesName(template, index, s, 'x'), y: seriesName(template, index, s, 'y') }));
  const data: ChartRecord = { title, description: description.description, xTitle, yTitle, width, height, series };
  return {
    unitId,
    subUnitId,
    drawingId: `chart-${template.key}-${index + 1}`,
    drawingType: 8,
    componentKey: chartComponent,
    allowTransform: false,
    ...place,
    data,
  };
}

function picture(template: SheetTemplate, { width, height, drawn, ...place }: SheetPicture, index: number, unitId: string): object {
  const from = Object.fromEntries(Object.keys(drawn.from).map((part) => [part, pictureName(template, index, part)]));
  const data = { width, height, drawn: { ...drawn, from } };
  return {
    unitId,
    subUnitId: sheetIdOf(template.key),
    drawingId: `picture-${template.key}-${index + 1}`,
    drawingType: 8,
    componentKey: pictureComponent,
    allowTransform: false,
    ...chartPlace(template, { ...place, width, height }),
    data,
  };
}

function drawings(template: SheetTemplate, unitId: string): object {
  const charts = template.charts.map((description, index) => [`chart-${template.key}-${index + 1}`, chart(template, description, index, unitId)] as const);
  const pictures = (template.pictures ?? []).map((description, index) => [`picture-${template.key}-${index + 1}`, picture(template, description, index, unitId)] as const);
  const drawn = [...charts, ...pictures];
  return { data: Object.fromEntries(drawn), order: drawn.map(([id]) => id) };
}

export function workbookResources(templates: readonly SheetTemplate[], unitId: string): Resource[] {
  const resource = (name: string, data: object): Resource => ({ name, data: JSON.stringify(data) });
  const drawn = templates.filter(({ charts, pictures = [] }) => charts.length + pictures.length > 0);
  return [
    resource('SHEET_DEFINED_NAME_PLUGIN', names(templates)),
    resource('SHEET_CONDITIONAL_FORMATTING_PLUGIN', bySheet(templates, tints)),
    resource('SHEET_DATA_VALIDATION_PLUGIN', bySheet(templates, validations)),
    resource('SHEET_NOTE_PLUGIN', bySheet(templates, notes)),
    resource('SHEET_DRAWING_PLUGIN', bySheet(drawn, (template) => drawings(template, unitId))),
  ];
}
