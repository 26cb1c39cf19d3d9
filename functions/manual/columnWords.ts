// What the headings of an aircraft's table say, and the words that may stand below them: inputs, units, "up to", "curve", "at 20 °C".
import type { AnswerColumnHead, InputColumn, InputRole, TableColumn } from '../../core/manual/columns';
import { quantityOf, type Quantity, type TableUnit } from '../../core/manual/tableUnits';
import { numberFromCell } from '../registry/readNumber';
import { plainWords } from '../registry/readText';

const unitSpellings: Readonly<Record<TableUnit, RegExp>> = {
  lb: /^(lbs?|pounds?)(\/h(our)?| an hour)?$/,
  kg: /^(kgs?|kilograms?)(\/h(our)?| an hour)?$/,
  ft: /^(ft|feet)$/,
  m: /^(m|met(re|er)s?)$/,
  '°C': /^((°|deg(rees)? ?)?c|celsius)$/,
  '°F': /^((°|deg(rees)? ?)?f|fahrenheit)$/,
  kt: /^(kts?|knots?)$/,
  'km/h': /^(km\/h|kmh|kph)$/,
  mph: /^mph$/,
  'm/s': /^m\/s$/,
  'ft/min': /^(ft\/min|fpm|feet (a|per) minute)$/,
  'US gal': /^(((us )?gal(s|lons?)?)(\/h(our)?| an hour)?|gph)$/,
  L: /^(l|lit(re|er)s?)(\/h(our)?| an hour)?$/,
};
const spelled = Object.entries(unitSpellings) as readonly (readonly [TableUnit, RegExp])[];

export const unitNamed = (words: string): TableUnit | undefined => spelled.find(([, spelling]) => spelling.test(words.trim().toLowerCase()))?.[0];

const roles: readonly (readonly [InputRole, RegExp])[] = [
  ['weight', /^((gross|take off|takeoff|landing|aircraft|all up|maximum) )?(weight|mass)$/],
  ['density altitude', /^density alt(itude)?$/],
  ['pressure altitude', /^((pressure|press\.?) )?alt(itude|\.)?$/],
  ['temperature', /^((outside )?air )?temp(erature|\.)?$|^oat$/],
  [
    'isa deviation',
    /^(isa|isa (dev(iation)?|difference)|(deviation|difference) from (isa|standard)|temperature (above|difference from|deviation from) (isa|standard))$/,
  ],
  ['headwind', /^(head ?)?wind( component)?$/],
  ['power', /^power( setting)?$/],
];

const quantities: Readonly<Record<Exclude<InputRole, 'power' | 'other'>, Quantity>> = {
  weight: 'weight',
  'pressure altitude': 'length',
  'density altitude': 'length',
  temperature: 'temperature',
  'isa deviation': 'temperature',
  headwind: 'speed',
};

export const roleNamed = (words: string): InputRole | undefined => roles.find(([, spelling]) => spelling.test(plainWords(words)))?.[0];
export const isNote = (heading: string): boolean => /^(notes?|remarks?)$/.test(plainWords(heading));
/** Words that can only be the heading of an answer. */
const answerWords = /roll|run|over|distance|rate|climb|speed|flow|fuel|time/i;

const input = (header: string, role: InputRole, more: Partial<Omit<InputColumn, 'kind'>> = {}): InputColumn => ({
  kind: 'input',
  header,
  role,
  unit: undefined,
  upTo: false,
  constant: undefined,
  ...more,
});

const answer = (header: string, typed: string, unit: TableUnit | undefined, at: AnswerColumnHead['at'] = undefined): AnswerColumnHead => ({
  kind: 'answer',
  header,
  typed,
  unit,
  at,
});

/** A number and the unit behind it, as in "2300 lb". */
function numberWithUnit(words: string): { readonly value: number; readonly unit: TableUnit | undefined } | undefined {
  const found = /^([+-]?[\d.,]+)\s*(.*)$/.exec(words.trim().replace(/\u2212|\u2013/g, '-'));
  const value = numberFromCell(found?.[1]);
  const unit = unitNamed(found?.[2] ?? '');
  return value === undefined || (unit === undefined && found?.[2] !== '') ? undefined : { value, unit };
}

const roleOfUnit = (unit: TableUnit | undefined): Exclude<InputRole, 'power' | 'other'> => {
  const quantity = unit === undefined ? 'temperature' : quantityOf(unit);
  return quantity === 'weight' ? 'weight' : quantity === 'length' ? 'pressure altitude' : quantity === 'speed' ? 'headwind' : 'temperature';
};

