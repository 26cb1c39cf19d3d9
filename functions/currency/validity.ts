// Sheet functions of validity: how long a review, an inspection or a medical certificate lasts, and how it stands today.
import { civilDateFromDayNumber, dayNumber, isoDate } from '../../core/basics/civilDate';
import {
  dueVerdict,
  hasReachedAge,
  medicalThrough,
  validThrough,
  type MedicalClass,
  type MedicalRules,
  type Privilege,
  type ValidityRule,
} from '../../core/currency/validity';
import { ArgumentError } from '../registry/argumentError';
import { mapping, result } from '../registry/declaration';
import { blankMeansUndefined, optional } from '../registry/modifiers';
import { date } from '../registry/readDate';
import { number } from '../registry/readNumber';
import { choice } from '../registry/readText';
import { NamedArgumentError } from '../registry/wordError';

const subject = 'Recency and validity';

export const VALID_THROUGH = mapping({
  name: 'VALID_THROUGH',
  subject,
  summary: 'The last good day of a review, an inspection or a course that lasts so many months.',
  parameters: {
    done_on: date('The day on which it was done.'),
    months: number({ unit: 'months', whole: true, minimum: 1, maximum: 600, help: 'How long it lasts.' }),
    rule: optional(
      choice<ValidityRule>({
        words: ['month_end', 'day'],
        help: 'To the last day of the calendar month (month_end), or to the same day of the month (day).',
      }),
      'month_end' as const,
      'month_end',
    ),
  },
  results: { valid_through: result('date', 'The last good day.') },
  sources: ['cfr-61-56', 'ac-68-1'],
  notes:
    'By calendar months: done in July, 24 months run to 31 July two years later. By the day: to the same date; where that month is shorter, to its last day. Some authorities count the day before as the last one: what is printed on the certificate holds.',
  examples: [
    { arguments: ['2010-07-01', 24], gives: '2012-07-31', source: '14 CFR 61.56(c), example: review on 1 July 2010' },
    { arguments: ['2020-01-15', 48, 'day'], gives: '2024-01-15', source: 'FAA AC 68-1A, example of the examination' },
  ],
  compute: ({ done_on, months, rule }) => ({ valid_through: civilDateFromDayNumber(validThrough(dayNumber(done_on), months, rule)) }),
});

export const DUE_STATUS = mapping({
  name: 'DUE_STATUS',
  subject,
  summary: 'How something with a last good day stands on a day, and how many days it has left.',
  parameters: {
    due_on: blankMeansUndefined(date('The last good day, which itself still counts. Blank where nothing is recorded.')),
    as_of: date('The day in question.'),
    warn_days: optional(
      number({ unit: 'days', whole: true, minimum: 0, maximum: 3660, help: 'CHECK when no more than this many days are left.' }),
      30,
      '30 days',
    ),
  },
  results: {
    verdict: result('', 'OK, CHECK within warn_days, NO when past; UNKNOWN where nothing is recorded.'),
    days_left: result('days', 'Days from as_of to due_on: 0 on the last good day, negative when past.'),
  },
  sources: ['common-practice'],
  notes: 'Common practice, no source. The due day itself still counts.',
  examples: [
    { arguments: ['2026-03-31', '2026-03-31'], gives: [['CHECK', 0]], source: 'Rule of this function, by hand' },
    { arguments: ['2026-03-31', '2026-04-01'], gives: [['NO', -1]], source: 'Rule of this function, by hand' },
  ],
  compute: ({ due_on, as_of, warn_days }) => {
    if (due_on === undefined) return { verdict: 'UNKNOWN', days_left: '' };
    const daysLeft = dayNumber(due_on) - dayNumber(as_of);
    return { verdict: dueVerdict(daysLeft, warn_days), days_left: daysLeft };
  },
});

/** No licence at all is given to anyone younger, so a nearer date of birth is a slip of the pen. */
const youngestAge = 14;

export const MEDICAL_THROUGH = mapping({
  name: 'MEDICAL_THROUGH',
  subject,
  summary: 'The last day on which a medical certificate serves for a privilege.',
  parameters: {
    exam_date: date('Date of the examination.'),
    birth_date: date('Date of birth of the pilot.', 1900),
    class: choice<MedicalClass>({
      words: ['1', '2', '3', 'LAPL'],
      also: { first: '1', second: '2', third: '3', 'class 1': '1', 'class 2': '2', 'class 3': '3' },
      help: 'Class of the certificate; LAPL is European only, 3 is FAA only.',
    }),
    privilege: choice<Privilege>({
      words: ['atp', 'commercial', 'private'],
      also: { atpl: 'atp', cpl: 'commercial', ppl: 'private', student: 'private', recreational: 'private' },
      help: 'What the pilot wants to do with it; a higher class serves longer for a lower privilege.',
    }),
    rules: optional(
      choice<MedicalRules>({
        words: ['FAA', 'EASA'],
        also: { '14 CFR 61.23': 'FAA', 'Part-MED': 'EASA', UK: 'EASA' },
        help: 'Rules of which authority; UK is taken as EASA, whose text it keeps.',
      }),
      'FAA' as const,
      'FAA',
    ),
  },
  results: { valid_through: result('date', 'The last good day for that privilege.') },
  sources: ['cfr-61-23', 'part-med', 'uk-part-med', 'eu-1182-71'],
  notes:
    'FAA: to the end of the month; atp is command as airline transport pilot, age on the day of the examination. EASA: to the same day of the month, ended the day before the 42nd or 51st birthday where the certificate of younger years would reach beyond it (the stricter reading); commercial is taken as single-pilot commercial transport of passengers, so 6 months from the age of 40 (the stricter reading; other work 12); a certificate of class 1 issued before that age, or before 60, is shortened when it is reached, but never below 6 months (the stricter reading). After a revalidation in the last 45 days the period runs from the old expiry date: what is printed on the certificate holds. Limitations on the certificate are not known here.',
  examples: [
    {
      arguments: ['2020-08-10', '1984-02-03', 3, 'private'],
      gives: '2025-08-31',
      source: 'FAA knowledge test question: third class, age 36, examined on 10 August',
    },
    {
      arguments: ['2020-08-10', '1980-08-10', 1, 'atp'],
      gives: '2021-02-28',
      source: '14 CFR 61.23(d)(1)(ii): age 40, 6th month after the month of the examination',
    },
    {
      arguments: ['2021-05-04', '1981-11-20', 2, 'private', 'EASA'],
      gives: '2023-11-19',
      source: 'MED.A.045(a)(3): 60 months, ended at the age of 42; last day before the birthday',
    },
  ],
  compute: ({ exam_date, birth_date, class: medicalClass, privilege, rules }) => {
    const examDay = dayNumber(exam_date);
    const birthDay = dayNumber(birth_date);
    if (!hasReachedAge(examDay, birthDay, youngestAge)) {
      throw new NamedArgumentError(
        'birth_date',
        new ArgumentError(`at least ${youngestAge} years before exam_date (${isoDate(exam_date)})`, isoDate(birth_date)),
      );
    }
    return { valid_through: civilDateFromDayNumber(medicalThrough({ examDay, birthDay, medicalClass, privilege }, rules)) };
  },
});
