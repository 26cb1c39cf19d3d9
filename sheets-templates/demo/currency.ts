// Invented from end to end: a pilot's papers and flights, four aircraft and their inspections, for the Currency log.
import type { Content } from '../build';
import { fixedDay } from './day';

const date = (iso: string): Content => ({ date: iso });
const none = undefined;

/** Paper, date or word, lasts so many months (own rows only). */
export const demoPapers: readonly (readonly Content[])[] = [
  ['flight review', date('2026-06-27'), none],
  ['instrument proficiency check', none, none],
  ['medical examination', date('2025-09-03'), none],
  ['medical class', 2, none],
  ['birth date', fixedDay('1984-05-12'), none],
  ['class rating valid to', date('2027-03-31'), none],
  ['club checkout', date('2026-02-20'), 12],
];

/** Rule, what, at least, within, of, in, needed for, night, (gap), full stop, tailwheel, (gap), set by. */
export const demoOwnRules: readonly (readonly Content[])[] = [
  ['club recency', 'landings', 3, 60, 'days', 'Quillon Four', none, none, none, none, none, none, 'club'],
  ['insurer, hours', 'hours', 5, 6, 'months', 'SEL', none, none, none, none, none, none, 'insurer'],
];

/** Aircraft, tailwheel, category, device, (gap), type rating, class, (gap), hours now. SEL: single-engine land; MEL: multi-engine land. */
export const demoFleet: readonly (readonly Content[])[] = [
  ['Quillon Four', none, 'airplane', none, none, none, 'SEL', none, 1287.6],
  ['Brindle Two', 'yes', 'airplane', none, none, none, 'SEL', none, 640.2],
  ['Sable Twin', none, 'airplane', none, none, none, 'MEL', none, 2205],
  ['Trainer', none, 'airplane', 'ATD', none, none, 'SEL', none, none],
];

/** Item, aircraft, done at hours, was due at hours, done on, every months, every days, every hours. */
export const demoItems: readonly (readonly Content[])[] = [
  ['annual inspection', 'Quillon Four', none, none, date('2026-03-12'), none, none, none],
  ['100 hour inspection', 'Quillon Four', 1210.4, 1205, none, none, none, none],
  ['altimeter and static system', 'Quillon Four', none, none, date('2025-01-20'), none, none, none],
  ['transponder', 'Quillon Four', none, none, date('2024-12-30'), none, none, none],
  ['VOR check', 'Quillon Four', none, none, date('2026-11-02'), none, none, none],
  ['ELT inspection', 'Quillon Four', none, none, date('2026-03-12'), none, none, none],
  ['ELT battery', 'Quillon Four', none, none, date('2027-08-31'), none, none, none],
  ['oil change', 'Quillon Four', 1255, none, date('2026-09-01'), 6, none, 50],
  ['annual inspection', 'Brindle Two', none, none, date('2025-11-25'), none, none, none],
  ['annual inspection', 'Sable Twin', none, none, none, none, none, none],
  ['oxygen bottle 3AA', 'Sable Twin', none, none, date('2022-01-15'), none, none, none],
];

type Numbers = readonly (number | undefined)[];
const flight = (
  day: string,
  aircraft: string,
  [dayLandings, dayStops, nightLandings, nightStops]: Numbers,
  [approaches, holds, tracking]: Numbers,
  [hours, command, instructor]: Numbers,
  remark?: string,
): readonly Content[] => [
  aircraft,
  date(day),
  dayLandings,
  dayStops,
  nightLandings,
  nightStops,
  approaches,
  holds,
  none,
  tracking,
  hours,
  none,
  command,
  instructor,
  remark,
];

/** Aircraft, date, landings and full stops by day and by night, approaches, holds, (gap), tracking, hours, (gap), in command, with instructor, remark. */
export const demoFlights: readonly (readonly Content[])[] = [
  flight('2026-01-17', 'Quillon Four', [2, 2], [], [1.4, 1.4]),
  flight('2026-02-14', 'Quillon Four', [1, 1], [], [2.1, 2.1]),
  flight('2026-02-20', 'Sable Twin', [3, 3], [], [1.2, none, 1.2], 'club checkout'),
  flight('2026-03-07', 'Brindle Two', [4, 4], [], [1.2, 1.2]),
  flight('2026-03-28', 'Quillon Four', [1, 1], [2, 1, 1], [2.3, 2.3]),
  flight('2026-04-11', 'Sable Twin', [3, 3], [], [1.8, 1.8]),
  flight('2026-05-02', 'Quillon Four', [2, 1], [], [1.1, 1.1]),
  flight('2026-05-23', 'Trainer', [], [2, 1, 1], [1.5], 'training device'),
  flight('2026-06-06', 'Quillon Four', [1, 1], [1], [2.6, 2.6]),
  flight('2026-06-27', 'Quillon Four', [3, 3], [], [1.2, none, 1.2], 'flight review'),
  flight('2026-07-11', 'Brindle Two', [3, 2], [], [1, 1]),
  flight('2026-07-25', 'Quillon Four', [1, 1], [2, none, 1], [3, 3]),
  flight('2026-08-08', 'Sable Twin', [2, 2], [], [1.6, 1.6]),
  flight('2026-08-22', 'Quillon Four', [1, 1, 1, 1], [], [1.5, 1.5]),
  flight('2026-09-05', 'Quillon Four', [3, 3], [], [0.9, 0.9]),
  flight('2026-09-10', 'Quillon Four', [none, none, 3, 3], [], [1.2, 1.2]),
  flight('2026-09-19', 'Quillon Four', [1, 1], [2, 1, 1], [2.2, 2.2]),
  flight('2026-10-03', 'Brindle Two', [3, 3], [], [1.1, 1.1]),
  flight('2026-10-10', 'Quillon Four', [1, 1], [], [0.7, 0.7]),
  flight('2026-10-17', 'Trainer', [], [2], [1.3], 'training device'),
  flight('2026-10-24', 'Quillon Four', [2, 2], [], [1.3, 1.3]),
  flight('2026-10-31', 'Sable Twin', [1, 1], [], [1.5, 1.5]),
  flight('2026-11-07', 'Quillon Four', [1, 1], [1], [1.9, 1.9]),
  flight('2026-11-14', 'Quillon Four', [1, 1], [], [1, 1]),
  flight('2026-11-21', 'Quillon Four', [2, 2], [], [1.2, 1.2]),
];
