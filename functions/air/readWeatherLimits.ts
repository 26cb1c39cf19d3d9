// Reads the pilot's own limits: rows of a name, a value and, where there is one, its unit.
import type { WeatherLimits } from '../../core/air/report/judge';
import { feetFromMetres, metresFromStatuteMiles } from '../../core/basics/units';
import { ArgumentError } from '../registry/argumentError';
import { inWords, isBlank, isRange, sizeInWords, type CellValue, type RangeValue } from '../registry/cellValues';
import type { Parameter } from '../registry/declaration';
import { limitInWords, numberFromCell } from '../registry/readNumber';
import { plainWords } from '../registry/readText';

const same = (value: number): number => value;
const knots = { kt: same };
const metres = { m: same, km: (value: number) => value * 1000, sm: metresFromStatuteMiles };

interface Limit {
  readonly key: keyof WeatherLimits;
  /** The first unit is taken where none is given. */
  readonly units: Readonly<Record<string, (value: number) => number>>;
  /** In the first unit. A ceiling above 5,000 ft could not be told from NSC and CAVOK, which are silent above that. */
  readonly maximum: number;
}

const limits: Readonly<Record<string, Limit>> = {
  'minimum ceiling': { key: 'ceilingFeet', units: { ft: same, m: feetFromMetres }, maximum: 5000 },
  'minimum visibility': { key: 'visibilityMetres', units: metres, maximum: 20_000 },
  'maximum crosswind': { key: 'crosswindKnots', units: knots, maximum: 60 },
  'maximum gust spread': { key: 'gustSpreadKnots', units: knots, maximum: 60 },
  'maximum tailwind': { key: 'tailwindKnots', units: knots, maximum: 30 },
  'maximum wind': { key: 'windKnots', units: knots, maximum: 100 },
};
const mustBe = `rows of a name (${Object.keys(limits).join(', ')}) and a value, with its unit in a third column where it is not ft, m or kt`;

function readRow([name, cell, unit]: readonly CellValue[], row: number): readonly [keyof WeatherLimits, number | undefined] {
  const label = typeof name === 'string' ? plainWords(name) : '';
  const limit = limits[label];
  if (limit === undefined) throw new ArgumentError(mustBe, inWords(name), row, 1);
  if (isBlank(cell)) return [limit.key, undefined];
  const [usual = ''] = Object.keys(limit.units);
  const written = isBlank(unit) ? usual : typeof unit === 'string' ? plainWords(unit) : '';
  const convert = limit.units[written];
  if (convert === undefined) throw new ArgumentError(`${mustBe} (${label} in ${Object.keys(limit.units).join(', ')})`, inWords(unit), row, 3);
  const value = numberFromCell(cell);
  const converted = value === undefined ? Number.NaN : convert(value);
  if (!(converted >= 0 && converted <= limit.maximum)) {
    throw new ArgumentError(`${mustBe} (${label} 0 to ${limitInWords(limit.maximum)} ${usual})`, inWords(cell), row, 2);
  }
  return [limit.key, converted];
}

const none: WeatherLimits = {
  ceilingFeet: undefined,
  visibilityMetres: undefined,
  gustSpreadKnots: undefined,
  windKnots: undefined,
  crosswindKnots: undefined,
  tailwindKnots: undefined,
};

/** A limit whose value is blank, or that has no row, is none. */
export function weatherLimits(help: string): Parameter<WeatherLimits> & { readonly shape: 'table' } {
  const read = (raw: CellValue): WeatherLimits => {
    const range: RangeValue = isRange(raw) ? (raw as RangeValue) : [[raw]];
    const width = range[0]?.length ?? 0;
    if (width !== 2 && width !== 3) throw new ArgumentError(mustBe, `a range of ${sizeInWords(range.length, width)}`);
    const rows = range.flatMap((row, index) => (row.every(isBlank) ? [] : [readRow(row, index + 1)]));
    const twice = rows.findIndex(([key], index) => rows.findIndex(([other]) => other === key) < index);
    if (twice >= 0) throw new ArgumentError(`${mustBe}, each once`, 'a limit given twice');
    return { ...none, ...Object.fromEntries(rows) };
  };
  return { shape: 'table', unit: 'rows', mustBe, help, optional: undefined, read };
}
