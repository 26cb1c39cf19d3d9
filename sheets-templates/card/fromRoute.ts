// What the card takes from the Route where the trip goes by it: groundspeed before the descent, course and winds. What is typed here goes first,
// and is looked at where it differs.
import { cell, on } from '../build';
import { routeCells, sheetNames } from '../places';
import type { TemplateCell } from '../template';
import { tripRows } from '../trip/rows';
import { read, rows, winds } from './descentLists';

const ofRoute = (place: string): string => on(sheetNames.route, place);
const byRoute = `${on(sheetNames.trip, `B${tripRows.timesFrom}`)}="route"`;
const [typedSpeed, typedCourse] = ['$B$9', '$B$28'];
const typedWinds = read(winds, 'E', 'G');
const noneTyped = `COUNTA(${typedWinds})=0`;
const [routeSpeed, routeCourse, routeWinds] = [routeCells.lastGroundspeed, routeCells.lastCourse, routeCells.winds].map(ofRoute) as [
  string,
  string,
  string,
];
/** Of winds at several places the card cannot tell which is meant. */
const severalPlaces = `COUNTA(${ofRoute(routeCells.windPlaces)})>0`;
const windsByRoute = `AND(${byRoute},${noneTyped},NOT(${severalPlaces}))`;
const orOfRoute = (typed: string, route: string): string => `IF(AND(${typed}="",${byRoute}),${route},${typed})`;

/** Formula texts: what the two calls of the descent are given. */
export const used = {
  groundspeed: orOfRoute(typedSpeed, routeSpeed),
  course: orOfRoute(typedCourse, routeCourse),
  winds: `IF(${windsByRoute},${routeWinds},${typedWinds})`,
} as const;

/** A slip in one of the two, or a plan of another flight. @source common-practice */
const [speedMayDiffer, courseMayDiffer] = [10, 10];
const bothNumbers = (one: string, other: string, then: string): string => `IF(AND(ISNUMBER(${one}),ISNUMBER(${other})),${then},"")`;
const speedDiffers = bothNumbers(
  typedSpeed,
  routeSpeed,
  `IF(ABS(${typedSpeed}-${routeSpeed})>${speedMayDiffer},"groundspeed typed "&ROUND(${typedSpeed},0)&" kt, the Route has "&ROUND(${routeSpeed},0),"")`,
);
const courseDiffers = bothNumbers(
  typedCourse,
  routeCourse,
  `IF(ABS(MOD(${typedCourse}-${routeCourse}+540,360)-180)>${courseMayDiffer},"course typed "&TEXT(${typedCourse},"000")&", the last leg has "&TEXT(${routeCourse},"000"),"")`,
);
const windColumns = ['E', 'F', 'G'].map((letter) => rows(winds, letter));
const [routeAltitudes, routeFrom, routeKnots] = ['K', 'L', 'M'].map((letter) => ofRoute(routeCells.winds.replace(/[A-Z]+/g, letter)));
const sameWinds = `SUMPRODUCT(--(COUNTIFS(${routeAltitudes},${windColumns[0]},${routeFrom},${windColumns[1]},${routeKnots},${windColumns[2]})>0))`;
const windsDiffer = `IF(${noneTyped},"",IF(${sameWinds}<COUNT(${windColumns[0]}),"winds are typed here that are not those of the Route",""))`;

/** Formula text: how what is typed here differs from the Route; nothing where the trip does not go by it. */
export const differsFromRoute = `IF(${byRoute},IFERROR(TEXTJOIN("; ",TRUE,${speedDiffers},${courseDiffers},${windsDiffer}),"what the Route has is not known"),"")`;

const origin = (typed: string, route: string, words: string): string =>
  `IF(${typed}<>"","typed",IF(${byRoute},IF(ISNUMBER(${route}),"${words}","not known on the Route"),"not typed"))`;

/** One line each: the value used and where it comes from. */
export const usedCells: TemplateCell[] = [
  cell(
    7,
    8,
    `="groundspeed "&IF(ISNUMBER(${used.groundspeed}),ROUND(${used.groundspeed},0)&" kt, ","")&${origin(typedSpeed, routeSpeed, 'before the descent on the Route')}`,
    'computedText',
    {
      note: 'Where the trip goes by the route, a blank groundspeed, course or list of winds is taken from there. What is typed goes first; where it differs the descent is CHECK.',
    },
  ),
  cell(
    8,
    8,
    `="course "&IF(ISNUMBER(${used.course}),TEXT(${used.course},"000")&" true, ","")&${origin(typedCourse, routeCourse, 'last leg of the Route')}`,
    'computedText',
  ),
  cell(
    9,
    8,
    `="winds "&IF(NOT(${noneTyped}),"typed",IF(${byRoute},IF(${severalPlaces},"of several places on the Route: type those here","of the Route"),"not typed"))`,
    'computedText',
  ),
];
