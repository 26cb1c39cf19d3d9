// Whether the lists of Weight and balance are whole for the aircraft in use, and the sentences that say what is not: a row that is not whole would
// take its weight out of a sum unseen.
import { filledOutside } from '../build';
import { aircraftNames } from '../manual/sheet';
import { tankArmColumns } from '../manual/tables';
import { cornerRows, read, stationRows, tankRows, weighingRows, type Rows } from './rows';

/**
 * Formula text: no filled row whose aircraft is missing, or not one of the list. Such a row belongs to nobody, and a name with a slip of
 * typing would take its weight out of the sum unseen.
 */
function owned(rows: Rows): string {
  const filled = ['B', 'C', 'D'].map((column) => `(${read(rows, column)}<>"")`).join('+');
  return `SUMPRODUCT((${read(rows, 'A')}<>"aircraft")*(${filled}>0)*ISNA(MATCH(${read(rows, 'A')},${aircraftNames},0)))=0`;
}

/** Rows of the aircraft in use with a number in each of these columns, as many as it has rows; every row owned. */
function whole(rows: Rows, ...columns: readonly string[]): string {
  const names = read(rows, 'A');
  const numbers = columns.map((column) => `*ISNUMBER(${read(rows, column)})`).join('');
  return `COUNTIF(${names},aircraft_in_use)>0,SUMPRODUCT((${names}=aircraft_in_use)${numbers})=COUNTIF(${names},aircraft_in_use),${owned(rows)}`;
}

const inUseRow = (rows: Rows): string => `(${read(rows, 'A')}=aircraft_in_use)`;
/** A station has an arm or, in its place, a moment. */
const placeless = `${inUseRow(stationRows)}*(ISNUMBER(${read(stationRows, 'D')})+ISNUMBER(${read(stationRows, 'F')})=0)`;
export const stationsWhole = `AND(${whole(stationRows, 'C')},SUMPRODUCT(${placeless})=0,${owned(weighingRows)})`;
/** Right below the tanks the sums begin, so that a row put in between is not read. */
export const tanksWhole = `AND(${whole(tankRows, 'C', 'D')},${filledOutside(tankRows, 'A', 'B', { below: tankRows.last + 1 })}=0)`;
/** A category of fewer than three corners is a typing error, and one of another category lacks what it took. */
const lone = `(${read(cornerRows, 'A')}<>"aircraft")*(${read(cornerRows, 'C')}<>"")*(COUNTIFS(${read(cornerRows, 'A')},${read(cornerRows, 'A')},${read(cornerRows, 'B')},${read(cornerRows, 'B')})<3)`;
const ofCategory = `(${read(cornerRows, 'A')}=aircraft_in_use)*(${read(cornerRows, 'B')}=$F$4)`;
const numbersOf = (column: string): string => `ISNUMBER(${read(cornerRows, column)})`;
const cornersWhole = `AND(${owned(cornerRows)},SUMPRODUCT(${lone})=0,SUMPRODUCT(${ofCategory}*${numbersOf('C')}*${numbersOf('D')})=SUMPRODUCT(${ofCategory}))`;

/** Formula text: "no weight in row 9, row 12", where any row has what the mask says. */
function rowsWhere(rows: Rows, mask: string, words: string): string {
  const found = `TEXTJOIN(", ",TRUE,FILTER("row "&ROW(${read(rows, 'A')}),${mask}))`;
  return `IFERROR("${words} "&${found},"")`;
}
const lacks = (rows: Rows, column: string, what: string): string =>
  rowsWhere(rows, `${inUseRow(rows)}*(ISNUMBER(${read(rows, column)})=FALSE)`, `no ${what} in`);
const ownerless = (rows: Rows): string =>
  rowsWhere(
    rows,
    `(${read(rows, 'A')}<>"aircraft")*((${['B', 'C', 'D'].map((column) => `(${read(rows, column)}<>"")`).join('+')})>0)*ISNA(MATCH(${read(rows, 'A')},${aircraftNames},0))`,
    'no aircraft of Manual tables in',
  );
/** Formula text: the rows that are not whole, each kind by its words. */
const inRows = (...kinds: readonly string[]): string => `TEXTJOIN("; ",TRUE,${kinds.join(',')})`;

