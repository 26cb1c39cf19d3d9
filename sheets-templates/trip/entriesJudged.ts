// The item "Entries" of the Trip sheet: what is missing, what looks like a typing error; and what was typed beside a report.
import { placeColumns, placeNames, tripRows as rows } from './rows';
import { aircraftFlow, aircraftSpeed, alternateByRoute, alternateTyped, byRoute, ofRoute, working } from './entries';
import { landingFactorCell, limitCell, takeoffFactorCell } from '../start/settings';
import { workingRows } from '../working/rows';

const joined = (separator: string, texts: readonly string[]): string => `TEXTJOIN("${separator}",TRUE,${texts.join(',')})`;
const said = (condition: string, words: string): string => `IF(${condition},"${words}","")`;
const at = (column: string, row: number): string => `${column}${row}`;

const needsNumber = (place: string, words: string): string => said(`NOT(ISNUMBER(${place}))`, words);
const needsYesNo = (row: number, words: string): string => said(`AND(B${row}<>"yes",B${row}<>"no")`, `${words}: yes or no`);
const hasPlace = (column: string): string => `${column}${rows.field}<>""`;

/** Left blank it has a meaning; a text in its place has none. */
const wordsFor = (place: string, label: string): string => said(`AND(${place}<>"",NOT(ISNUMBER(${place})))`, `${label}: no number`);

/** Entries that nothing can be worked out without, each by its name. */
const missing = joined(', ', [
  ...placeColumns.flatMap((column) => {
    const place = placeNames[column];
    const optional = column === 'D';
    return [
      ...(optional ? [] : [said(`${at(column, rows.field)}=""`, `field (${place})`)]),
      said(`AND(${hasPlace(column)},NOT(ISNUMBER(${working(at(column, workingRows.fieldRow))})))`, `field (${place}) is not on the Fields sheet`),
      said(`AND(${hasPlace(column)},${at(column, rows.runwayName)}="")`, `runway (${place})`),
      said(
        `AND(${hasPlace(column)},${at(column, rows.runwayName)}<>"",NOT(ISNUMBER(${working(at(column, workingRows.runwayRow))})))`,
        `runway (${place}) is not listed for its field, or twice`,
      ),
    ];
  }),
  said(`NOT(ISNUMBER(${working(at('B', workingRows.moment))}))`, 'take-off, UTC: a time such as 1430'),
  needsYesNo(rows.passengers, 'passengers'),
  needsYesNo(rows.night, 'night'),
  needsYesNo(rows.instrument, 'instrument flight'),
  needsYesNo(rows.judgeDescent, 'judge the descent'),
  needsYesNo(rows.judgeHold, 'judge the hold'),
  said(`AND(B${rows.timesFrom}<>"typed",B${rows.timesFrom}<>"route")`, 'the way: typed or route'),
  said(
    `AND(${byRoute},OR(${ofRoute('from')}<>${at('B', rows.field)},${ofRoute('to')}<>${at('C', rows.field)}))`,
    'a route from the departure to the destination',
  ),
  needsNumber(at('B', rows.timeEnRoute), 'time en route: a groundspeed, or minutes for a local flight'),
  said(`AND(${hasPlace('D')},NOT(ISNUMBER(${at('D', rows.timeEnRoute)})))`, 'time to the alternate'),
  needsNumber(working(at('B', workingRows.flow)), 'fuel flow'),
  needsNumber(at('B', rows.reserve), 'reserve required'),
  needsNumber(at('B', rows.contingency), 'contingency'),
  needsNumber(at('B', rows.gradient), 'climb gradient required'),
  needsNumber(at('B', rows.climbSpeed), 'groundspeed in the climb'),
  wordsFor(at('B', rows.fuelFlow), 'fuel flow, typed'),
  wordsFor(at('B', rows.minutesTyped), 'minutes, typed'),
  wordsFor(at('D', rows.minutesTyped), 'minutes to the alternate, typed'),
  wordsFor(at('B', rows.holding), 'planned holding'),
  ...placeColumns.flatMap((column) =>
    [rows.altimeter, rows.temperature, rows.wind, rows.gust].map((row) =>
      said(`AND(${at(column, row)}<>"",NOT(ISNUMBER(${at(column, row)})))`, `typed weather (${placeNames[column]}) is no number`),
    ),
  ),
  ...placeColumns.map((column) =>
    said(
      `AND(ISNUMBER(${at(column, rows.wind)}),NOT(ISNUMBER(${at(column, rows.windFrom)})),UPPER(${at(column, rows.windFrom)})<>"VRB")`,
      `direction of the typed wind (${placeNames[column]})`,
    ),
  ),
]);

