// The one place that words the codes of core: what the argument must be, and what it got. A file of its own, so that hosts
// which load everything at every call can leave it until something is wrong.
import { civilDateFromDayNumber, isoDate } from '../../core/basics/civilDate';
import type { CoreError, CoreErrorCode, CoreErrorDetails, GridCoordinate } from '../../core/basics/errors';
import { inWords, quoted, shortened } from './cellValues';
import { firstFew, metarMustBe, metarReasons, pointInWords, positionMustBe, rounded, tafMustBe, tafReasons } from './sharedWords';
import { dayZuluText, zuluText } from './zuluText';

/** The curve that does not reach, where each has points of its own. */
const onCurve = (along: readonly GridCoordinate[]): string => (along.length === 0 ? '' : ` on its curve of ${pointInWords(along)}`);

function tableOutside({ inputNumber, header, low, high, received, along = [], role }: CoreErrorDetails['table-outside']): string {
  if (role === 'from')
    return `table must reach from what its curve is entered with, ${rounded(low)} to ${rounded(high)}; got ${rounded(received)}, and nothing is extrapolated`;
  const input = `input_${inputNumber}`;
  const beyond = received < low ? `${rounded(low - received)} below` : `${rounded(received - high)} above`;
  if (low === high)
    return `${input} must be ${rounded(low)}, since the table is for ${quoted(header)} ${rounded(low)} only; got ${rounded(received)}, at which nothing can be read`;
  return `${input} must be ${rounded(low)} to ${rounded(high)}, the ${quoted(header)} rows of the table${onCurve(along)}; got ${rounded(received)}, ${beyond} the table, and nothing is extrapolated`;
}

/** A row by its inputs, which its owner can look for, and by its place in the table. */
const rowInWords = (point: readonly GridCoordinate[], row: number): string =>
  point.length === 0 ? ` (row ${row} of table)` : ` at ${pointInWords(point)} (row ${row} of table)`;

function tableBadCell({ needed, header, row, point, received }: CoreErrorDetails['table-bad-cell']): string {
  const what = needed === 'number' ? 'a number' : 'a distance of more than 0';
  return `table must hold ${what} in column ${quoted(header)}; got ${inWords(received)}${rowInWords(point, row)}`;
}

const maxHeaders = 20;
const headersInWords = (headers: readonly string[]): string => firstFew(headers.map(quoted), maxHeaders);

const unitSuffixes: readonly (readonly [RegExp, string])[] = [
  [/_nautical_miles$/, '_nm'],
  [/_celsius$/, '_c'],
  [/_feet$/, '_ft'],
  [/_knots$/, '_kt'],
  [/_degrees$/, '_deg'],
];

/** The public argument name of a quantity named in core: dewPointCelsius is dew_point_c. */
function publicName(quantity: string): string {
  const snake = quantity.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
  return unitSuffixes.reduce((name, [suffix, short]) => name.replace(suffix, short), snake);
}

const headerReasons: Record<CoreErrorDetails['table-header-bad']['reason'], string> = {
  'too-few-columns': 'has no column left for an answer',
  blank: 'has a column with no header',
  repeated: 'has the same header twice',
  'wanted-is-input': 'has the wanted column among its inputs',
  chain: 'has "from" beside more or fewer than one input, which a further curve of a chain cannot be read by',
  'no-input': 'has no input that is known: weight, pressure altitude, density altitude, temperature, ISA deviation or headwind',
};

const envelopeReasons: Record<CoreErrorDetails['envelope-bad']['reason'], string> = {
  'too-few-points': 'points, which do not make an area',
  'no-area': 'points that lie on one line',
  'no-weight': 'points of which one weighs nothing, so that its moment has no arm',
  'self-crossing': 'points whose outline crosses itself, so they are out of order',
};

