// Keys of the entries in the descent half of the Descent and hold card.
import { columnsFrom, type KeyedList } from '../keys';
import { crossings, readRows, schedule, winds, type Rows } from './descentLists';

export const descentEntries = {
  altitudeNow: 'B7',
  descentAngle: 'B8',
  groundspeedNow: 'B9',
  planFor: 'B23',
  trueCourse: 'B28',
  aboveStandard: 'B29',
  slowOver: 'B30',
} as const;
const keyed = (list: Rows, columns: KeyedList['columns']): KeyedList => ({ head: list.first - 1, ...list, read: readRows(list), columns });
export const descentLists = {
  crossings: keyed(crossings, columnsFrom(1, 'fix', 'toGo', 'beforeBy', 'altitude', 'kind')),
  schedule: keyed(schedule, columnsFrom(5, 'altitude', 'speed', 'rate')),
  winds: keyed(winds, columnsFrom(5, 'altitude', 'from', 'speed')),
} as const;