/** Bounds between which light aircraft fly; beyond them is looked at. Common practice, no source. */
const usual = (place: string, label: string, least: number, most: number, unit: string): string =>
  `IF(ISNUMBER(${place}),IF(OR(${place}<${least},${place}>${most}),"${label} of "&${place}&" ${unit}, usually ${least} to ${most} ${unit}",""),"")`;
const beside = (one: string, other: string, percent: number, words: string): string =>
  `IF(AND(ISNUMBER(${one}),ISNUMBER(${other})),IF(ABS(${one}-${other})*100>${percent}*${other},"${words} "&${one}&", the aircraft list says "&${other},""),"")`;

/** A wind hardly doubles or halves the speed of a light aircraft, and none climbs faster than it cruises. Common practice, no source. */
const besideCruise = (place: string, label: string, least: number, most: number): string =>
  `IF(AND(ISNUMBER(${place}),ISNUMBER(${aircraftSpeed})),IF(OR(${place}*100<${least}*${aircraftSpeed},${place}*100>${most}*${aircraftSpeed}),"${label} of "&${place}&" kt, the aircraft list says "&${aircraftSpeed}&" kt true airspeed in cruise",""),"")`;

/** Minutes typed for less than the distance takes; more is a detour. */
const shorterThanTheWay = (column: 'B' | 'D', words: string): string => {
  const [typedMinutes, miles, speed] = [at(column, rows.minutesTyped), at(column, rows.distance), at(column, rows.groundspeed)];
  return `IF(AND(ISNUMBER(${typedMinutes}),ISNUMBER(${miles}),N(${speed})>0),IF(${typedMinutes}*100<80*${miles}/${speed}*60,"minutes ${words} "&${typedMinutes}&", the distance takes "&ROUND(${miles}/${speed}*60,0),""),"")`;
};

/** What is typed of a way that is flown by the route, where it differs by a fifth: a slip in one of them. Common practice, no source. */
const straightMinutes = `IF(ISNUMBER(${at('B', rows.minutesTyped)}),${at('B', rows.minutesTyped)},${working(`G${workingRows.legs.first}`)}/${at('B', rows.groundspeed)}*60)`;
const besideRoute = `IF(${byRoute},IFERROR(IF(ABS(${straightMinutes}-${ofRoute('minutes')})*100>20*${ofRoute('minutes')},"the route takes "&ROUND(${ofRoute('minutes')},0)&" minutes, what is typed "&ROUND(${straightMinutes},0),""),""),"")`;

/** Minutes typed to the alternate, or its groundspeed, for less than the route takes; more is a detour. */
const shortOfRoute = `IF(AND(${byRoute},${hasPlace('D')},${alternateTyped},N(${at('D', rows.timeEnRoute)})>0),IFERROR(IF(${at('D', rows.timeEnRoute)}*100<80*${alternateByRoute},"to the alternate the route takes "&ROUND(${alternateByRoute},0)&" minutes, what is typed "&ROUND(${at('D', rows.timeEnRoute)},0),""),""),"")`;

/** Typed weather that nobody hears, since there is no wind typed with it. */
const unheard = (column: string, row: number, words: string): string =>
  `IF(AND(${at(column, row)}<>"",NOT(ISNUMBER(${at(column, rows.wind)}))),"${words} (${placeNames[column as 'B']}) typed without a wind is not used","")`;

