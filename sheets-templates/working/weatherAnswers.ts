// Where the answers of WEATHER_BRIEF stand on Trip working.
import { placeColumns, type PlaceColumn } from '../trip/rows';
import { workingRows as rows } from './rows';

/** Columns of the answer, in its order. */
export const answers = [
  'verdict',
  'reason',
  'report time',
  'age, min',
  'wind from, true',
  'wind, kt',
  'gust, kt',
  'variable from',
  'variable to',
  'temperature, C',
  'dew point, C',
  'altimeter, hPa',
  'visibility, m',
  'ceiling, ft',
  'weather',
  'forecast wind from',
  'forecast wind, kt',
  'forecast gust, kt',
  'forecast variable from',
  'forecast variable to',
  'forecast visibility, m',
  'forecast ceiling, ft',
  'forecast weather',
] as const;
export type Answer = (typeof answers)[number];

const letterOf = (answer: Answer): string => String.fromCharCode(65 + answers.indexOf(answer));
const rowOf = (column: PlaceColumn): number => rows.weather.first + placeColumns.indexOf(column);
/** The cell of an answer for a place. */
export const weatherCell = (column: PlaceColumn, answer: Answer): string => `${letterOf(answer)}${rowOf(column)}`;
