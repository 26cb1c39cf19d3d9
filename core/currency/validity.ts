// How long something lasts: a review, an inspection, a medical certificate; and how it stands on a day.
// Every answer is the last good day itself, as a whole day number.
import { dayMonthsLater, lastDayOfItsMonth } from '../basics/calendarMonths';
import { CoreError } from '../basics/errors';
import type { Verdict } from '../basics/verdict';

export type ValidityRule = 'month_end' | 'day';

/**
 * month_end: through the last day of the month so many months after the month of the event.
 * day: through the same day of the month. @source cfr-61-56, paragraph (c); ac-68-1 (24 and 48 months).
 */
export function validThrough(doneDay: number, months: number, rule: ValidityRule): number {
  const sameDay = dayMonthsLater(doneDay, months);
  return rule === 'month_end' ? lastDayOfItsMonth(sameDay) : sameDay;
}

/** As the days before CHECK: no end is near, only passed or not. */
export const neverWarns = -1;

/** The due day itself still counts. Common practice, no source. */
export function dueVerdict(daysLeft: number, warnDays: number): Verdict {
  if (daysLeft < 0) return 'NO';
  return daysLeft <= warnDays ? 'CHECK' : 'OK';
}

export type MedicalClass = '1' | '2' | '3' | 'LAPL';
export type Privilege = 'atp' | 'commercial' | 'private';
export type MedicalRules = 'FAA' | 'EASA';

export interface Medical {
  readonly examDay: number;
  readonly birthDay: number;
  readonly medicalClass: MedicalClass;
  readonly privilege: Privilege;
}

/** A birthday on 29 February falls on the 28th in other years: the earlier day is the stricter. */
const birthday = (birthDay: number, age: number): number => dayMonthsLater(birthDay, age * 12);
/** The birthday itself counts as having reached the age. */
export const hasReachedAge = (day: number, birthDay: number, age: number): boolean => day >= birthday(birthDay, age);

/** Calendar months of the FAA's table, by age on the day of the examination. @source cfr-61-23, paragraph (d). */
function faaMonths({ examDay, birthDay, medicalClass, privilege }: Medical): number | undefined {
  const forty = hasReachedAge(examDay, birthDay, 40);
  if (medicalClass === 'LAPL') return undefined;
  if (privilege === 'private') return forty ? 24 : 60;
  if (privilege === 'commercial') return medicalClass === '3' ? undefined : 12;
  if (medicalClass !== '1') return undefined;
  return forty ? 6 : 12;
}

function faaThrough(medical: Medical): number | undefined {
  const months = faaMonths(medical);
  return months === undefined ? undefined : validThrough(medical.examDay, months, 'month_end');
}

/** Through the same day of the month so many months on. @source eu-1182-71, article 3(2)(c). */
const europeanPeriod = (examDay: number, months: number): number => dayMonthsLater(examDay, months);

/** Class 2 and LAPL: a longer period from younger years ends before a birthday. @source part-med, MED.A.045(a)(3) and (4). */
function europeanPrivate(examDay: number, birthDay: number, lightLicence: boolean): number {
  const before = (age: number): number => birthday(birthDay, age) - 1;
  if (!hasReachedAge(examDay, birthDay, 40)) return Math.min(europeanPeriod(examDay, 60), before(42));
  if (lightLicence) return europeanPeriod(examDay, 24);
  if (!hasReachedAge(examDay, birthDay, 50)) return Math.min(europeanPeriod(examDay, 24), before(51));
  return europeanPeriod(examDay, 12);
}

/**
 * Class 1: 12 months, or 6 for those who have reached an age (60; 40 in single-pilot commercial transport of
 * passengers). Whether that age reached between two examinations shortens the certificate is not said: (a)(5) of 2019 says from
 * when the period runs, and no more speaks of the age at the examination. The stricter reading is that it does.
 * @source part-med, MED.A.045(a)(1), (2) and (5).
 */
function europeanProfessional(examDay: number, birthDay: number, shortFromAge: number): number {
  const short = europeanPeriod(examDay, 6);
  return Math.min(europeanPeriod(examDay, 12), Math.max(short, birthday(birthDay, shortFromAge) - 1));
}

function europeanThrough({ examDay, birthDay, medicalClass, privilege }: Medical): number | undefined {
  if (medicalClass === '3') return undefined;
  if (privilege === 'private') return europeanPrivate(examDay, birthDay, medicalClass === 'LAPL');
  if (medicalClass !== '1') return undefined;
  return europeanProfessional(examDay, birthDay, privilege === 'commercial' ? 40 : 60);
}

/** Last day on which a medical certificate serves for a privilege. */
export function medicalThrough(medical: Medical, rules: MedicalRules): number {
  const through = rules === 'FAA' ? faaThrough(medical) : europeanThrough(medical);
  if (through === undefined) throw new CoreError('privilege-not-given', { medicalClass: medical.medicalClass, privilege: medical.privilege, rules });
  return through;
}