const positionReasons: Record<CoreErrorDetails['position-unreadable']['reason'], string> = {
  'not-two': 'which does not fall into one latitude and one longitude',
  letters: 'whose letters are not one N or S and one E or W, both before or both behind their figures',
  'sign-and-letter': 'which has a sign as well as a letter',
  ambiguous: 'which can be read in more than one way without the letters N or S and E or W',
  'latitude-form': 'whose latitude is not written in a way that can be read',
  'longitude-form': 'whose longitude is not written in a way that can be read',
  'latitude-range': 'whose latitude is beyond 90 degrees, or whose minutes or seconds are not below 60',
  'longitude-range': 'whose longitude is beyond 180 degrees, or whose minutes or seconds are not below 60',
};

const alongInWords = (headwindKnots: number): string => `${rounded(Math.abs(headwindKnots))} ${headwindKnots < 0 ? 'from behind' : 'ahead'}`;

const wordings: { readonly [Code in CoreErrorCode]: (detail: CoreErrorDetails[Code]) => string } = {
  'outside-range': ({ quantity, unit, low, high, received }) =>
    `${publicName(quantity)} must be ${rounded(low)} to ${rounded(high)} ${unit}; got ${rounded(received)}`,
  'table-outside': (detail) => tableOutside(detail),
  'table-missing-point': ({ point }) => `table must hold a whole grid; got no row for ${pointInWords(point)}`,
  'table-repeated-row': ({ point, firstRow, secondRow }) =>
    `table must give each grid point once; got ${pointInWords(point)} in row ${firstRow} and again in row ${secondRow} of table`,
  'table-bad-cell': tableBadCell,
  'table-header-unknown': ({ wanted, headers }) => `wanted must be one of the table's headers ${headersInWords(headers)}; got ${quoted(wanted)}`,
  'table-header-bad': ({ reason, headers, inputs }) =>
    `table must have ${inputs} input ${inputs === 1 ? 'column' : 'columns'} first, then columns of answers; got a header that ${headerReasons[reason]} (${headersInWords(headers)})`,
  'table-inputs-differ': ({ inputs, count }) =>
    `input_1 and those behind it must be ${inputs.length}, for ${inputs.map(quoted).join(', ')}; got ${count}`,
  'table-blocks-differ': ({ header, one, other }) =>
    `table must give ${quoted(header)} by the same inputs, in the same units, in all its blocks; got ${headersInWords(one)} and ${headersInWords(other)}`,
  'table-no-input': ({ input }) =>
    `table must have ${quoted(input)} among its inputs, or it has no greatest one; got no such column with numbers in it`,
  'counted-twice': ({ name, what }) => `corrections must leave out the ${what}, which the table takes itself; got ${quoted(name)}`,
  'correction-needs-roll': ({ name, headers }) =>
    `table must have a column "ground roll", since ${quoted(name)} is a part of it; got ${headersInWords(headers)}`,
  'table-none-fits': ({ header, lowest, least, available }) =>
    `available must be at least ${rounded(least)}, or it is too short at any ${quoted(header)} of the table: even ${rounded(lowest)} needs that with the factor; got ${rounded(available)}`,
  'table-not-rising': ({ header, low, high, lowDistance, highDistance }) =>
    `table must give distances that rise with ${quoted(header)}, or no single limit exists; got ${rounded(lowDistance)} at ${rounded(low)} and ${rounded(highDistance)} at ${rounded(high)}`,
  'correction-too-large': ({ name, percent }) => `corrections must leave some of the distance; got ${rounded(percent)} percent from ${quoted(name)}`,
  'factor-not-published': ({ operation, condition, published }) =>
    `condition must have a published factor for ${operation}: ${published.join(', ')}; got ${condition}`,
  'factor-has-no-amount': ({ condition, received }) => `amount must be left out with ${condition}, which is there or not; got ${rounded(received)}`,
  'nothing-given': ({ what }) => `${what} must have at least one filled row; got none`,
  'envelope-bad': ({ reason, points }) => `envelope must be at least 3 points in order round the limits; got ${points} ${envelopeReasons[reason]}`,
  'hold-side-off-radial': ({ point, radial }) =>
    `where must name a compass point within 45 degrees of the radial or its reciprocal; got ${rounded(point)} degrees on the ${rounded(radial)} radial`,
  'hold-limit-is-mach': ({ highestFeet, mach, received }) =>
    `altitude_ft must be ${rounded(highestFeet)} feet or less under these rules, since above it the limit is Mach ${mach} and not an indicated airspeed; got ${rounded(received)}`,
  'shift-nowhere': ({ arm }) => `to_arm must be another arm than from_arm, or nothing is shifted; got ${rounded(arm)} for both`,
  'ballast-at-target': ({ arm }) =>
    `at_arm must be away from target_arm, since weight there cannot bring the centre of gravity to it; got ${rounded(arm)} for both`,
  'balance-out-of-reach': ({ change, needed, weight, targetArm }) =>
    `target_arm must be within reach of the weight there is; got ${rounded(targetArm)}, for which ${rounded(needed)} would have to be ${change} of a whole of ${rounded(weight)}`,
  'fuel-table-bad': ({ reason, quantity }) =>
    `fuel_table must give each quantity once, none below zero; got ${rounded(quantity)}${reason === 'repeated' ? ' more than once' : ''}`,
  'fuel-outside-table': ({ quantity, low, high }) =>
    `fuel_table must reach every quantity from fuel_start to fuel_end; got rows for ${rounded(low)} to ${rounded(high)} and a quantity of ${rounded(quantity)}, and nothing is extrapolated`,
  'fuel-too-little': ({ onBoard, needed }) => `tanks must hold the taxi and trip fuel, ${rounded(needed)}; got ${rounded(onBoard)} on board`,
  'hold-wind-too-strong': ({ windKnots, trueAirspeedKnots }) =>
    `wind_kt must be less than the true airspeed of ${rounded(trueAirspeedKnots)} knots, or one leg of the hold is never flown; got ${rounded(windKnots)}`,
  'hold-leg-within-turn': ({ nauticalMiles, leastNauticalMiles }) =>
    `leg must end at least ${rounded(Math.ceil(leastNauticalMiles * 10) / 10)} NM from the fix at this speed and wind, since the turn outbound alone leads so far; got ${rounded(nauticalMiles)} NM ("${rounded(nauticalMiles)} NM inbound" asks for an inbound leg of that length)`,
  'clearance-passed': ({ nowMinutes, clearanceMinutes, minutesAgo }) =>
    `expect_further_clearance_z must be within 12 hours after now_z (${zuluText(nowMinutes)}); got ${zuluText(clearanceMinutes)}, which is ${rounded(minutesAgo)} minutes before it`,
  'never-weighed': ({ rows, later }) =>
    `kinds must have a weighing on or before as_of; got none among ${rows} rows${later === 0 ? '' : `, ${later} of them later`}`,
  'no-weight': ({ total }) => `weights must add up to more than zero; got a total of ${rounded(total)}`,
  'cycle-unknown': ({ identifier, cyclesInYear }) => `id must name a cycle of its year, which has ${cyclesInYear}; got ${quoted(identifier)}`,
  'days-out-of-order': ({ earlier, later, earlierDay, laterDay }) =>
    `${publicName(later)} must be on or after ${publicName(earlier)} (${isoDate(civilDateFromDayNumber(earlierDay))}); got ${isoDate(civilDateFromDayNumber(laterDay))}`,
  'privilege-not-given': ({ medicalClass, privilege, rules }) =>
    `class must be one that gives the privilege ${privilege} under ${rules} rules; got "${medicalClass}"`,
  'nothing-to-share-by': ({ parts }) => `parts must have at least one above 0; got ${parts} of 0`,
  'no-direction': () =>
    'latitude_2 and longitude_2 must be another point than the first, since a course to the same point has no direction; got the same point',
  'position-unreadable': ({ text, reason }) => `text must be ${positionMustBe}; got ${inWords(text)}, ${positionReasons[reason]}`,
  'wind-too-strong': ({ windKnots, trueAirspeedKnots, headwindKnots, crosswindKnots }) =>
    `wind_kt must leave some headway along the course at a true airspeed of ${rounded(trueAirspeedKnots)} knots; got ${rounded(windKnots)}, which is ${alongInWords(headwindKnots)} and ${rounded(Math.abs(crosswindKnots))} across`,
  'level-repeated': ({ table, altitudeFeet }) => `${table} must give each altitude once; got ${rounded(altitudeFeet)} feet again`,
  'levels-too-few': ({ table, lowest, highest, neededLow, neededHigh }) =>
    `${table} must reach from ${rounded(neededLow)} to ${rounded(neededHigh)} feet, since nothing is extrapolated; got ${rounded(lowest)} to ${rounded(highest)} feet`,
  'schedule-too-low': ({ highest, needed }) =>
    `schedule must have a row at ${rounded(needed)} feet or above, where the descent begins; got ${rounded(highest)} feet as its highest`,
  'schedule-too-fast': ({ knots, altitudeFeet, highestKnots }) =>
    `schedule must stay below the speed of sound, which is ${rounded(highestKnots)} knots indicated at ${rounded(altitudeFeet)} feet; got ${rounded(knots)}`,
  'model-years': ({ first, last, received }) => `date must be ${first} to ${last}, the years of the magnetic model; got ${received}`,
  'metar-unreadable': ({ text, reason, group }) =>
    `text must be ${metarMustBe}; got ${inWords(text)}, which ${metarReasons[reason]}${group === '' ? '' : ` (${inWords(group)})`}`,
  'taf-not-covering': ({ from, to, wanted }) =>
    `time_z must be within the forecast, ${dayZuluText(from)} to ${dayZuluText(to)}; got ${dayZuluText(wanted)}`,
  'taf-unreadable': ({ text, reason }) => `text must be ${tafMustBe}; got ${inWords(text)}, which ${tafReasons[reason]}`,
  'place-unknown': ({ name }) =>
    `a place of the route must be a name in the lists of places, or a position with its letters or signs; got ${quoted(name)}`,
  'pilot-unclear': ({ chosen, names }) =>
    `pilot must be one of those whom the log names (${firstFew(names.map(quoted), 8)}); got ${chosen === undefined ? 'none' : quoted(chosen)}`,
  'place-twice': ({ name }) => `each place must have one position; got ${quoted(name)} with two`,
  'place-without-position': ({ name }) => `each place flown to must have a position that can be read; got none for ${quoted(name)}`,
  'place-without-elevation': ({ name }) => `the climb and the descent must know the elevation of the field; got none for ${quoted(name)}`,
  'route-gap': ({ begins, ended }) => `each leg must begin where the one before it ends, at ${quoted(ended)}; got ${quoted(begins)}`,
  'leg-without-start': () => 'each leg must have a place to begin at; got none',
  'winds-mixed': () => 'winds must name a place in each of their rows, or in none; got both',
  'figure-missing': ({ what, table }) =>
    table === undefined ? `${what} must be typed or read in a table of the aircraft; got neither` : `the ${table} table must have ${what}; got none`,
  'no-climb': ({ altitudeFeet, rateFeetPerMinute }) =>
    `the aircraft must climb all the way; got ${rounded(rateFeetPerMinute)} feet per minute at ${rounded(altitudeFeet)} feet`,
  'route-too-short': ({ altitudeFeet }) =>
    `the level must be reached before the descent begins; got ${rounded(altitudeFeet)} feet, for which the route is too short`,
  'times-out-of-order': ({ name, after, time, before, most }) =>
    `${name}_z must be within ${rounded(most / 60)} hours after ${after}_z (${zuluText(before)}); got ${zuluText(time)}`,
  'winds-too-strong': ({ altitudeFeet, trueAirspeedKnots, headwindKnots, crosswindKnots }) =>
    `winds must leave some headway along the course at a true airspeed of ${rounded(trueAirspeedKnots)} knots; got ${alongInWords(headwindKnots)} and ${rounded(Math.abs(crosswindKnots))} across at ${rounded(altitudeFeet)} feet`,
};

