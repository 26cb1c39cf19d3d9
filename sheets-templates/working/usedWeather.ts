// The weather that runways and climb are worked out with: typed on the trip, else reported, else forecast.
import { tripRows as trip, type PlaceColumn } from '../trip/rows';
import { onTrip } from './places';
import { workingRows as rows } from './rows';
import { weatherCell, type Answer } from './weatherAnswers';

export const typed = (column: PlaceColumn, row: number): string => onTrip(column, row);
/** Typed on the trip, else as reported, else blank. */
export const usedOf =
  (row: number, answer: Answer) =>
  (column: PlaceColumn): string =>
    `=IF(ISNUMBER(${typed(column, row)}),${typed(column, row)},IF(ISNUMBER(${weatherCell(column, answer)}),${weatherCell(column, answer)},""))`;

export const magnetic = (column: PlaceColumn, cellOfTrue: string): string => `ROUND(MOD(${cellOfTrue}-${column}${rows.variation}+360,360),0)`;
export const windTyped = (column: PlaceColumn): string => `ISNUMBER(${typed(column, trip.wind)})`;
/** A wind of the report where there is one; else of the forecast, which an arrival hours ahead has alone. */
const reported = (column: PlaceColumn): string => `ISNUMBER(${weatherCell(column, 'wind, kt')})`;

function fromReport(column: PlaceColumn, from: Answer, variableTo: Answer): string {
  const [cellFrom, cellTo] = [weatherCell(column, from), weatherCell(column, variableTo)];
  return `IF(ISNUMBER(${cellFrom}),IF(ISNUMBER(${column}${rows.variation}),${magnetic(column, cellFrom)},""),IF(ISNUMBER(${cellTo}),"VRB",""))`;
}
const windFrom = (column: PlaceColumn): string =>
  `=IF(${windTyped(column)},${typed(column, trip.windFrom)}&"",IF(${reported(column)},${fromReport(column, 'wind from, true', 'variable to')},${fromReport(column, 'forecast wind from', 'forecast variable to')}))`;
/** Text of digits would be no direction: a typed number stays one. */
export const windFromUsed = (column: PlaceColumn): string =>
  windFrom(column).replace(
    `${typed(column, trip.windFrom)}&""`,
    `IF(ISNUMBER(${typed(column, trip.windFrom)}),${typed(column, trip.windFrom)},UPPER(${typed(column, trip.windFrom)}))`,
  );

export const windOf =
  (of: 'wind' | 'gust') =>
  (column: PlaceColumn): string => {
    const [entry, report, forecast] =
      of === 'wind' ? ([trip.wind, 'wind, kt', 'forecast wind, kt'] as const) : ([trip.gust, 'gust, kt', 'forecast gust, kt'] as const);
    const number = (place: string): string => `IF(ISNUMBER(${place}),${place},"")`;
    return `=IF(${windTyped(column)},${number(typed(column, entry))},IF(${reported(column)},${number(weatherCell(column, report))},${number(weatherCell(column, forecast))}))`;
  };

/** The whole circle stays the whole circle; a part of it turns with the variation. */
export const variable =
  (end: 'from' | 'to') =>
  (column: PlaceColumn): string => {
    const [from, to] = [weatherCell(column, 'variable from'), weatherCell(column, 'variable to')];
    const one = end === 'from' ? from : to;
    return `=IF(OR(${windTyped(column)},NOT(ISNUMBER(${one}))),"",IF(AND(${from}=0,${to}=360),${one},IF(ISNUMBER(${column}${rows.variation}),${magnetic(column, one)},"")))`;
  };
