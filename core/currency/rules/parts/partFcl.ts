// What Part-FCL, Part-MED and Part-ML say alike in the European Union and in the United Kingdom, where they stayed law: each gets its own source.
import type { SourceId } from '../../../basics/sources';
import type { AircraftRule, MedicalRule, PilotRule, RevalidationRule, Task } from '../rule';

/** Two of these authorities may be chosen together: the calendar tells their items apart by the paragraph. */
const ofSource = (source: SourceId, paragraph: string): string => (source.startsWith('uk-') ? `UK ${paragraph}` : paragraph);

const among90 = 'day of the flight among the 90 (stricter reading)';

const inClass = { same: 'class', typesCountForClass: false } as const;
const landings = (needed: number, night?: true): Task => ({
  name: 'landings',
  counts: { of: 'landings', ...(night === undefined ? {} : { night }) },
  needed,
});
const takeoffs = (needed: number, night?: true): Task => ({
  name: 'take-offs',
  counts: { of: 'takeoffs', ...(night === undefined ? {} : { night }) },
  needed,
});

/** @source part-fcl: (b)(1) and (b)(2) as quoted from the texts of 2011 and, for the United Kingdom, of March 2022. */
export const passengersRules = (source: SourceId): PilotRule[] => [
  {
    kind: 'days',
    item: 'passengers',
    neededFor: 'passengers',
    paragraph: ofSource(source, 'FCL.060(b)(1)'),
    source,
    reading: `${among90}; approaches as many as landings; a full flight simulator counts`,
    within: { days: 90 },
    tasks: [landings(3), takeoffs(3)],
    ...inClass,
    devices: ['FFS'],
    warnDays: 14,
  },
  {
    kind: 'days',
    item: 'passengers at night',
    neededFor: 'passengers at night',
    paragraph: ofSource(source, 'FCL.060(b)(2)'),
    source,
    reading: `${among90}; one at night, or a valid instrument rating`,
    within: { days: 90 },
    tasks: [landings(1, true), takeoffs(1, true)],
    ...inClass,
    devices: ['FFS'],
    warnDays: 14,
    unlessValid: 'instrument rating valid to',
  },
];

const multiEngineClasses = ['mel', 'mep', 'mep (land)', 'mep land', 'multi engine', 'multi engine land', 'multi engine piston'];

/** Ratings and papers with a date on them; a LAPL holds its classes without one. */
export const ratingRules = (source: SourceId, lightLicence: Pick<PilotRule, 'notWith'>): PilotRule[] => [
  {
    kind: 'paper',
    item: 'instrument rating',
    neededFor: 'instrument flight',
    paragraph: ofSource(source, 'FCL.625'),
    source,
    papers: ['instrument rating valid to'],
    onlyIfRecorded: true,
    warnDays: 60,
    reading: 'the date on the licence, one year on; revalidated in its last 3 months',
  },
  {
    kind: 'paper',
    item: 'class rating',
    neededFor: 'every flight',
    paragraph: ofSource(source, 'FCL.740(a)'),
    source,
    papers: ['class rating valid to'],
    warnDays: 60,
    reading: 'the date on the licence',
    ...lightLicence,
  },
  {
    kind: 'paper',
    item: 'multi-engine class rating',
    neededFor: 'every flight',
    paragraph: ofSource(source, 'FCL.740(a), FCL.740.A(a)'),
    source,
    papers: ['multi-engine class rating valid to'],
    onlyIfRecorded: true,
    classes: multiEngineClasses,
    warnDays: 60,
    reading: 'the date on the licence, one year on; by a check in its last 3 months and 10 route sectors, or one with an examiner',
  },
  {
    kind: 'paper',
    item: 'night rating',
    neededFor: 'no flight',
    paragraph: ofSource(source, 'FCL.810'),
    source,
    papers: ['night rating', 'radio licence'],
    onlyIfRecorded: true,
    neverLapses: true,
    warnDays: 0,
    reading: 'given once; from memory',
  },
  {
    kind: 'paper',
    item: 'language proficiency',
    neededFor: 'every flight',
    paragraph: ofSource(source, 'FCL.055'),
    source,
    papers: ['language proficiency valid to'],
    onlyIfRecorded: true,
    warnDays: 60,
    reading: 'the date on the licence; the highest level has none; from memory',
  },
];

