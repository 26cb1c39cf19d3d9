// What the engine keeps beside the cells: names, verdict tints, choices and limits of inputs, notes, charts, pictures. Each is a
// JSON text under the name of the engine's plugin.
import { verdictTints } from '../../../sheets-templates/look';
import type { ChartSeries, ScatterChart, SheetPicture, SheetTemplate, Validation } from '../../../sheets-templates/template';
import { a1FromRange, quoteSheetName, rangeFromA1 } from './a1';
import { chartPlace } from './chartPlace';
import { tintResource, wordRule } from './tintRules';
import { serialFromIso } from '../../workbook/serialDates';
import type { PlacedTemplate } from './placedTemplate';
import { chartComponent, pictureComponent, stemOf } from './workbookIds';

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

const absolute = (template: SheetTemplate, reference: string): string =>
  `${quoteSheetName(template.name)}!${a1FromRange(rangeFromA1(reference), '$')}`;

const bySheet = <Value>(placed: readonly PlacedTemplate[], make: (one: PlacedTemplate) => Value): Record<string, Value> =>
  Object.fromEntries(placed.map((one) => [one.sheetId, make(one)]));

/** The name that a chart's column of numbers goes by, so that it follows the cells when rows are put in or taken out. */
const seriesName = (sheetId: string, chart: number, series: number, axis: 'x' | 'y'): string =>
  `chart_${stemOf(sheetId)}_${chart + 1}_${axis}${series + 1}`;

/** The name that a range behind a picture goes by, for the same reason. */
const pictureName = (sheetId: string, picture: number, part: string): string => `picture_${stemOf(sheetId)}_${picture + 1}_${part}`;

/** A name as the two above make them for this sheet. */
export const isDrawnName = (sheetId: string, name: string): boolean =>
  ['chart', 'picture'].some((kind) => new RegExp(`^${kind}_${stemOf(sheetId)}_\\d+_[^\\d]`).test(name));

/** A name of the workbook as the engine keeps it, under its identifier. */
export interface NameRecord {
  readonly id: string;
  readonly name: string;
  /** 'Sheet'!$A$1:$B$2, or a formula. */
  readonly formulaOrRefString: string;
  readonly localSheetId?: string;
  readonly hidden?: boolean;
}

/** Beginning of the identifiers of a sheet's names. */
export const nameIds = (sheetId: string): string => `${sheetId}!`;

function namesOf({ template, sheetId }: PlacedTemplate): NameRecord[] {
  const record = (name: string, range: string, hidden: boolean): NameRecord => ({
    id: `${nameIds(sheetId)}${name}`,
    name,
    formulaOrRefString: absolute(template, range),
    localSheetId: 'AllDefaultWorkbook',
    hidden,
  });
  const charted = template.charts.flatMap((chart, c) =>
    chart.series.flatMap((series, s) => (['x', 'y'] as const).map((axis) => record(seriesName(sheetId, c, s, axis), series[axis], true))),
  );
  const pictured = (template.pictures ?? []).flatMap(({ drawn }, index) =>
    Object.entries(drawn.from).map(([part, range]) => record(pictureName(sheetId, index, part), range, true)),
  );
  return [...template.names.map(({ name, range }) => record(name, range, false)), ...charted, ...pictured];
}