const stationsLack = inRows(
  lacks(stationRows, 'C', 'weight'),
  rowsWhere(stationRows, placeless, 'no arm or moment in'),
  ownerless(stationRows),
  ownerless(weighingRows),
);
const stationsNotWhole = `"A station lacks a weight, an arm (or its moment), or a station or a weighing its aircraft of Manual tables ("&${stationsLack}&"): the points stay UNKNOWN. An empty seat weighs 0."`;
const tanksLack = inRows(lacks(tankRows, 'C', 'fuel on board'), lacks(tankRows, 'D', 'order'), ownerless(tankRows));
const tanksNotWhole = `"A tank lacks its fuel, its order or an aircraft of Manual tables, or stands below the list ("&${tanksLack}&"): the points stay UNKNOWN."`;
const cornersLack = inRows(
  lacks(cornerRows, 'C', 'arm'),
  lacks(cornerRows, 'D', 'weight'),
  ownerless(cornerRows),
  rowsWhere(cornerRows, lone, 'fewer than three of the category in'),
);
const cornersNotWhole = `"A corner lacks its arm, its weight or an aircraft of Manual tables, or its category has fewer than three ("&${cornersLack}&"): the points stay UNKNOWN."`;

const envelopeThere = `COUNTIFS(${read(cornerRows, 'A')},aircraft_in_use,${read(cornerRows, 'B')},$F$4)>0`;
const noEnvelope = '"No envelope named "&$F$4&" for this aircraft in section 4: the points stay UNKNOWN."';
/** Formula text: the tanks of the aircraft in use for which Manual tables has no arm. */
const armless = `IFERROR(TEXTJOIN(", ",TRUE,FILTER(${read(tankRows, 'B')},(${read(tankRows, 'A')}=aircraft_in_use)*ISNA(MATCH(${read(tankRows, 'B')},FILTER(${tankArmColumns.tank},${tankArmColumns.aircraft}=aircraft_in_use),0)))),"")`;
const armlessSaid = `"No fuel arm for "&${armless}&": add it in section 6 of Manual tables. The points stay UNKNOWN."`;

/**
 * Formula text: the tanks of the aircraft in use with more fuel than their arms reach, or with less than nothing. Row by row, since not every
 * engine counts by a comparison with a whole column; a row that was taken away leaves the rest unsaid, and the points UNKNOWN all the same.
 */
function tankBeyondArms(row: number): string {
  const arms = (quantity: string): string =>
    `COUNTIFS(${tankArmColumns.aircraft},$A$${row},${tankArmColumns.tank},$B$${row},${tankArmColumns.quantity},${quantity})=0`;
  // One row alone is of a tank of constant arm: it reaches from nothing to what is usable.
  const several = `COUNTIFS(${tankArmColumns.aircraft},$A$${row},${tankArmColumns.tank},$B$${row})>1`;
  const beyond = `OR($C$${row}<0,${arms(`">="&$C$${row}`)},AND(${several},${arms('"<=0"')}))`;
  return `IF(AND($A$${row}=aircraft_in_use,ISNUMBER($C$${row})),IF(${beyond},$C$${row}&" in "&$B$${row},""),"")`;
}
const tankRowNumbers = Array.from({ length: tankRows.last - tankRows.first + 1 }, (_, index) => tankRows.first + index);
const beyondArms = `IFERROR(TEXTJOIN(", ",TRUE,${tankRowNumbers.map(tankBeyondArms).join(',')}),"")`;
const beyondSaid = `"The fuel arms in section 6 of Manual tables do not reach "&${beyondArms}&": type no more than is usable, or their further rows. The points stay UNKNOWN."`;

/** Begins the line below the fuel where nothing is wrong with tanks and corners. */
const everyOne = 'Every';
/**
 * Formula text: the weight of a unit of fuel; words instead, which no brief takes for a number, while a list of entries is not whole: then the
 * fuel on board or the zero-fuel weight is not there, or the line below them tells what is wrong.
 */
export const fuelWeightOfWhole = `IF(AND(ISNUMBER(C34),ISNUMBER(C38),LEFT($A$41,${everyOne.length})="${everyOne}"),C37,"nothing: a row of stations, tanks or corners is not whole")`;

/** The line below the stations, blank where nothing is wrong. */
export const stationsSaid = `=IF(${stationsWhole},"",${stationsNotWhole})`;
/** The line below the fuel: the first that is wrong with tanks, corners, the envelope and the arms of the fuel. */
export const fuelSaid = `=IF(${tanksWhole},IF(${cornersWhole},IF(${envelopeThere},IF(${armless}="",IF(${beyondArms}="","${everyOne} tank and every corner belongs to an aircraft of Manual tables.",${beyondSaid}),${armlessSaid}),${noEnvelope}),${cornersNotWhole}),${tanksNotWhole})`;
