// What core throws: a code and the values that belong to it, never a sentence.
// functions/registry/wordError.ts is the one place that turns these into words for people.

/** One named coordinate of a grid point in an aircraft table. */
export interface GridCoordinate {
  readonly header: string;
  readonly value: number;
}

/** Every code core can throw, with the values that go with it. */
export interface CoreErrorDetails {
  /** A quantity left the range in which its formula holds; `quantity` is its core name, such as dewPointCelsius. */
  'outside-range': { readonly quantity: string; readonly unit: string; readonly low: number; readonly high: number; readonly received: number };
  /** An input lies beyond the table's own rows; `inputNumber` counts from 1. */
  'table-outside': {
    readonly inputNumber: number;
    readonly header: string;
    readonly low: number;
    readonly high: number;
    readonly received: number;
    /** Where curves have points of their own: the curve that does not reach. */
    readonly along?: readonly GridCoordinate[];
    /** The input of a brief by its name, and the unit of the column. */
    readonly role?: string;
    readonly unit?: string | undefined;
  };
  /** The table is read by other inputs than those given; `count` is how many were given. */
  'table-inputs-differ': { readonly inputs: readonly string[]; readonly count: number };
  /** Two blocks of one table give the same figure by different inputs. */
  'table-blocks-differ': { readonly header: string; readonly one: readonly string[]; readonly other: readonly string[] };
  /** The table has no such input, so that no limit of it can be found. */
  'table-no-input': { readonly input: string };
  /** The table takes the wind or the temperature itself, and a correction counts it again. */
  'counted-twice': { readonly name: string; readonly what: 'wind' | 'temperature' };
  /** A correction is a part of the ground roll, and the table does not give that. */
  'correction-needs-roll': { readonly name: string; readonly headers: readonly string[] };
  /** The table does not hold a grid point that the interpolation needs. */
  'table-missing-point': { readonly point: readonly GridCoordinate[] };
  /** Two rows of the table give the same grid point. Rows are places within the table, the header being row 1. */
  'table-repeated-row': { readonly point: readonly GridCoordinate[]; readonly firstRow: number; readonly secondRow: number };
  /** A cell of the table that the answer needs is blank, or is a distance that is not above 0. */
  'table-bad-cell': {
    readonly needed: 'number' | 'distance';
    readonly header: string;
    readonly row: number;
    /** The inputs that stand in that row, by which its owner finds it. */
    readonly point: readonly GridCoordinate[];
    readonly received: unknown;
  };
  /** The wanted column, or the number of input columns, does not fit the table's header. */
  'table-header-unknown': { readonly wanted: string; readonly headers: readonly string[] };
  /** The table's first columns must be the inputs; there are too few columns, or the header repeats or is blank. */
  'table-header-bad': {
    readonly reason: 'too-few-columns' | 'blank' | 'repeated' | 'wanted-is-input' | 'chain' | 'no-input';
    readonly headers: readonly string[];
    readonly inputs: number;
  };
  /** Even the lowest value of the input that the table holds asks for more distance than there is; `least` is what it asks, factor included. */
  'table-none-fits': { readonly header: string; readonly lowest: number; readonly least: number; readonly available: number };
  /** A low value of the input needs more distance than there is and a higher one less, so no single limit exists. */
  'table-not-rising': {
    readonly header: string;
    readonly low: number;
    readonly high: number;
    readonly lowDistance: number;
    readonly highDistance: number;
  };
  /** A correction that leaves nothing of the distance, or less. */
  'correction-too-large': { readonly name: string; readonly percent: number };
  /** Nobody published a factor for this condition in this operation. */
  'factor-not-published': { readonly operation: string; readonly condition: string; readonly published: readonly string[] };
  /** A condition that is there or not, given an amount. */
  'factor-has-no-amount': { readonly condition: string; readonly received: number };
  /** No row was given at all. */
  'nothing-given': { readonly what: string };
  /** A polygon that is not one closed area. */
  'envelope-bad': { readonly reason: 'too-few-points' | 'no-area' | 'self-crossing' | 'no-weight'; readonly points: number };
  /** A weighing record without a weighing on or before the day. */
  'never-weighed': { readonly rows: number; readonly later: number };
  /** Weights that add up to nothing have no centre of gravity. */
  'no-weight': { readonly total: number };
  /** Weight shifted from a place to the same place moves no centre of gravity. */
  'shift-nowhere': { readonly arm: number };
  /** No weight at the wanted centre of gravity can bring it there. */
  'ballast-at-target': { readonly arm: number };
  /** The wanted centre of gravity asks for more weight than the aircraft has. */
  'balance-out-of-reach': { readonly change: 'moved' | 'taken out'; readonly needed: number; readonly weight: number; readonly targetArm: number };
  /** A quantity that no row of a fuel table can have, or that two rows have. */
  'fuel-table-bad': { readonly reason: 'negative' | 'repeated'; readonly quantity: number };
  /** A quantity of fuel beyond the rows of the fuel table. */
  'fuel-outside-table': { readonly quantity: number; readonly low: number; readonly high: number };
  /** Taxi and trip burn more than the tanks hold. */
  'fuel-too-little': { readonly onBoard: number; readonly needed: number };
  /** A wind as fast as the aircraft or faster: one leg of the hold would never be flown. */
  'hold-wind-too-strong': { readonly windKnots: number; readonly trueAirspeedKnots: number };
  /** The turn outbound alone leads farther from the fix than the outbound leg may end. */
  'hold-leg-within-turn': { readonly nauticalMiles: number; readonly leastNauticalMiles: number };
  /** The clearance time lies more than half a day ahead, so it has passed. Minutes after 0000 UTC. */
  'clearance-passed': { readonly nowMinutes: number; readonly clearanceMinutes: number; readonly minutesAgo: number };
  /** The compass point to hold on lies across the radial, so neither end of the radial's line is meant. */
  'hold-side-off-radial': { readonly point: number; readonly radial: number };
  /** So high the published holding limit is a Mach number, and no indicated airspeed can stand for it. */
  'hold-limit-is-mach': { readonly highestFeet: number; readonly mach: number; readonly received: number };
  /** A cycle identifier that names no cycle, such as a fourteenth cycle in a year of thirteen. */
  'cycle-unknown': { readonly identifier: string; readonly cyclesInYear: number };
  /** Two days in the wrong order; `earlier` and `later` are their core names, such as firstDay. */
  'days-out-of-order': { readonly earlier: string; readonly later: string; readonly earlierDay: number; readonly laterDay: number };
  /** A medical certificate of this class does not give that privilege, so it has no duration for it. */
  'privilege-not-given': { readonly medicalClass: string; readonly privilege: string; readonly rules: string };
  /** A cost with nobody whose part is above zero. */
  'nothing-to-share-by': { readonly parts: number };
  /** Two points so placed that the asked direction does not exist (the same point, or a pole). */
  'no-direction': { readonly reason: 'same-point' };
  /** Text that is not one latitude and one longitude, or could be more than one. */
  'position-unreadable': {
    readonly text: string;
    readonly reason:
      'not-two' | 'letters' | 'sign-and-letter' | 'ambiguous' | 'latitude-form' | 'longitude-form' | 'latitude-range' | 'longitude-range';
  };
  /** Wind against which no heading makes headway along the course. */
  'wind-too-strong': {
    readonly windKnots: number;
    readonly trueAirspeedKnots: number;
    readonly headwindKnots: number;
    readonly crosswindKnots: number;
  };
  /** A table by altitude gives the same one twice. */
  'level-repeated': { readonly table: string; readonly altitudeFeet: number };
  /** The levels do not reach over all the heights needed, and nothing is extrapolated. */
  'levels-too-few': {
    readonly table: string;
    readonly lowest: number;
    readonly highest: number;
    readonly neededLow: number;
    readonly neededHigh: number;
  };
  /** No row of the schedule covers the start of the descent. */
  'schedule-too-low': { readonly highest: number; readonly needed: number };
  /** An indicated airspeed of the schedule that would be beyond the speed of sound at this height. */
  'schedule-too-fast': { readonly knots: number; readonly altitudeFeet: number; readonly highestKnots: number };
  /** Wind aloft against which no heading makes headway along the course at this height. */
  'winds-too-strong': {
    readonly altitudeFeet: number;
    readonly trueAirspeedKnots: number;
    readonly headwindKnots: number;
    readonly crosswindKnots: number;
  };
  /** A date outside the years a model of the Earth's field is made for. */
  'model-years': { readonly first: string; readonly last: string; readonly received: string };
  /** Text that is not one weather report, or holds a group that cannot be read. */
  'metar-unreadable': {
    readonly text: string;
    readonly reason: 'not-a-report' | 'forecast' | 'time' | 'several' | 'nil' | 'group' | 'dew-point';
    readonly group: string;
  };
  /** A time that the forecast does not reach. Minutes of UTC since the beginning of 1970. */
  'taf-not-covering': { readonly from: number; readonly to: number; readonly wanted: number };
  /** A place of a route that no list names, that lists name with two positions, or without one, or without the elevation that is wanted. */
  'place-unknown': { readonly name: string };
  /** A log names several pilots and none is chosen, or has no flight of the chosen one. */
  'pilot-unclear': { readonly chosen: string | undefined; readonly names: readonly string[] };
  'place-twice': { readonly name: string };
  'place-without-position': { readonly name: string };
  'place-without-elevation': { readonly name: string };
  /** A leg that does not begin where the one before it ends, or that has no beginning. */
  'route-gap': { readonly begins: string; readonly ended: string };
  'leg-without-start': Readonly<Record<string, never>>;
  /** Winds with a place in some rows and none in others. */
  'winds-mixed': Readonly<Record<string, never>>;
  /** A figure of the aircraft that is neither typed nor in a table; `table` is undefined where there is no such table. */
  'figure-missing': { readonly what: string; readonly table: string | undefined };
  /** A rate of climb that is no climb. */
  'no-climb': { readonly altitudeFeet: number; readonly rateFeetPerMinute: number };
  /** The descent would have to begin before this level is reached. */
  'route-too-short': { readonly altitudeFeet: number };
  /** A time that comes later after the one before it than it can; minutes after 0000 UTC. */
  'times-out-of-order': { readonly name: string; readonly after: string; readonly time: number; readonly before: number; readonly most: number };
  /** Text that is not one aerodrome forecast, or one whose times cannot be set on the calendar. */
  'taf-unreadable': { readonly text: string; readonly reason: 'not-a-forecast' | 'several' | 'nil' | 'cancelled' | 'validity' };
}

export type CoreErrorCode = keyof CoreErrorDetails;

export class CoreError<Code extends CoreErrorCode = CoreErrorCode> extends Error {
  readonly code: Code;
  readonly detail: CoreErrorDetails[Code];

  constructor(code: Code, detail: CoreErrorDetails[Code]) {
    super(code);
    this.name = 'CoreError';
    this.code = code;
    this.detail = detail;
  }
}