/** What core could not answer, as the body of a sentence. */
export const wordCore = <Code extends CoreErrorCode>(error: CoreError<Code>): string => wordings[error.code](error.detail);

/** A table of the aircraft as its owner knows it: which one, and the units of its weights and distances, '' where not told. */
export interface NamedTable {
  readonly name: 'take-off table' | 'landing table' | 'climb table';
  readonly weightUnit: string;
  readonly lengthUnit: string;
}

const inUnit = (value: number, unit: string): string => (unit === '' ? rounded(value) : `${rounded(value)} ${unit}`);

/** What a brief calls an input, and its unit where the column gives none. */
function inputNamed(
  { header, role, unit }: Pick<CoreErrorDetails['table-outside'], 'header' | 'role' | 'unit'>,
  table: NamedTable,
): readonly [string, string] {
  const usual: Readonly<Record<string, string>> = {
    weight: table.weightUnit,
    'pressure altitude': 'ft',
    'density altitude': 'ft',
    temperature: 'deg C',
    'isa deviation': 'deg C',
    headwind: 'kt',
  };
  if (role === 'from') return ['what its next curve is entered with,', unit ?? ''];
  const name = role === 'isa deviation' ? 'ISA deviation' : (role ?? shortened(header));
  return [name, unit ?? usual[role ?? ''] ?? ''];
}