/** Settings on Start with which nothing would be too bad any more. */
const limitDoubts = [
  usual(limitCell('minimum ceiling'), 'your minimum ceiling', 200, 5000, 'ft'),
  said(`AND(ISNUMBER(${limitCell('minimum visibility')}),${limitCell('minimum visibility')}<=0)`, 'your minimum visibility of 0 lets any fog pass'),
  usual(limitCell('maximum crosswind'), 'your maximum crosswind', 0, 40, 'kt'),
  usual(limitCell('maximum gust spread'), 'your maximum gust spread', 0, 30, 'kt'),
  usual(limitCell('maximum tailwind'), 'your maximum tailwind', 0, 10, 'kt'),
  usual(limitCell('maximum wind'), 'your maximum wind', 0, 60, 'kt'),
  usual(takeoffFactorCell, 'take-off safety factor', 1, 3, 'times'),
  usual(landingFactorCell, 'landing safety factor', 1, 3, 'times'),
];

const doubts = joined('; ', [
  usual(at('B', rows.groundspeed), 'groundspeed', 40, 350, 'kt'),
  usual(at('D', rows.groundspeed), 'groundspeed to the alternate', 40, 350, 'kt'),
  usual(at('B', rows.climbSpeed), 'groundspeed in the climb', 30, 200, 'kt'),
  usual(at('B', rows.gradient), 'climb gradient', 50, 700, 'ft/NM'),
  usual(at('B', rows.timeEnRoute), 'time en route', 5, 600, 'minutes'),
  usual(at('B', rows.reserve), 'reserve', 10, 180, 'minutes'),
  usual(at('B', rows.contingency), 'contingency', 0, 30, '%'),
  usual(at('B', rows.holding), 'planned holding', 0, 240, 'minutes'),
  besideCruise(at('B', rows.groundspeed), 'groundspeed', 50, 160),
  besideCruise(at('D', rows.groundspeed), 'groundspeed to the alternate', 50, 160),
  besideCruise(at('B', rows.climbSpeed), 'groundspeed in the climb', 20, 130),
  shorterThanTheWay('B', 'to the destination'),
  besideRoute,
  shorterThanTheWay('D', 'to the alternate'),
  shortOfRoute,
  said(`AND(${hasPlace('D')},${at('D', rows.field)}=${at('C', rows.field)})`, 'the alternate is the destination'),
  beside(at('B', rows.fuelFlow), aircraftFlow, 30, 'fuel flow'),
  ...limitDoubts,
  ...placeColumns.flatMap((column) => [
    usual(at(column, rows.temperature), `temperature (${placeNames[column]})`, -40, 50, 'C'),
    usual(at(column, rows.gust), `gust (${placeNames[column]})`, 1, 80, 'kt'),
    usual(at(column, rows.windFrom), `direction of the wind (${placeNames[column]})`, 0, 360, 'degrees'),
    unheard(column, rows.gust, 'gust'),
    unheard(column, rows.windFrom, 'direction'),
    `IF(AND(ISNUMBER(${at(column, rows.wind)}),ISNUMBER(${at(column, rows.gust)})),IF(${at(column, rows.gust)}<${at(column, rows.wind)},"gust (${placeNames[column]}) of "&${at(column, rows.gust)}&" kt below the wind",""),"")`,
  ]),
]);

export const entriesVerdict = `=IF(${missing}<>"","UNKNOWN",IF(${doubts}="","OK","CHECK"))`;
export const entriesReason = `=IF(${missing}<>"","missing: "&${missing},IF(${doubts}="","every entry is there","looks like a typing error: "&${doubts}))`;

const differences = placeColumns.map((column) => working(at(column, workingRows.differs)));
const typed = `COUNT(B${rows.altimeter}:D${rows.gust})`;
export const typedVerdict = `=IFERROR(IF(AND(${differences.map((place) => `${place}=""`).join(',')}),"OK","CHECK"),"UNKNOWN")`;
export const typedReason = `=IFERROR(IF(${typed}=0,"nothing is typed in the place of a report",IF(AND(${differences.map((place) => `${place}=""`).join(',')}),"what is typed agrees with the reports","differs from the report: "&TEXTJOIN("; ",TRUE,${placeColumns.map((column, index) => `IF(${differences[index] ?? ''}="","","${placeNames[column]} "&${differences[index] ?? ''})`).join(',')}))),"not computed")`;