export const sepClasses = ['sel', 'single engine land', 'single engine piston', 'sep', 'sep land', 'sep (land)'];
export const tmgClasses = ['tmg', 'touring motor glider'];
const seaClasses = ['single engine sea', 'sep sea', 'sep (sea)'];

export const experienceTasks = { hours: (needed: number) => ({ name: 'hours', counts: { of: 'hours' }, needed }) as const, landings, takeoffs };

/** By experience, in single-engine piston and touring motor glider classes; what is asked and over which months differs. */
export const revalidationRule = (
  source: SourceId,
  own: Pick<RevalidationRule, 'monthsBefore' | 'tasks' | 'reading'> & Pick<RevalidationRule, 'inForce' | 'notWith'>,
): RevalidationRule => ({
  kind: 'revalidation',
  item: 'class rating by experience',
  neededFor: 'no flight',
  paragraph: ofSource(source, 'FCL.740.A(b)(1)'),
  source,
  paper: 'class rating valid to',
  check: { paper: 'class rating proficiency check', monthsBefore: 3 },
  ...inClass,
  devices: [],
  warnDays: 60,
  classes: [...sepClasses, ...seaClasses, ...tmgClasses],
  together: {
    paragraph: ofSource(source, 'FCL.740.A(b)(2)'),
    source,
    reading: `both ratings held; ${own.reading ?? ''}`,
    classes: [sepClasses, tmgClasses],
  },
  spared: {
    task: 'hours with instructor',
    papers: ['proficiency check in another class', 'skill test in another class', 'assessment of competence in another class'],
  },
  ...own,
});

/** The tasks that both years of the rule ask for. */
export const commonTasks: RevalidationRule['tasks'] = [
  experienceTasks.hours(12),
  { name: 'hours in command', counts: { of: 'commandHours' }, needed: 6 },
  landings(12),
  takeoffs(12),
  { name: 'hours with instructor', counts: { of: 'trainingHours' }, needed: 1 },
];

export const medicalRules = (source: SourceId, instead: MedicalRule['instead'] = []): [MedicalRule, PilotRule] => [
  {
    kind: 'medical',
    item: 'medical',
    neededFor: 'every flight',
    paragraph: ofSource(source, 'MED.A.045'),
    source,
    rules: 'EASA',
    warnDays: 45,
    reading: 'stricter readings as in MEDICAL_THROUGH; the certificate holds',
    privileges: [
      { privilege: 'commercial', name: 'commercial' },
      { privilege: 'private', name: 'private' },
    ],
    least: 'private',
    instead,
  },
  {
    kind: 'paper',
    item: 'medical, as printed',
    neededFor: 'every flight',
    paragraph: ofSource(source, 'MED.A.045'),
    source,
    papers: ['medical valid to'],
    onlyIfRecorded: true,
    warnDays: 45,
    reading: 'the date on the certificate',
  },
];

/** @source uk-part-ml, ML.A.901: the certificate is valid for one year; what an authority prints on it holds. */
export const airworthinessReview = (source: SourceId): AircraftRule[] => [
  {
    item: 'airworthiness review certificate',
    neededFor: 'every flight',
    also: ['ARC'],
    paragraph: ofSource(source, 'ML.A.901'),
    source,
    warnDays: 30,
    reading: 'the date on the certificate',
    everyAircraft: {
      paragraph: ofSource(source, 'ML.A.901'),
      source,
      reading: 'a permit to fly in its place (21.A.701); from memory',
      orInstead: ['permit to fly'],
    },
  },
];
