// Why an item of the Trip sheet could not be worked out: what it needs and has not, or what is out of its range, by name.
import { on } from '../build';
import { usableFuel } from '../manual/sheet';
import { balanceCells, sheetNames } from '../places';
import { landingFactorCell, takeoffFactorCell } from '../start/settings';
import { workingRows } from '../working/rows';
import { tripRows as rows, type PlaceColumn } from './rows';

interface Need {
  readonly place: string;
  readonly label: string;
  /** Formula text: that the number there cannot be; and what it must be. */
  readonly wrong?: string;
  readonly must?: string;
  /** A word may stand there instead of the number. */
  readonly orWord?: string;
}

const joined = (texts: readonly string[]): string => `TEXTJOIN(", ",TRUE,${texts.join(',')})`;

/** Formula text: the names of the cells that hold no number; where all do, those that are out of their range, with what they must be. */
function lacking(needs: readonly Need[], see: string): string {
  const isMissing = ({ place, orWord }: Need): string =>
    orWord === undefined ? `NOT(ISNUMBER(${place}))` : `IF(ISNUMBER(${place}),FALSE,IFERROR(${place}<>"${orWord}",TRUE))`;
  const named = ({ place, label }: Need): string =>
    `IFERROR(IF(${place}="","${label}","${label} ("&${place}&" is no number)"),"${label} (an error)")`;
  const missing = joined(needs.map((need) => `IF(${isMissing(need)},${named(need)},"")`));
  const wrong = joined(
    needs.flatMap(({ place, label, wrong: condition, must }) =>
      condition === undefined ? [] : [`IF(ISNUMBER(${place}),IF(${condition},"${label} of "&${place}&" must be ${must ?? ''}",""),"")`],
    ),
  );
  return `"not computed: "&IF(${missing}<>"","missing "&${missing},IF(${wrong}<>"",${wrong},"an entry is out of its range"))&", see ${see}"`;
}

const between = (place: string, label: string, least: number, most: number, unit: string): Need => ({
  place,
  label,
  wrong: `OR(${place}<${least},${place}>${most})`,
  must: `${least} to ${most}${unit === '' ? '' : ` ${unit}`}`,
});
const atLeast = (place: string, label: string, least: number): Need => ({ place, label, wrong: `${place}<${least}`, must: `${least} or more` });
const aboveNothing = (place: string, label: string): Need => ({ place, label, wrong: `${place}<=0`, must: 'more than 0' });

const working = (row: number, column: PlaceColumn): string => on(sheetNames.working, `${column}${row}`);
const balance = (place: string): string => on(sheetNames.balance, place);
const see = 'Trip working';

/** Blank it counts for nothing; what stands there must be a number that can be. */
const mayBeBlank = (place: string, label: string, most: number, unit: string): Need => ({
  ...between(place, label, 0, most, unit),
  orWord: '',
});

export const fuelLacks = (climbFuel: string): string =>
  lacking(
    [
      between(`B${rows.timeEnRoute}`, 'time en route', 0, 2880, 'minutes'),
      aboveNothing(working(workingRows.flow, 'B'), 'fuel flow'),
      atLeast(balance(balanceCells.fuelOnBoard), 'fuel on board', 0),
      aboveNothing(usableFuel.slice(1), 'usable fuel'),
      atLeast(balance(balanceCells.taxiFuel), 'taxi fuel', 0),
      { ...atLeast(climbFuel, 'climb fuel, extra', 0), orWord: '' },
      mayBeBlank(`B${rows.contingency}`, 'contingency', 100, '%'),
      mayBeBlank(`B${rows.holding}`, 'planned holding', 2880, 'minutes'),
      mayBeBlank(`B${rows.reserve}`, 'reserve required', 2880, 'minutes'),
      mayBeBlank(`D${rows.timeEnRoute}`, 'time to the alternate', 2880, 'minutes'),
    ],
    see,
  );

