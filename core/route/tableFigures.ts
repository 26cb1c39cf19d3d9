// An aircraft's climb or cruise table as a route reads it: its inputs from the air and the level, its answers in the units of the route.
import { densityAltitudeFeet, standardTemperatureCelsius } from '../air/atmosphere';
import { CoreError } from '../basics/errors';
import type { FuelUnitName } from '../manual/aircraftEntries';
import type { InputColumn } from '../manual/columns';
import { answersOf, type InputsAsked } from '../manual/figure';
import { plainHeader } from '../manual/grid';
import type { AircraftTable, ReadyFigure } from '../manual/openTable';
import { bendsAlong, readFigure } from '../manual/readFigure';
import { converted, convertedDifference, quantityOf, type TableUnit } from '../manual/tableUnits';

/** Headings of the columns that are inputs where a table is nothing but numbers, and of the answers, without blanks. */
const inputNames = ['weight', 'pressurealtitude', 'densityaltitude', 'temperature', 'isadeviation', 'power', 'abovestandard'];
const answers = {
  rate: ['rateofclimb'],
  indicated: ['indicatedairspeed', 'indicatedairspeed,kt'],
  trueAirspeed: ['trueairspeed', 'trueairspeed,kt'],
  flow: ['fuelflow', 'fuelflow,anhour'],
  minutes: ['minutes', 'time'],
  fuel: ['fuel'],
  distance: ['distance', 'nauticalmiles', 'distance,nm'],
} as const;
export type Answer = keyof typeof answers;
const unitsOfAnswers: Partial<Record<Answer, TableUnit>> = { rate: 'ft/min', indicated: 'kt', trueAirspeed: 'kt' };

/** Undefined is what is not known. */
export interface Values {
  readonly weight?: number | undefined;
  readonly power?: number | undefined;
  readonly altitudeFeet: number;
  readonly temperatureCelsius: number | undefined;
}

export interface OpenedTable {
  readonly has: (answer: Answer) => boolean;
  /** Whether an answer is read by what is set in the engine. */
  readonly takesPower: (answer: Answer) => boolean;
  readonly read: (answer: Answer, values: Values) => number;
  readonly altitudes: readonly number[];
}

/** An input in the unit of its column; undefined where it is not known. */
function inputValue({ role, unit, header }: InputColumn, { weight, power, altitudeFeet, temperatureCelsius }: Values): number | undefined {
  const above = temperatureCelsius === undefined ? undefined : temperatureCelsius - standardTemperatureCelsius(altitudeFeet);
  switch (role) {
    case 'weight':
      // The weight of a route has no unit: it is in that of a table that says none.
      return unit === undefined ? weight : undefined;
    case 'pressure altitude':
      return converted(altitudeFeet, 'ft', unit);
    case 'density altitude':
      return temperatureCelsius === undefined ? undefined : converted(densityAltitudeFeet(altitudeFeet, temperatureCelsius), 'ft', unit);
    case 'temperature':
      return temperatureCelsius === undefined ? undefined : converted(temperatureCelsius, '°C', unit);
    case 'isa deviation':
      return above === undefined ? undefined : convertedDifference(above, '°C', unit ?? '°C');
    case 'headwind':
      return undefined;
    case 'power':
      return power;
    case 'other':
      return plainHeader(header) === 'abovestandard' ? above : undefined;
  }
}

const inputMissing = (table: string, { role, unit, header }: InputColumn): CoreError =>
  role === 'weight' && unit !== undefined
    ? new CoreError('figure-missing', { what: 'weights in the unit of the aircraft list, with no unit of their own', table })
    : new CoreError('table-input-missing', { table, input: header });

/** The unit in which an answer is wanted; of fuel that of the route. */
function unitWanted(answer: Answer, table: string, given: TableUnit | undefined, fuelUnit: FuelUnitName | undefined): TableUnit | undefined {
  const isFuel = answer === 'flow' || answer === 'fuel';
  const wanted = isFuel ? fuelUnit : unitsOfAnswers[answer];
  // A quantity in another unit, taken as it stands, would look right and be wrong.
  if (given !== undefined && (wanted === undefined ? isFuel : quantityOf(given) !== quantityOf(wanted)))
    throw new CoreError('figure-missing', {
      what: isFuel ? `fuel in the unit of the aircraft list; ${given} is another` : `a speed in knots, or a unit of speed; ${given} is none`,
      table,
    });
  return wanted;
}

/** Headings of its answers. Of a table of numbers alone the first columns are inputs, as long as their headings are names of inputs. */
function columnsOf({ typed: { plain, blocks } }: AircraftTable): { readonly asked: InputsAsked; readonly heads: readonly string[] } {
  if (plain === undefined) return { asked: 'by-heading', heads: answersOf(blocks) };
  const first = plain.headers.findIndex((header) => !inputNames.includes(plainHeader(header)));
  const inputs = first < 0 ? plain.headers.length : first;
  return { asked: inputs, heads: plain.headers.slice(inputs) };
}

export function openFigures(table: AircraftTable, name: 'climb' | 'cruise', fuelUnit: FuelUnitName | undefined): OpenedTable {
  const { asked, heads } = columnsOf(table);
  const missing = (what: string): CoreError => new CoreError('figure-missing', { what, table: name });
  const headerOf = (answer: Answer): string | undefined => heads.find((head) => answers[answer].some((one) => one === plainHeader(head)));
  const figureOf = (answer: Answer): ReadyFigure => {
    const header = headerOf(answer);
    if (header === undefined) throw missing(`a column "${answers[answer][0]}"`);
    const figure = table.figure(header, asked);
    if (!figure.inputs.some(({ role }) => role === 'pressure altitude' || role === 'density altitude'))
      throw missing('a column "pressure altitude" among its first');
    return figure;
  };
  const known = (Object.keys(answers) as Answer[]).find((answer) => headerOf(answer) !== undefined);
  return {
    has: (answer) => headerOf(answer) !== undefined,
    takesPower: (answer) =>
      [figureOf(answer).base, ...figureOf(answer).steps].some(({ inputs }) =>
        inputs.some((input) => input.kind === 'input' && input.role === 'power'),
      ),
    read: (answer, values) => {
      const figure = figureOf(answer);
      const { value } = readFigure(figure, 'number', (input) => {
        const one = inputValue(input, values);
        if (one === undefined) throw inputMissing(name, input);
        return one;
      });
      const wanted = unitWanted(answer, name, figure.unit, fuelUnit);
      return wanted === undefined ? value : converted(value, figure.unit, wanted);
    },
    altitudes: known === undefined ? [] : levelsOf(figureOf(known)),
  };
}

const levelsOf = (figure: ReadyFigure): number[] => {
  const unit = figure.inputs.find(({ role }) => role === 'pressure altitude')?.unit;
  return bendsAlong(figure, 'pressure altitude').map((level) => converted(level, unit, 'ft'));
};