/** A table for one weight alone may hold below it too, which only its owner can say. */
const lighterToo = (role: string | undefined, received: number, low: number): string =>
  role === 'weight' && received < low ? '; where its figures are to be used below that weight too, write "up to" below its heading weight' : '';

function outsideTable(detail: CoreErrorDetails['table-outside'], table: NamedTable): string {
  const { low, high, received, along = [], role } = detail;
  const [name, unit] = inputNamed(detail, table);
  if (low === high)
    return `your ${table.name} is for ${name} ${inUnit(low, unit)} only${onCurve(along)}; at ${inUnit(received, unit)} nothing can be read${lighterToo(role, received, low)}`;
  const beyond = received < low ? `${inUnit(low - received, unit)} below` : `${inUnit(received - high, unit)} above`;
  return `your ${table.name} is for ${name} ${rounded(low)} to ${inUnit(high, unit)}${onCurve(along)}; ${inUnit(received, unit)} is ${beyond} it, and nothing is extrapolated`;
}

const noneFits = ({ header, lowest, least, available }: CoreErrorDetails['table-none-fits'], table: NamedTable): string => {
  const [name, unit] = inputNamed({ header, role: header.trim().toLowerCase() }, table);
  return `too short at any ${name} in your ${table.name}: even ${inUnit(lowest, unit)} needs ${inUnit(Math.ceil(least), table.lengthUnit)}, and ${inUnit(available, table.lengthUnit)} is available`;
};

/** Why a table of the aircraft has no answer; for a brief, which shows it as a reason. */
export function tableReason(error: CoreError, table: NamedTable): string {
  const detail: unknown = error.detail;
  if (error.code === 'table-none-fits') return noneFits(detail as CoreErrorDetails['table-none-fits'], table);
  if (error.code === 'table-outside') return outsideTable(detail as CoreErrorDetails['table-outside'], table);
  if (error.code === 'table-no-input') return `your ${table.name} gives no ${(detail as CoreErrorDetails['table-no-input']).input}`;
  // The other sentences begin with the argument "table".
  return wordCore(error).replace(/^table must /, `your ${table.name} must `);
}