const air = (column: PlaceColumn): readonly Need[] => {
  const setting = working(workingRows.altimeter, column);
  return [
    between(working(workingRows.elevation, column), 'elevation', -5000, 30000, 'ft'),
    {
      place: setting,
      label: 'altimeter setting',
      wrong: `AND(OR(${setting}<25,${setting}*10>325),OR(${setting}<850,${setting}>1090))`,
      must: '850 to 1090 hPa or 25 to 32.5 inHg',
    },
    between(working(workingRows.temperature, column), 'temperature', -90, 60, 'C'),
  ];
};
const runwayLacks = (column: PlaceColumn, weight: string, factor: string): string => {
  const [wind, gust] = [working(workingRows.wind, column), working(workingRows.gust, column)];
  return lacking(
    [
      aboveNothing(weight, `weight (${sheetNames.balance})`),
      between(working(workingRows.runway, column), 'runway direction', 0, 360, 'degrees'),
      atLeast(working(workingRows.available, column), 'length available', 0),
      ...air(column),
      { ...between(working(workingRows.windFrom, column), 'wind from', 0, 360, 'degrees or VRB'), orWord: 'VRB' },
      between(wind, 'wind', 0, 200, 'kt'),
      {
        place: gust,
        label: 'gust',
        wrong: `OR(${gust}<${wind},${gust}>200)`,
        must: 'the whole speed of the gust, as much as the wind or more',
        orWord: '',
      },
      between(factor, 'safety factor', 1, 5, ''),
    ],
    see,
  );
};
export const takeoffLacks = runwayLacks('B', balance(balanceCells.takeoffWeight), takeoffFactorCell);
export const landingLacks = runwayLacks('C', balance(balanceCells.landingWeight), landingFactorCell);
export const climbLacks = lacking(
  [
    aboveNothing(balance(balanceCells.takeoffWeight), `weight (${sheetNames.balance})`),
    ...air('B'),
    between(`B${rows.gradient}`, 'climb gradient', 0, 3000, 'ft/NM'),
    between(`B${rows.climbSpeed}`, 'groundspeed in the climb', 1, 400, 'kt'),
  ],
  see,
);

/** Formula text: why the weather of a place could not be judged. */
export const weatherLacks = (column: PlaceColumn): string => {
  const limits = working(workingRows.limitsSaid, 'B');
  const missing = joined([
    `IF(ISNUMBER(${working(workingRows.fieldRow, column)}),"","field")`,
    `IF(ISNUMBER(${working(workingRows.moment, column)}),"","time of use")`,
    'IF(ISNUMBER(as_of),"","as_of on Start")',
  ]);
  return `"not computed: "&IF(${limits}<>"",${limits},IF(${missing}<>"","missing "&${missing},"a time or a report cannot be read, see ${see}"))`;
};

/** The lines of Weight and balance below its stations and its fuel tell which list is not whole. */
const told = (place: string): string => `IF(OR(${balance(place)}="",LEFT(${balance(place)},5)="Every"),"",${balance(place)}&" ")`;
const fuelNeeded = [
  [balance(balanceCells.taxiFuel), 'taxi fuel'],
  [balance(balanceCells.tripFuel), 'trip fuel'],
  [balance(balanceCells.fuelWeightEach), 'weight of one unit of fuel'],
] as const;
const fuelMissing = fuelNeeded.map(([place, label]) => `IF(ISNUMBER(${place}),"","${label} is missing. ")`).join('&');
const [onBoard, taxi, trip] = [balanceCells.fuelOnBoard, balanceCells.taxiFuel, balanceCells.tripFuel].map(balance);
const fuelTooLittle = `IFERROR(IF(${taxi ?? ''}+${trip ?? ''}>${onBoard ?? ''},"Taxi and trip burn "&ROUNDUP(${taxi ?? ''}+${trip ?? ''},1)&", only "&ROUNDDOWN(${onBoard ?? ''},1)&" is on board. ",""),"")`;
export const loadingLacks = `"not computed: "&${fuelMissing}&${told(balanceCells.stationsSaid)}&${told(balanceCells.fuelSaid)}&${fuelTooLittle}&"see ${sheetNames.balance}"`;
