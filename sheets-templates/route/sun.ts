// The sun at the three places of the trip: worked out away from what is read, told in a line each.
import { address, area, line, type Field } from '../build';
import { listHeads, listHeading } from '../lists';
import { formulaCall, type TemplateCell } from '../template';
import { placeColumns, placeNames, tripRows } from '../trip/rows';
import { workingRows } from '../working/rows';
import { sunRows, sunWorkedRows } from './rows';
import { onTrip, onWorking } from './whole';

const { head: sunHead, first: sunFirst, last: sunLast } = sunWorkedRows;
const sunHeads = ['dawn', 'sunrise', 'sunset', 'dusk', 'the sun', 'by civil twilight', 'by an hour after sunset'];
/** The place, the moment, then the answer. */
const sunFrom = 1;
const sunAt = (row: number, across: number): string => address(row, sunFrom + across);
const sunColumn = (across: number): string => area(sunFirst, sunFrom + across, sunLast, sunFrom + across);
const sunCall = formulaCall('SUN_TIMES', sunColumn(0), sunColumn(1), sunColumn(2), sunColumn(3));
const placeOf = (index: number): string => placeColumns[index] ?? 'B';

const sunWorked: TemplateCell[] = [
  ...line(sunHead - 2, sunFrom, ['Sun, worked out', 'heading'], ...Array.from({ length: 10 }, (): Field => ['', 'heading'])),
  ...listHeads(sunHead, sunFrom, ['latitude', 'longitude', 'date', 'time, UTC', ...sunHeads]),
  ...[0, 1, 2].flatMap((index) => {
    const moment = onWorking(workingRows.moment, placeOf(index));
    const known = (then: string): string => `=IFERROR(IF(ISNUMBER(${moment}),${then},""),"")`;
    return line(
      sunFirst + index,
      sunFrom,
      [`=${onWorking(workingRows.latitude, placeOf(index))}`, 'computed', { format: 'two' }],
      [`=${onWorking(workingRows.longitude, placeOf(index))}`, 'computed', { format: 'two' }],
      [known(`INT(${moment})`), 'computed', { format: 'date' }],
      // A second more: a whole minute lies a hair below itself in some spreadsheets, and would show as the minute before.
      [known(`TEXT(${moment}+1/86400,"hhmm")&"Z"`), 'computedText'],
      [
        index === 0 ? `=${sunCall}` : undefined,
        'computedText',
        index === 0 ? { note: 'SUN_TIMES: the times about the local noon of the date, and day or night at the time.' } : {},
      ],
      ...Array.from({ length: 6 }, (): Field => [undefined, 'computedText']),
    );
  }),
];

/** One line for each place: its times, and day or night when it is used. */
function sunLine(index: number): TemplateCell[] {
  const row = sunFirst + index;
  const [dawn = '', rise = '', set = '', dusk = '', sun = '', civil = '', hour = ''] = sunHeads.map((_, across) => sunAt(row, 4 + across));
  const field = onTrip(tripRows.field, placeOf(index));
  const times = `"dawn "&${dawn}&", sunrise "&${rise}&", sunset "&${set}&", dusk "&${dusk}`;
  const told = `${times}&IF(${civil}="","; time not known","; at "&${sunAt(row, 3)}&" "&${civil}&" by civil twilight, "&${hour}&" by the hour after sunset")`;
  return line(
    sunRows.first + index,
    7,
    [placeNames[placeColumns[index] ?? 'B'], 'label'],
    [undefined, 'plain'],
    [`=IF(${field}="","none",IF(OR(LEFT(${dusk}&"",4)="SUN_",${sun}&""=""),"not known",${told}))`, 'computedText'],
  );
}

export const sunCells: TemplateCell[] = [
  ...listHeading(
    sunRows.heading,
    7,
    20,
    '5  Sun at the places of the trip',
    'UTC. Night by 14 CFR 1.1 and Part-FCL: civil twilight; landings by 14 CFR 61.57(b): from one hour after sunset.',
  ),
  ...[0, 1, 2].flatMap(sunLine),
  ...sunWorked,
];