/** "ground roll at 20 °C", or "at ISA +20" behind a column with its name: an answer of a two-way block. */
function answerAt(words: string, nameBefore: string | undefined): AnswerColumnHead | undefined {
  const found = /^(.*?)\s*\bat\s+(isa)?\s*([+\-\u2212\u2013]?\s*[\d.,]+.*)?$/i.exec(words.trim());
  const [, named = '', isa, amount] = found ?? [];
  const name = named === '' ? nameBefore : named;
  // "at ISA" alone is the standard itself.
  const standard = isa === undefined ? undefined : { value: 0, unit: undefined };
  const at = amount === undefined ? standard : numberWithUnit(amount.replace(/^([+\-\u2212\u2013])\s+/, '$1'));
  if (name === undefined || at === undefined) return undefined;
  const role = isa === undefined ? roleOfUnit(at.unit) : 'isa deviation';
  return answer(name, words, undefined, {
    input: input(role === 'isa deviation' ? 'ISA deviation' : role, role, { unit: at.unit }),
    value: at.value,
  });
}

/** A heading without the unit behind a comma or in brackets. */
function withoutUnit(heading: string): { readonly words: string; readonly unit: TableUnit | undefined } {
  const found = /^(.+?)(?:\s*,\s*([^,()]+)|\s*\(([^()]+)\))$/.exec(heading.trim());
  const unit = unitNamed(found?.[2] ?? found?.[3] ?? '');
  return unit === undefined ? { words: heading.trim(), unit: undefined } : { words: found?.[1] ?? '', unit };
}

/** A power has no unit of a quantity: its number is that of the manual. */
const hasRole = (role: InputRole, unit: TableUnit | undefined): boolean =>
  unit === undefined || (role !== 'other' && role !== 'power' && quantityOf(unit) === quantities[role]);

/** What one heading says. One that is not known is an answer, or one of the inputs by its place. */
export function columnOfHeading(heading: string): TableColumn {
  const { words, unit } = withoutUnit(heading);
  if (words === '' || isNote(words) || /^[([].*[)\]]$/.test(words)) return { kind: 'idle', header: words };
  if (plainWords(words) === 'from') return { kind: 'from', header: words };
  const upTo = /,? *\bup to\b *$/i.exec(words);
  const bare = upTo === null ? words : words.slice(0, upTo.index).trim();
  const role = roleNamed(bare);
  if (role !== undefined && hasRole(role, unit)) return input(bare, role, { unit, upTo: upTo !== null && role === 'weight' });
  return answerAt(heading, undefined) ?? answer(words, heading, unit);
}

export interface Worded {
  readonly column: TableColumn;
  readonly curves: boolean;
}

/** What may stand in a row of words, for the sentence of what does not. */
export const wordsAllowed =
  'a unit (lb, kg, ft, m, °C, °F, kt, km/h, ft/min), another heading, "up to" or "up to 2300 lb" under weight, "ISA deviation", "density altitude", "curve", "from", or "ground roll at 20 °C"';

function withPart(column: TableColumn, part: string, nameBefore: string | undefined): TableColumn | undefined {
  const limit = /^up to\b(.*)$/i.exec(part);
  if (limit !== null) {
    if (column.kind !== 'input' || column.role !== 'weight') return undefined;
    if (limit[1]?.trim() === '') return { ...column, upTo: true };
    const most = numberWithUnit(limit[1] ?? '');
    return most === undefined ? undefined : { ...column, upTo: true, constant: most.value, unit: most.unit ?? column.unit };
  }
  const unit = unitNamed(part);
  if (unit !== undefined) {
    if (column.kind === 'answer') return { ...column, unit };
    return column.kind === 'input' && (column.role === 'other' || hasRole(column.role, unit)) ? { ...column, unit } : undefined;
  }
  const at = answerAt(part, nameBefore);
  if (at !== undefined) return at;
  if (plainWords(part) === 'none' || part === '-') return { kind: 'idle', header: column.header };
  const other = columnOfHeading(part);
  return other.kind !== 'answer' || answerWords.test(part) ? other : undefined;
}

/** A heading and the words below it. Undefined where they cannot be read. */
export function columnOfWords(heading: TableColumn, words: string, nameBefore: string | undefined): Worded | undefined {
  // By what it is set (%, rpm) is for the reader alone.
  if (heading.kind === 'input' && heading.role === 'power') return { column: heading, curves: false };
  let column: TableColumn | undefined = heading;
  let curves = false;
  for (const part of words.split(/[,;]/).map((one) => one.trim())) {
    if (/^(points of a )?curves?$/i.test(part)) curves = true;
    else if (part !== '' && column !== undefined) column = withPart(column, part, nameBefore);
  }
  return column === undefined ? undefined : { column, curves };
}
