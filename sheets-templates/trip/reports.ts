// The weather reports at the foot of the Trip sheet, pasted as they come.
import { cell, line, type Field } from '../build';
import { demoTrip } from '../demo/day';
import type { TemplateCell } from '../template';
import { placeColumns, placeNames, tripRows as rows } from './rows';

/** Invented reports. */
const metars: readonly string[] = [
  'METAR ZZXA 251350Z 22012KT 9999 FEW040 18/09 Q1009',
  'METAR ZZXB 251350Z 09008KT CAVOK 21/12 Q1007',
  'METAR ZZXC 251350Z 12006KT CAVOK 20/10 Q1008',
];
const tafs: readonly string[] = [
  'TAF ZZXA 251100Z 2512/2612 21012KT 9999 FEW040',
  'TAF ZZXB 251100Z 2512/2612 09008KT CAVOK',
  'TAF ZZXC 251100Z 2512/2612 12008KT CAVOK',
];

const placeOf = (index: number): string => placeNames[placeColumns[index] ?? 'B'];
const pasted = (kind: string, first: number, reports: readonly string[]): TemplateCell[] =>
  reports.map((report, index) => cell(first + index, 1, report, 'inputText', { note: `${kind}, ${placeOf(index)}.`, reportOf: demoTrip.firstDay }));

export const reportCells: TemplateCell[] = [
  ...line(rows.reportsHeading, 1, ['8  Weather reports, pasted', 'heading'], ...Array.from({ length: 8 }, (): Field => ['', 'heading'])),
  cell(
    rows.reportsHelp,
    1,
    'METAR for departure, destination and alternate, one a row; below them the TAF of each. Trip working shows what was read.',
    'subtitle',
  ),
  ...pasted('METAR', rows.metars.first, metars),
  ...pasted('TAF', rows.tafs.first, tafs),
];
