// Readers of a list of fields and of the list of their runways, each under one header row. A cell that cannot be read is missing.
import { lengthUnits, type FieldRunway, type ListedField } from '../../core/runway/fields';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, type CellValue } from '../registry/cellValues';
import type { Parameter } from '../registry/declaration';
import { headedRows } from '../registry/readHeadedRows';
import type { Headings } from '../registry/readHeadings';
import { numberFromCell } from '../registry/readNumber';
import { namedFromCell, plainWords } from '../registry/readText';
import { surfaceNamed } from './readSurface';

type Table<Row> = Parameter<Row> & { readonly shape: 'table' };

const within = (cell: CellValue, low: number, high: number): number | undefined => {
  const value = numberFromCell(cell);
  return value !== undefined && value >= low && value <= high ? value : undefined;
};

const fieldHeadings: Headings<'field' | 'latitude' | 'longitude' | 'elevation' | 'station' | 'remark'> = {
  field: ['field'],
  latitude: ['latitude'],
  longitude: ['longitude'],
  elevation: ['elevation, ft', 'elevation'],
  station: ['station'],
  remark: ['remark'],
};
const fieldsMustBe = 'a table of fields under one header row';

/** One entry a row below the heads; a blank row is undefined. */
export function fieldRows(help: string): Table<readonly (ListedField | undefined)[]> {
  const read = (raw: CellValue): readonly (ListedField | undefined)[] =>
    headedRows(raw, { headings: fieldHeadings, needed: ['field', 'latitude', 'longitude', 'elevation'], mustBe: fieldsMustBe }).map((line) => {
      if (line === undefined) return undefined;
      const field = namedFromCell(line.cell('field'));
      if (field === undefined) throw new ArgumentError(`${fieldsMustBe} (the field's name)`, inWords(line.cell('field')), line.row, 1);
      const [latitude, longitude] = [within(line.cell('latitude'), -90, 90), within(line.cell('longitude'), -180, 180)];
      const position = latitude === undefined || longitude === undefined ? undefined : { latitudeDegrees: latitude, longitudeDegrees: longitude };
      return { field, position, elevationFeet: numberFromCell(line.cell('elevation')) };
    });
  return { shape: 'table', unit: 'table', mustBe: fieldsMustBe, help, optional: undefined, read };
}

const runwayHeadings: Headings<'field' | 'runway' | 'direction' | 'takeoff' | 'landing' | 'unit' | 'surface' | 'slope' | 'remark'> = {
  field: ['field'],
  runway: ['runway'],
  direction: ['direction'],
  takeoff: ['take off available', 'takeoff available'],
  landing: ['landing available'],
  unit: ['length in', 'unit'],
  surface: ['surface'],
  slope: ['slope, %', 'slope'],
  remark: ['remark'],
};
const runwaysMustBe = 'a table of runways under one header row';

export function fieldRunwayRows(help: string): Table<readonly FieldRunway[]> {
  const read = (raw: CellValue): readonly FieldRunway[] =>
    headedRows(raw, { headings: runwayHeadings, needed: ['field', 'runway'], mustBe: runwaysMustBe }).flatMap((line) => {
      if (line === undefined) return [];
      const [field, runway] = [namedFromCell(line.cell('field')), namedFromCell(line.cell('runway'))];
      if (field === undefined || runway === undefined)
        throw new ArgumentError(`${runwaysMustBe} (field and runway)`, inWords(line.cell(field === undefined ? 'field' : 'runway')), line.row);
      return [
        {
          field,
          name: runway.name,
          directionDegrees: within(line.cell('direction'), 0, 360),
          directionTyped: !isBlank(line.cell('direction')),
          takeoffAvailable: within(line.cell('takeoff'), 0, 100_000),
          landingAvailable: within(line.cell('landing'), 0, 100_000),
          unit: lengthUnits.find((unit) => unit === plainWords(String(line.cell('unit')))),
          surface: surfaceNamed(String(line.cell('surface'))),
          slopePercent: within(line.cell('slope'), -10, 10),
        },
      ];
    });
  return { shape: 'table', unit: 'table', mustBe: runwaysMustBe, help, optional: undefined, read };
}
