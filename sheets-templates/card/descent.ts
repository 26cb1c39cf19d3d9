// The descent half of the Descent and hold card: crossing restrictions, and the plan by schedule and winds for one of them.
import { area } from '../build';
import type { TemplateCell, Validation } from '../template';
import { altitudeHelp, crossings, numbers, rows, schedule, winds } from './descentLists';
import { crossingCells, verdicts } from './crossings';
import { planCells } from './descentPlan';

export const descentCells: readonly TemplateCell[] = [...crossingCells, ...planCells];

export const descentVerdictRanges: readonly string[] = [verdicts];

export const descentValidations: readonly Validation[] = [
  numbers('B7', -5000, 60000, altitudeHelp),
  numbers('B8', 0.5, 15, 'Angle of the path, 0.5 to 15 degrees.'),
  numbers('B9', 1, 1000, 'Groundspeed in knots.'),
  numbers(rows(crossings, 'B'), 0, 500, 'Distance to go in nautical miles.'),
  numbers(rows(crossings, 'C'), -500, 500, '8 is eight miles before the fix, -8 eight miles beyond it.'),
  numbers(rows(crossings, 'D'), -5000, 60000, altitudeHelp),
  { kind: 'list', range: rows(crossings, 'E'), choices: ['at', 'at or below', 'at or above'], help: 'How to cross.' },
  { kind: 'listFrom', range: 'B23', source: `$A$${crossings.first}:$A$${crossings.last}`, help: 'A fix of the restrictions above, or blank.' },
  numbers('B28', 0, 360, 'True course, 0 to 360 degrees.'),
  numbers('B29', -50, 50, 'Degrees Celsius warmer than standard.'),
  numbers('B30', 0, 50, 'Nautical miles, 0 to 50.'),
  numbers(area(schedule.first, 5, schedule.last, 5), -5000, 60000, altitudeHelp),
  numbers(area(schedule.first, 6, schedule.last, 6), 0.01, 600, 'Knots indicated, or a Mach number below 1.'),
  numbers(area(schedule.first, 7, schedule.last, 7), 1, 10000, 'Rate of descent in feet a minute, without a sign.'),
  numbers(area(winds.first, 5, winds.last, 5), -5000, 60000, altitudeHelp),
  numbers(area(winds.first, 6, winds.last, 6), 0, 360, 'Where the wind blows from, degrees true.'),
  numbers(area(winds.first, 7, winds.last, 7), 0, 300, 'Wind in knots.'),
];
