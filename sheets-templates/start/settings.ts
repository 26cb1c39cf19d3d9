// Settings on Start that other sheets read: the pilot's own limits and factors, and what is kept in this workbook.
import { line, on, type Field } from '../build';
import { rows, rowsFrom, row } from '../layout';
import { sheetNames } from '../places';
import type { TemplateCell, Validation } from '../template';

/** Columns D to F of Start. */
export const settingRows = rowsFrom(5, {
  limitsHeading: row,
  limits: rows(6),
  takeoffFactor: row,
  landingFactor: row,
  keptHeading: row,
  keepsLog: row,
  keepsLedger: row,
});

const { limits } = settingRows;
const onStart = (place: string): string => on(sheetNames.start, place);

/** Name, value and unit, as WEATHER_BRIEF reads them. */
export const pilotLimits = onStart(`D${limits.first}:F${limits.last}`);
export const limitNames = [
  'minimum ceiling',
  'minimum visibility',
  'maximum crosswind',
  'maximum gust spread',
  'maximum tailwind',
  'maximum wind',
] as const;
export const limitCell = (name: (typeof limitNames)[number]): string => onStart(`E${limits.first + limitNames.indexOf(name)}`);
/** Its unit is chosen, the others have theirs. */
export const visibilityUnitCell = onStart(`F${limits.first + limitNames.indexOf('minimum visibility')}`);
export const takeoffFactorCell = onStart(`E${settingRows.takeoffFactor}`);
export const landingFactorCell = onStart(`E${settingRows.landingFactor}`);
export const keepsLogCell = onStart(`E${settingRows.keepsLog}`);
export const keepsLedgerCell = onStart(`E${settingRows.keepsLedger}`);

/** Plain defaults, marked as such: each pilot's own judgement replaces them. Common practice, no source. */
const defaults: readonly (readonly [value: number, unit: string])[] = [
  [1500, 'ft'],
  [5, 'SM'],
  [12, 'kt'],
  [10, 'kt'],
  [5, 'kt'],
  [25, 'kt'],
];

const heads = (title: string): Field[] => [
  [title, 'heading'],
  ['', 'heading'],
  ['', 'heading'],
];

export const settingCells: TemplateCell[] = [
  ...line(settingRows.limitsHeading, 4, ...heads("The pilot's own limits")),
  ...limitNames.flatMap((name, index) =>
    line(
      limits.first + index,
      4,
      [name, 'label'],
      [
        defaults[index]?.[0],
        'input',
        {
          format: 'general',
          ...(index === 0 && {
            note: 'Plain defaults, common practice, no source: put your own in their place. A blank one makes the weather UNKNOWN; a blank maximum wind is no limit.',
          }),
        },
      ],
      [defaults[index]?.[1], index === 1 ? 'inputText' : 'unit'],
    ),
  ),
  ...line(
    settingRows.takeoffFactor,
    4,
    ['take-off safety factor', 'label'],
    [1.5, 'input', { format: 'two', note: 'The corrected distance times this must fit: half as much again, common practice, no source.' }],
    ['times', 'unit'],
  ),
  ...line(
    settingRows.landingFactor,
    4,
    ['landing safety factor', 'label'],
    [1.67, 'input', { format: 'two', note: '1/0.6: a full stop within 60 % of the runway (14 CFR 135.385, advisory for private flight).' }],
    ['times', 'unit'],
  ),
  ...line(settingRows.keptHeading, 4, ...heads('Kept in this workbook')),
  ...line(
    settingRows.keepsLog,
    4,
    ['log of flights and papers', 'label'],
    ['yes', 'inputText', { note: 'no: the trip takes the last good days typed there, and says what is not judged.' }],
    ['yes or no', 'unit'],
  ),
  ...line(
    settingRows.keepsLedger,
    4,
    ['ledger of data cards', 'label'],
    ['yes', 'inputText', { note: 'no: the trip takes the last good day typed there, and says what is not judged.' }],
    ['yes or no', 'unit'],
  ),
];

const number = (place: string, minimum: number, maximum: number, help: string): Validation => ({
  kind: 'number',
  range: place,
  minimum,
  maximum,
  help,
});

/** Each entry by its key. */
export const settingKeys: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    limitNames.map((name, index) => [name.replace(/ (\w)/g, (_, letter: string) => letter.toUpperCase()), `E${limits.first + index}`]),
  ),
  minimumVisibilityUnit: `F${limits.first + 1}`,
  takeoffFactor: `E${settingRows.takeoffFactor}`,
  landingFactor: `E${settingRows.landingFactor}`,
  keepsLog: `E${settingRows.keepsLog}`,
  keepsLedger: `E${settingRows.keepsLedger}`,
};

export const settingValidations: readonly Validation[] = [
  number(`E${limits.first}`, 0, 5000, 'Lowest ceiling you accept, feet above the field.'),
  number(`E${limits.first + 1}`, 0, 20000, 'Lowest visibility you accept, in the unit beside it.'),
  number(`E${limits.first + 2}:E${limits.last}`, 0, 100, 'Knots.'),
  { kind: 'list', range: `F${limits.first + 1}`, choices: ['SM', 'km', 'm'], help: 'Unit of the visibility.' },
  number(`E${settingRows.takeoffFactor}:E${settingRows.landingFactor}`, 1, 5, 'The corrected distance times this must fit.'),
  {
    kind: 'list',
    range: `E${settingRows.keepsLog}:E${settingRows.keepsLedger}`,
    choices: ['yes', 'no'],
    help: 'Whether it is kept in this workbook.',
  },
];
