// A name for a sheet beside another one.
import { freeName } from '../workbook/insertionPlan';

/** Google Sheets takes no longer one. */
const maxLength = 100;
/** For a number behind the name. */
const room = 4;

/** The name with the suffix, numbered where that is taken. */
export function freeSheetName(name: string, suffix: string, taken: readonly string[]): string {
  const shortened = name.slice(0, maxLength - suffix.length - room);
  return freeName(`${shortened}${suffix}`, ' ', new Set(taken.map((one) => one.toLowerCase())));
}
