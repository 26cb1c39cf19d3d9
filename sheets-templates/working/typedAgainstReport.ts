// What is typed in the place of a report, held against it.
import { tripRows as trip, type PlaceColumn } from '../trip/rows';
import { workingRows as rows } from './rows';
import { magnetic, typed, windTyped } from './usedWeather';
import { weatherCell, type Answer } from './weatherAnswers';

/** How far a typed value may lie from the report before it is said: degrees C, hPa, kt and degrees of direction. Common practice, no source. */
export function differs(column: PlaceColumn): string {
  const off = (row: number, answer: Answer, most: number, words: string, unit: string, entry = typed(column, row)): string =>
    `IF(AND(ISNUMBER(${typed(column, row)}),ISNUMBER(${weatherCell(column, answer)})),IF(ABS(${entry}-${weatherCell(column, answer)})>${most},"${words} "&${typed(column, row)}&", reported "&${weatherCell(column, answer)}&" ${unit}",""),"")`;
  const setting = `IF(${typed(column, trip.altimeter)}<50,${typed(column, trip.altimeter)}*$B$${rows.hectopascalsPerInch},${typed(column, trip.altimeter)})`;
  const directions = `IF(AND(ISNUMBER(${typed(column, trip.windFrom)}),ISNUMBER(${weatherCell(column, 'wind from, true')}),ISNUMBER(${column}${rows.variation}),N(${weatherCell(column, 'wind, kt')})>5),IF(ABS(MOD(${typed(column, trip.windFrom)}-${magnetic(column, weatherCell(column, 'wind from, true'))}+540,360)-180)>30,"wind from "&${typed(column, trip.windFrom)}&", reported "&${magnetic(column, weatherCell(column, 'wind from, true'))}&" degrees magnetic",""),"")`;
  return `=TEXTJOIN("; ",TRUE,${[
    off(trip.temperature, 'temperature, C', 3, 'temperature', 'C'),
    off(trip.altimeter, 'altimeter, hPa', 2, 'altimeter setting', 'hPa', setting),
    directions,
    off(trip.wind, 'wind, kt', 5, 'wind', 'kt'),
    off(trip.gust, 'gust, kt', 5, 'gust', 'kt'),
    `IF(AND(${windTyped(column)},ISNUMBER(${typed(column, trip.windFrom)}),ISNUMBER(${weatherCell(column, 'variable to')})),"wind typed from one direction, reported variable","")`,
    `IF(AND(${windTyped(column)},NOT(ISNUMBER(${typed(column, trip.gust)})),ISNUMBER(${weatherCell(column, 'gust, kt')})),"no gust typed, reported "&${weatherCell(column, 'gust, kt')}&" kt","")`,
  ].join(',')})`;
}