/** A word and its tint. The rule holds the word of the cell itself, and no reference, so that no row put in can make it look at another one. */
function tints({ template }: PlacedTemplate): object[] {
  return template.verdictRanges.flatMap((reference, index) =>
    Object.entries(verdictTints).map(([word, rgb]) => ({
      cfId: `verdict-${index}-${word}`,
      ranges: [rangeFromA1(reference)],
      stopIfTrue: false,
      rule: wordRule(word, { bg: { rgb } }),
    })),
  );
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
function validations({ template, sheetId }: PlacedTemplate): object[] {
  return template.validations.map((validation, index) => ({
    uid: `${stemOf(sheetId)}-input-${index}`,
    ranges: [rangeFromA1(validation.range)],
    allowBlank: true,
    errorStyle: 1,
    renderMode: 1,
    showErrorMessage: true,
    error: validation.help,
    ...limits(validation),
  }));
}

function notes({ template, sheetId }: PlacedTemplate): object {
  const rows: Record<number, Record<number, object>> = {};
  for (const { row, column, note } of template.cells) {
    if (note === undefined) continue;
    const height = 40 + 16 * Math.ceil(note.length / 30);
    rows[row - 1] = {
      ...rows[row - 1],
      [column - 1]: { id: `${stemOf(sheetId)}-${row}-${column}`, row: row - 1, col: column - 1, width: 220, height, note },
    };
  }
  return rows;
}

function drawing(
  { template, sheetId }: PlacedTemplate,
  unitId: string,
  drawingId: string,
  componentKey: string,
  place: Parameters<typeof chartPlace>[1],
  data: ChartRecord | PictureRecord,
): object {
  return { unitId, subUnitId: sheetId, drawingId, drawingType: 8, componentKey, allowTransform: false, ...chartPlace(template, place), data };
}

function chart(placed: PlacedTemplate, description: ScatterChart, index: number): ChartRecord {
  const { title, xTitle, yTitle, width, height } = description;
  const name = (series: number, axis: 'x' | 'y'): string => seriesName(placed.sheetId, index, series, axis);
  const series = description.series.map((one, s) => ({ title: one.title, drawn: one.drawn, x: name(s, 'x'), y: name(s, 'y') }));
  return { title, description: description.description, xTitle, yTitle, width, height, series };
}

function picture({ sheetId }: PlacedTemplate, { width, height, drawn }: SheetPicture, index: number): PictureRecord {
  const from = Object.fromEntries(Object.keys(drawn.from).map((part) => [part, pictureName(sheetId, index, part)]));
  return { width, height, drawn: { ...drawn, from } as SheetPicture['drawn'] };
}

function drawings(placed: PlacedTemplate, unitId: string): object {
  const { template, sheetId } = placed;
  const named = (kind: 'chart' | 'picture', index: number): string => `${kind}-${stemOf(sheetId)}-${index + 1}`;
  const charts = template.charts.map(
    (one, index) => [named('chart', index), drawing(placed, unitId, named('chart', index), chartComponent, one, chart(placed, one, index))] as const,
  );
  const pictures = (template.pictures ?? []).map(
    (one, index) =>
      [named('picture', index), drawing(placed, unitId, named('picture', index), pictureComponent, one, picture(placed, one, index))] as const,
  );
  const drawn = [...charts, ...pictures];
  return { data: Object.fromEntries(drawn), order: drawn.map(([id]) => id) };
}

/** Resources, by the name of the plugin they are for: each an object by sheet identifier, the names by their own. */
export const resourceNames = {
  names: 'SHEET_DEFINED_NAME_PLUGIN',
  tints: tintResource,
  validations: 'SHEET_DATA_VALIDATION_PLUGIN',
  notes: 'SHEET_NOTE_PLUGIN',
  drawings: 'SHEET_DRAWING_PLUGIN',
} as const;

export function workbookResources(placed: readonly PlacedTemplate[], unitId: string): Resource[] {
  const resource = (name: string, data: object): Resource => ({ name, data: JSON.stringify(data) });
  const drawn = placed.filter(({ template: { charts, pictures = [] } }) => charts.length + pictures.length > 0);
  return [
    resource(resourceNames.names, Object.fromEntries(placed.flatMap(namesOf).map((record) => [record.id, record]))),
    resource(resourceNames.tints, bySheet(placed, tints)),
    resource(resourceNames.validations, bySheet(placed, validations)),
    resource(resourceNames.notes, bySheet(placed, notes)),
    resource(
      resourceNames.drawings,
      bySheet(drawn, (one) => drawings(one, unitId)),
    ),
  ];
}
