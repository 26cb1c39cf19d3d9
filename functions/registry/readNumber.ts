// Readers of numbers: in a unit with a range, directions, whole numbers, and the altimeter setting with its two units.
import { asMagneticDegrees, asTrueDegrees, hectopascalsFromInchesOfMercury, type MagneticDegrees, type TrueDegrees } from '../../core/basics/units';
import { ArgumentError } from './argumentError';
import { inWords, type CellValue } from './cellValues';
import type { Parameter } from './declaration';

const plainNumber = /^[+-]?(\d+(\.\d*)?|\.\d+)$/;
/** "12,5" can only be a decimal comma. */
const commaNumber = /^[+-]?\d+,\d+$/;
/** "1,234" and "1.234" can be a thousand and more, or one and a part: refused, whichever of the two they are. "0.234" is no thousand. */
const ambiguousNumber = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;
const trimmed = (text: string): string => text.trim().replace('\u2212', '-');

/** Beyond every quantity of the trade in every unit. What is larger, or nearer to zero without being zero, was never measured. */
const largest = 1e15;
const smallest = 1e-12;

function measured(value: number): number | undefined {
  const size = Math.abs(value);
  if (size < smallest) return 0;
  return size <= largest ? value : undefined;
}

/**
 * A number as somebody measured it, or text that can only mean one number; else undefined. What binary arithmetic leaves of
 * nothing (0.1 + 0.2 - 0.3) is 0, and 0 has no sign.
 */
export function numberFromCell(raw: CellValue): number | undefined {
  if (typeof raw === 'number') return measured(raw);
  if (typeof raw !== 'string') return undefined;
  const text = trimmed(raw);
  if (ambiguousNumber.test(text)) return undefined;
  if (plainNumber.test(text)) return measured(Number(text));
  return commaNumber.test(text) ? measured(Number(text.replace(',', '.'))) : undefined;
}

/** What stands where a number is wanted; of a text that can be two numbers, both. */
export function numberInWords(raw: CellValue): string {
  const text = typeof raw === 'string' ? trimmed(raw) : '';
  if (!ambiguousNumber.test(text)) return inWords(raw);
  const thousands = Number(text.replace(/[.,]/, ''));
  return `${inWords(raw)}, which can be read as ${limitInWords(thousands)} and as ${Number(text.replace(',', '.'))}`;
}

export interface NumberOptions {
  readonly unit: string;
  readonly help: string;
  readonly minimum: number;
  readonly maximum: number;
  /** Whole numbers only. */
  readonly whole?: boolean;
  /** Zero itself is refused though it is the minimum. */
  readonly aboveMinimum?: boolean;
}

/** A limit as people write it: 10,000 rather than 10000. */
export function limitInWords(limit: number): string {
  return Number.isInteger(limit) ? String(limit).replace(/\B(?=(\d{3})+$)/g, ',') : String(limit);
}

function rangeInWords({ minimum, maximum, unit, whole, aboveMinimum }: NumberOptions): string {
  const kind = whole === true ? 'a whole number from ' : '';
  const low = aboveMinimum === true ? `more than ${limitInWords(minimum)} and at most` : `${limitInWords(minimum)} to`;
  return `${kind}${low} ${limitInWords(maximum)}${unit === '' ? '' : ` ${unit}`}`;
}

export function number(options: NumberOptions): Parameter<number> & { readonly shape: 'cell' } {
  const mustBe = rangeInWords(options);
  const read = (raw: CellValue): number => {
    const value = numberFromCell(raw);
    const fits =
      value !== undefined &&
      value <= options.maximum &&
      (options.aboveMinimum === true ? value > options.minimum : value >= options.minimum) &&
      (options.whole !== true || Number.isInteger(value));
    if (!fits) throw new ArgumentError(mustBe, numberInWords(raw));
    return value;
  };
  return { shape: 'cell', unit: options.unit, mustBe, help: options.help, optional: undefined, read };
}

const circle = { minimum: 0, maximum: 360 };

/** A direction in whatever reference its partner arguments use. */
export const direction = (help: string): Parameter<number> & { readonly shape: 'cell' } => number({ ...circle, unit: 'degrees', help });

export function magneticDirection(help: string): Parameter<MagneticDegrees> & { readonly shape: 'cell' } {
  const base = number({ ...circle, unit: 'degrees magnetic', help });
  return { ...base, optional: undefined, read: (raw, dates) => asMagneticDegrees(base.read(raw, dates)) };
}

export function trueDirection(help: string): Parameter<TrueDegrees> & { readonly shape: 'cell' } {
  const base = number({ ...circle, unit: 'degrees true', help });
  return { ...base, optional: undefined, read: (raw, dates) => asTrueDegrees(base.read(raw, dates)) };
}

const inchesLow = 25;
const inchesHigh = 32.5;
const hectopascalsLow = 850;
const hectopascalsHigh = 1090;

/** The setting in hectopascals, whichever of the two units it was written in. */
export function altimeterSetting(help: string): Parameter<number> & { readonly shape: 'cell' } {
  const mustBe = `${inchesLow} to ${inchesHigh} inches of mercury or ${hectopascalsLow} to ${limitInWords(hectopascalsHigh)} hectopascals`;
  const read = (raw: CellValue): number => {
    const value = numberFromCell(raw);
    if (value !== undefined && value >= inchesLow && value <= inchesHigh) return hectopascalsFromInchesOfMercury(value);
    if (value !== undefined && value >= hectopascalsLow && value <= hectopascalsHigh) return value;
    throw new ArgumentError(mustBe, numberInWords(raw));
  };
  return { shape: 'cell', unit: 'inches of mercury or hectopascals', mustBe, help, optional: undefined, read };
}
