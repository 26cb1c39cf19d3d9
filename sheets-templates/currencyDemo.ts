// Invented from end to end: a pilot's papers and flights, four aircraft and their inspections, for the Currency log.
import type { Content } from './build';

const date = (iso: string): Content => ({ date: iso });
const none = undefined;

/** Paper, date or word, lasts so many months (own rows only). */
export const demoPapers: readonly (readonly Content[])[] = [
  ['flight review', date('2026-06-27'), none],
  ['instrument proficiency check', none, none],
  ['medical examination', date('2025-09-03'), none],
  ['medical class', 2, none],
  ['birth date', date('1984-05-12'), none],
  ['class rating valid to', date('2027-03-31'), none],
  ['club checkout', date('2026-02-20'), 12],
];

/** Aircraft, tailwheel, category, device, (gap), type rating, class, (gap), hours now. SEL: single-engine land; MEL: multi-engine land. */
export const demoFleet: readonly (readonly Content[])[] = [
  ['DEMO-1', none, 'airplane', none, none, none, 'SEL', none, 1287.6],
  ['DEMO-2', 'yes', 'airplane', none, none, none, 'SEL', none, 640.2],
  ['DEMO-3', none, 'airplane', none, none, none, 'MEL', none, 2205],
  ['Trainer', none, 'airplane', 'ATD', none, none, 'SEL', none, none],
];

/** Item, aircraft, done at hours, was due at hours, done on, every months, every days, every hours. */
export const demoItems: readonly (readonly Content[])[] = [
  ['annual inspection', 'DEMO-1', none, none, date('2026-03-12'), none, none, none],
  ['100 hour inspection', 'DEMO-1', 1210.4, 1205, none, none, none, none],
  ['altimeter and static system', 'DEMO-1', none, none, date('2025-01-20'), none, none, none],
  ['transponder', 'DEMO-1', none, none, date('2024-12-05'), none, none, none],
  ['VOR check', 'DEMO-1', none, none, date('2026-11-02'), none, none, none],
  ['ELT inspection', 'DEMO-1', none, none, date('2026-03-12'), none, none, none],
  ['ELT battery', 'DEMO-1', none, none, date('2027-08-31'), none, none, none],
  ['oil change', 'DEMO-1', 1255, none, date('2026-09-01'), 6, none, 50],
  ['annual inspection', 'DEMO-2', none, none, date('2025-11-03'), none, none, none],
  ['annual inspection', 'DEMO-3', none, none, none, none, none, none],
  ['oxygen bottle 3AA', 'DEMO-3', none, none, date('2022-01-15'), none, none, none],
];

type Numbers = readonly (number | undefined)[];
const flight = (day: string, aircraft: string, [dayLandings, dayStops, nightLandings, nightStops]: Numbers, [approaches, holds, tracking]: Numbers, [hours, command, instructor]: Numbers, remark?: string): readonly Content[] =>
  [aircraft, date(day), dayLandings, dayStops, nightLandings, nightStops, approaches, holds, none, tracking, hours, none, command, instructor, remark];

/** Aircraft, date, landings and full stops by day and by night, approaches, holds, (gap), tracking, hours, (gap), in command, with instructor, remark. */
export const demoFlights: readonly (readonly Content[])[] = [
  flight('2026-01-17', 'DEMO-1', [2, 2], [], [1.4, 1.4]),
  flight('2026-02-14', 'DEMO-1', [1, 1], [], [2.1, 2.1]),
  flight('2026-02-20', 'DEMO-3', [3, 3], [], [1.2, none, 1.2], 'club checkout'),
  flight('2026-03-07', 'DEMO-2', [4, 4], [], [1.2, 1.2]),
  flight('2026-03-28', 'DEMO-1', [1, 1], [2, 1, 1], [2.3, 2.3]),
  flight('2026-04-11', 'DEMO-3', [3, 3], [], [1.8, 1.8]),
  flight('2026-05-02', 'DEMO-1', [2, 1], [], [1.1, 1.1]),
  flight('2026-05-23', 'Trainer', [], [2, 1, 1], [1.5], 'training device'),
  flight('2026-06-06', 'DEMO-1', [1, 1], [1], [2.6, 2.6]),
  flight('2026-06-27', 'DEMO-1', [3, 3], [], [1.2, none, 1.2], 'flight review'),
  flight('2026-07-11', 'DEMO-2', [3, 2], [], [1, 1]),
  flight('2026-07-25', 'DEMO-1', [1, 1], [2, none, 1], [3, 3]),
  flight('2026-08-08', 'DEMO-3', [2, 2], [], [1.6, 1.6]),
  flight('2026-08-22', 'DEMO-1', [1, 1, 1, 1], [], [1.5, 1.5]),
  flight('2026-09-05', 'DEMO-1', [3, 3], [], [0.9, 0.9]),
  flight('2026-09-10', 'DEMO-1', [none, none, 3, 3], [], [1.2, 1.2]),
  flight('2026-09-19', 'DEMO-1', [1, 1], [2, 1, 1], [2.2, 2.2]),
  flight('2026-10-03', 'DEMO-2', [3, 3], [], [1.1, 1.1]),
  flight('2026-10-10', 'DEMO-1', [1, 1], [], [0.7, 0.7]),
  flight('2026-10-17', 'Trainer', [], [2], [1.3], 'training device'),
  flight('2026-10-24', 'DEMO-1', [2, 2], [], [1.3, 1.3]),
  flight('2026-10-31', 'DEMO-3', [1, 1], [], [1.5, 1.5]),
  flight('2026-11-07', 'DEMO-1', [1, 1], [1], [1.9, 1.9]),
  flight('2026-11-14', 'DEMO-1', [1, 1], [], [1, 1]),
  flight('2026-11-21', 'DEMO-1', [2, 2], [], [1.2, 1.2]),
];
