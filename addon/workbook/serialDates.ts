// Spreadsheet serial numbers and the dates they stand for. Serials carry no zone, so the wall clock is read as UTC.
import { serialDayZero } from '../../core/basics/civilDate';
import { millisecondsPerDay } from '../../core/basics/units';

/** Serial number of 1 January 1970. */
const serialOfUnixEpoch = -serialDayZero;

export const dateFromSerial = (serial: number): Date => new Date(Math.round((serial - serialOfUnixEpoch) * millisecondsPerDay));

export const serialFromDate = (date: Date): number => date.getTime() / millisecondsPerDay + serialOfUnixEpoch;

export const serialFromIso = (iso: string): number => serialFromDate(new Date(`${iso}T00:00:00Z`));

export const isoFromSerial = (serial: number): string => dateFromSerial(serial).toISOString().slice(0, 10);

/** The form of a day: 2026-02-30 has it too. */
export const isoDay = /^\d{4}-\d\d-\d\d$/;
