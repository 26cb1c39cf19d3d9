// What one cell of pasted text means: one number, one that can be two numbers, nothing, or words. Never a guess between two.

export type CellMeaning =
  | { readonly kind: 'number'; readonly value: number; readonly unit: string; readonly marks: string }
  /** "1,250" and "1.250": a thousand and more, or one and a part. */
  | {
      readonly kind: 'open';
      readonly sign: ',' | '.';
      readonly thousands: number;
      readonly decimals: number;
      readonly unit: string;
      readonly marks: string;
    }
  | { readonly kind: 'hole' }
  | { readonly kind: 'words'; readonly text: string };

/** Every sign that stands for a minus in print, and every kind of blank. A long dash stands for nothing at all. */
const minuses = /[\u2010-\u2013\u2212\ufe58\ufe63\uff0d]/g;
const blanks = /[\u00a0\u2000-\u200a\u202f\u205f\u3000]/g;
export const plainSigns = (text: string): string => text.replace(minuses, '-').replace(blanks, ' ');

/** Signs of a footnote before or behind a number; figures of a footnote only where they are raised or in brackets. */
const markBehind = /\s*(?:[*\u2020\u2021\u00a7\u00b9\u00b2\u00b3\u2070-\u2079]+|\(\d\))$/;
const markBefore = /^[*\u2020\u2021\u00a7]+\s*/;
const unitBehind = /\s*(\u00b0\s?[CF]|\u00ba\s?[CF]|deg\s?[CF]|ft\/min|fpm|feet|ft|km\/h|m\/s|mph|lbs?|kgs?|kts?|knots|US gal|gal|%|[CFmL])\.?$/i;
const isHole = (text: string): boolean => /^([-\u2014\u2015]+|\.{2,}|n\/?a|x{2,}|\u2026)?$/i.test(text);

const groups = /^([1-9]\d{0,2})((?:[ '\u2019]\d{3})+)(?:[.,](\d+))?$/;
const manyGroups = /^[1-9]\d{0,2}(?:(?:,\d{3}){2,}|(?:\.\d{3}){2,})$/;
const groupsAndPart = /^[1-9]\d{0,2}(?:(?:,\d{3})+\.\d+|(?:\.\d{3})+,\d+)$/;
const twoReadings = /^([1-9]\d{0,2})([.,])(\d{3})$/;
const whole = /^(0|[1-9]\d{0,14})$/;
const withPart = /^(0|[1-9]\d*)?[.,]\d+$/;

type Size = { readonly value: number } | { readonly sign: ',' | '.'; readonly thousands: number; readonly decimals: number };

function sizeOf(text: string): Size | undefined {
  if (whole.test(text)) return { value: Number(text) };
  const grouped = groups.exec(text);
  if (grouped !== null) return { value: Number(`${grouped[1]}${(grouped[2] ?? '').replace(/\D/g, '')}.${grouped[3] ?? '0'}`) };
  if (manyGroups.test(text)) return { value: Number(text.replace(/\D/g, '')) };
  if (groupsAndPart.test(text)) {
    const [front = '', part = ''] = [
      text.slice(0, Math.max(text.lastIndexOf('.'), text.lastIndexOf(','))),
      text.slice(Math.max(text.lastIndexOf('.'), text.lastIndexOf(',')) + 1),
    ];
    return { value: Number(`${front.replace(/\D/g, '')}.${part}`) };
  }
  const two = twoReadings.exec(text);
  if (two !== null) return { sign: two[2] === ',' ? ',' : '.', thousands: Number(`${two[1]}${two[3]}`), decimals: Number(`${two[1]}.${two[3]}`) };
  return withPart.test(text) ? { value: Number(text.replace(',', '.')) } : undefined;
}

/** Sea level, and a difference from the standard temperature ("ISA", "ISA -20", "ISA+20 \u00b0C"), as manuals print them for a number. */
const seaLevel = /^(?:s\.? ?l\.?|sea level)$/i;
const standard = /^ISA(?: ?([+-]) ?(\d{1,2}))?(?: ?(?:\u00b0|\u00ba)? ?C)?$/i;
/** What stands for a unit there: it tells which input the number is. */
export const [unitOfStandard, unitOfSeaLevel] = ['ISA', 'SL'];

function inWords(text: string): CellMeaning | undefined {
  if (seaLevel.test(text)) return { kind: 'number', value: 0, unit: unitOfSeaLevel, marks: '' };
  const found = standard.exec(text);
  return found === null ? undefined : { kind: 'number', value: Number(`${found[1] ?? ''}${found[2] ?? '0'}`) + 0, unit: unitOfStandard, marks: '' };
}

export function meaningOf(cell: string): CellMeaning {
  const text = plainSigns(cell).trim();
  if (isHole(text)) return { kind: 'hole' };
  const worded = inWords(text);
  if (worded !== undefined) return worded;
  const unmarked = text.replace(markBefore, '').replace(markBehind, '');
  const unit = unitBehind.exec(unmarked)?.[1] ?? '';
  const bare = unmarked.replace(unitBehind, '').trim();
  const signed = /^([+-]?)\s?(.*)$/.exec(bare);
  const size = sizeOf(signed?.[2] ?? '');
  if (size === undefined) return { kind: 'words', text };
  const marks = text.length === unmarked.length ? '' : text.replace(unmarked, '').trim();
  const factor = signed?.[1] === '-' ? -1 : 1;
  if ('value' in size) return { kind: 'number', value: factor * size.value + 0, unit, marks };
  return { kind: 'open', sign: size.sign, thousands: factor * size.thousands, decimals: factor * size.decimals, unit, marks };
}
