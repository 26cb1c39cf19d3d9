// The one place that words the codes of core: what the argument must be, and what it got. A file of its own, so that hosts
// which load everything at every call can leave it until something is wrong.
import { civilDateFromDayNumber, isoDate } from '../../core/civilDate';
import type { CoreError, CoreErrorCode, CoreErrorDetails } from '../../core/errors';
import { inWords } from './cellValues';
import { metarMustBe, pointInWords, positionMustBe, rounded } from './sharedWords';
import { zuluText } from './zuluText';

function tableOutside({ inputNumber, header, low, high, received }: CoreErrorDetails['table-outside'], input = `input_${inputNumber}`): string {
  const beyond = received < low ? `${rounded(low - received)} below` : `${rounded(received - high)} above`;
  const limits = low === high ? rounded(low) : `${rounded(low)} to ${rounded(high)}`;
  return `${input} must be ${limits}, the "${header}" rows of the table; got ${rounded(received)}, ${beyond} the table, and nothing is extrapolated`;
}

function tableBadCell({ needed, header, row, received }: CoreErrorDetails['table-bad-cell']): string {
  const what = needed === 'number' ? 'a number' : 'a distance of more than 0';
  return `table must hold ${what} in column "${header}"; got ${inWords(received)} (row ${row} of table)`;
}

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
};

