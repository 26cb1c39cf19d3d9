// Readers of numbers: in a unit with a range, directions, whole numbers, and the altimeter setting with its two units.
import { asMagneticDegrees, asTrueDegrees, hectopascalsFromInchesOfMercury, type MagneticDegrees, type TrueDegrees } from '../../core/units';
import { ArgumentError } from './argumentError';
import { inWords, type CellValue } from './cellValues';
import type { Parameter } from './declaration';

const plainNumber = /^[+-]?(\d+(\.\d*)?|\.\d+)$/;
/** "12,5" can only be a decimal comma; "1,234" could be a thousand, so it is refused. */
const commaNumber = /^[+-]?\d+,(\d{1,2}|\d{4,})$/;

/** A finite number, or text that can only mean one number; else undefined. */
export function numberFromCell(raw: CellValue): number | undefined {
  if (typeof raw === 'number') return Number.isFinite(raw) ? raw : undefined;
  if (typeof raw !== 'string') return undefined;
  const text = raw.trim().replace('\u2212', '-');
  if (plainNumber.test(text)) return Number(text);
  return commaNumber.test(text) ? Number(text.replace(',', '.')) : undefined;
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
    if (!fits) throw new ArgumentError(mustBe, inWords(raw));
    return value;
  };
  return { shape: 'cell', unit: options.unit, mustBe, help: options.help, optional: undefined, read };
}

const circle = { minimum: 0, maximum: 360 };

/** A direction in whatever reference its partner arguments use. */
export const direction = (help: string): Parameter<number> & { readonly shape: 'cell' } =>
  number({ ...circle, unit: 'degrees', help });

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
    throw new ArgumentError(mustBe, inWords(raw));
  };
  return { shape: 'cell', unit: 'inches of mercury or hectopascals', mustBe, help, optional: undefined, read };
}