const envelopeReasons: Record<CoreErrorDetails['envelope-bad']['reason'], string> = {
  'too-few-points': 'points, which do not make an area',
  'no-area': 'points that lie on one line',
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

const metarReasons: Record<CoreErrorDetails['metar-unreadable']['reason'], string> = {
  'not-a-report': 'which does not begin as a report does',
  forecast: 'which is a forecast',
  time: 'which has no day and time behind its station, such as 011955Z',
  several: 'which is more than one report',
  nil: 'which reports nothing',
  group: 'which holds a group that cannot be read',
  'dew-point': 'whose dew point is above its temperature',
};

const alongInWords = (headwindKnots: number): string => `${rounded(Math.abs(headwindKnots))} ${headwindKnots < 0 ? 'from behind' : 'ahead'}`;

const wordings: { readonly [Code in CoreErrorCode]: (detail: CoreErrorDetails[Code]) => string } = {
  'outside-range': ({ quantity, unit, low, high, received }) =>
    `${publicName(quantity)} must be ${rounded(low)} to ${rounded(high)} ${unit}; got ${rounded(received)}`,
  'table-outside': (detail) => tableOutside(detail),
  'table-missing-point': ({ point }) => `table must hold a whole grid; got no row for ${pointInWords(point)}`,
  'table-repeated-row': ({ firstRow, secondRow }) => `table must give each grid point once; got it in row ${firstRow} and again in row ${secondRow} of table`,
  'table-bad-cell': tableBadCell,
  'table-header-unknown': ({ wanted, headers }) => `wanted must be one of the table's headers ${headers.map((header) => `"${header}"`).join(', ')}; got "${wanted}"`,
  'table-header-bad': ({ reason, headers, inputs }) =>
    `table must have ${inputs} input ${inputs === 1 ? 'column' : 'columns'} first, then columns of answers; got a header that ${headerReasons[reason]} (${headers.map((header) => `"${header}"`).join(', ')})`,
  'table-none-fits': ({ header, lowest, least, available }) =>
    `available must be at least ${rounded(least)}, the factored distance of the lowest "${header}" row, ${rounded(lowest)}; got ${rounded(available)}`,
  'table-not-rising': ({ header, low, high, lowDistance, highDistance }) =>
    `table must give distances that rise with "${header}", or no single limit exists; got ${rounded(lowDistance)} at ${rounded(low)} and ${rounded(highDistance)} at ${rounded(high)}`,
  'correction-too-large': ({ name, percent }) => `corrections must leave some of the distance; got ${rounded(percent)} percent from "${name}"`,
  'factor-not-published': ({ operation, condition, published }) => `condition must have a published factor for ${operation}: ${published.join(', ')}; got ${condition}`,
  'factor-has-no-amount': ({ condition, received }) => `amount must be left out with ${condition}, which is there or not; got ${rounded(received)}`,
  'nothing-given': ({ what }) => `${what} must have at least one filled row; got none`,
  'envelope-bad': ({ reason, points }) => `envelope must be at least 3 points in order round the limits; got ${points} ${envelopeReasons[reason]}`,
  'hold-side-off-radial': ({ point, radial }) =>
    `where must name a compass point within 45 degrees of the radial or its reciprocal; got ${rounded(point)} degrees on the ${rounded(radial)} radial`,
  'hold-limit-is-mach': ({ highestFeet, mach, received }) =>
    `altitude_ft must be ${rounded(highestFeet)} feet or less under these rules, since above it the limit is Mach ${mach} and not an indicated airspeed; got ${rounded(received)}`,
  'shift-nowhere': ({ arm }) => `to_arm must be another arm than from_arm, or nothing is shifted; got ${rounded(arm)} for both`,
  'ballast-at-target': ({ arm }) => `at_arm must be away from target_arm, since weight there cannot bring the centre of gravity to it; got ${rounded(arm)} for both`,
  'balance-out-of-reach': ({ change, needed, weight, targetArm }) =>
    `target_arm must be within reach of the weight there is; got ${rounded(targetArm)}, for which ${rounded(needed)} would have to be ${change} of a whole of ${rounded(weight)}`,
  'fuel-table-bad': ({ reason, quantity }) =>
    `fuel_table must give each quantity once, none below zero; got ${rounded(quantity)}${reason === 'repeated' ? ' more than once' : ''}`,
  'fuel-outside-table': ({ quantity, low, high }) =>
    `fuel_table must reach every quantity from fuel_start to fuel_end; got rows for ${rounded(low)} to ${rounded(high)} and a quantity of ${rounded(quantity)}, and nothing is extrapolated`,
  'fuel-too-little': ({ onBoard, needed }) => `tanks must hold the taxi and trip fuel, ${rounded(needed)}; got ${rounded(onBoard)} on board`,
  'hold-wind-too-strong': ({ windKnots, trueAirspeedKnots }) =>
    `wind_kt must be less than the true airspeed of ${rounded(trueAirspeedKnots)} knots, or one leg of the hold is never flown; got ${rounded(windKnots)}`,
  'clearance-passed': ({ nowMinutes, clearanceMinutes, minutesAgo }) =>
    `expect_further_clearance_z must be within 12 hours after now_z (${zuluText(nowMinutes)}); got ${zuluText(clearanceMinutes)}, which is ${rounded(minutesAgo)} minutes before it`,
  'no-weight': ({ total }) => `weights must add up to more than zero; got a total of ${rounded(total)}`,
  'cycle-unknown': ({ identifier, cyclesInYear }) => `id must name a cycle of its year, which has ${cyclesInYear}; got "${identifier}"`,
  'days-out-of-order': ({ earlier, later, earlierDay, laterDay }) =>
    `${publicName(later)} must be on or after ${publicName(earlier)} (${isoDate(civilDateFromDayNumber(earlierDay))}); got ${isoDate(civilDateFromDayNumber(laterDay))}`,
  'privilege-not-given': ({ medicalClass, privilege, rules }) => `class must be one that gives the privilege ${privilege} under ${rules} rules; got "${medicalClass}"`,
  'nothing-to-share-by': ({ parts }) => `parts must have at least one above 0; got ${parts} of 0`,
  'no-direction': () => 'latitude_2 and longitude_2 must be another point than the first, since a course to the same point has no direction; got the same point',
  'position-unreadable': ({ text, reason }) => `text must be ${positionMustBe}; got ${inWords(text)}, ${positionReasons[reason]}`,
  'wind-too-strong': ({ windKnots, trueAirspeedKnots, headwindKnots, crosswindKnots }) =>
    `wind_kt must leave some headway along the course at a true airspeed of ${rounded(trueAirspeedKnots)} knots; got ${rounded(windKnots)}, which is ${alongInWords(headwindKnots)} and ${rounded(Math.abs(crosswindKnots))} across`,
  'level-repeated': ({ table, altitudeFeet }) => `${table} must give each altitude once; got ${rounded(altitudeFeet)} feet again`,
  'levels-too-few': ({ table, lowest, highest, neededLow, neededHigh }) =>
    `${table} must reach from ${rounded(neededLow)} to ${rounded(neededHigh)} feet, since nothing is extrapolated; got ${rounded(lowest)} to ${rounded(highest)} feet`,
  'schedule-too-low': ({ highest, needed }) => `schedule must have a row at ${rounded(needed)} feet or above, where the descent begins; got ${rounded(highest)} feet as its highest`,
  'schedule-too-fast': ({ knots, altitudeFeet, highestKnots }) =>
    `schedule must stay below the speed of sound, which is ${rounded(highestKnots)} knots indicated at ${rounded(altitudeFeet)} feet; got ${rounded(knots)}`,
  'model-years': ({ first, last, received }) => `date must be ${first} to ${last}, the years of the magnetic model; got ${received}`,
  'metar-unreadable': ({ text, reason, group }) => `text must be ${metarMustBe}; got ${inWords(text)}, ${metarReasons[reason]}${group === '' ? '' : ` (${inWords(group)})`}`,
  'winds-too-strong': ({ altitudeFeet, trueAirspeedKnots, headwindKnots, crosswindKnots }) =>
    `winds must leave some headway along the course at a true airspeed of ${rounded(trueAirspeedKnots)} knots; got ${alongInWords(headwindKnots)} and ${rounded(Math.abs(crosswindKnots))} across at ${rounded(altitudeFeet)} feet`,
};

/** What core could not answer, as the body of a sentence. */
export const wordCore = <Code extends CoreErrorCode>(error: CoreError<Code>): string => wordings[error.code](error.detail);

/** Why an aircraft table has no answer, the inputs going by these names; for a brief, which shows it as a reason. */
export function tableReason(error: CoreError, inputNames: readonly string[]): string {
  if (error.code !== 'table-outside') return wordCore(error);
  const detail = error.detail as CoreErrorDetails['table-outside'];
  return tableOutside(detail, inputNames[detail.inputNumber - 1]);
}
