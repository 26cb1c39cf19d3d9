// What the next flight of the day reads of this one, under words by which it is looked up: so a formula of the next flight goes on reading the
// right cell when a later version puts it elsewhere. Built-in formulas alone, of what is typed and of the way: no call of ours is waited for but the way's.
import { tankRows } from '../balance/rows';
import { cell, line, on, type Field } from '../build';
import type { FormatName } from '../look';
import { wordOfAircraft } from '../manual/sheet';
import { balanceCells, sheetNames, tripCells } from '../places';
import type { TemplateCell } from '../template';
import { tripRows as trip } from '../trip/rows';
import { climbExtra } from './climbExtra';
import { onTrip } from './places';
import { workingRows as rows } from './rows';

/** The name of the range in which a flight is told: words, then values. */
export const toldName = 'flight_told';
export const toldWords = {
  from: 'from',
  to: 'to',
  takeoff: 'take-off, UTC',
  landing: 'landing, UTC',
  fuelAtStart: 'fuel at start',
  takenOn: 'fuel taken on before it',
  fuelLeft: 'fuel at landing',
  minutes: 'minutes flown to its landing',
} as const;
export type Told = keyof typeof toldWords;

const order = Object.keys(toldWords) as Told[];
const rowOf = (told: Told): number => rows.told.first + order.indexOf(told);
const tankRow = (index: number): number => rows.told.first + order.length + index;
const balance = (place: string): string => on(sheetNames.balance, place);
const numberOr = (place: string, blank: string): string => `IF(ISNUMBER(${place}),${place},IF(${place}="",${blank},""))`;
const both = (...places: readonly string[]): string => `AND(${places.map((place) => `ISNUMBER(${place})`).join(',')})`;

const [start, left] = [`B${rowOf('fuelAtStart')}`, `B${rowOf('fuelLeft')}`];
const burned = `${balance(balanceCells.taxiFuel)}+${on(sheetNames.trip, tripCells.tripFuel)}`;
const climb = numberOr(climbExtra, '0');
const fuelLeft = `${start}-(${burned})-${climb}`;

const formulas: Readonly<Record<Told, readonly [formula: string, format: FormatName, note?: string]>> = {
  from: [onTrip('B', trip.field) + '&""', 'text'],
  to: [onTrip('C', trip.field) + '&""', 'text'],
  takeoff: [`IF(ISNUMBER(B${rows.moment}),B${rows.moment},"")`, 'dateTime'],
  landing: [`IF(ISNUMBER(C${rows.moment}),C${rows.moment},"")`, 'dateTime'],
  fuelAtStart: [`IF(ISNUMBER(${balance(balanceCells.fuelOnBoard)}),${balance(balanceCells.fuelOnBoard)},"")`, 'one'],
  takenOn: [numberOr(onTrip('B', trip.takenOn), '0'), 'one'],
  fuelLeft: [
    `IF(${both(start, balance(balanceCells.taxiFuel), on(sheetNames.trip, tripCells.tripFuel), climb)},IF(${fuelLeft}<0,"",${fuelLeft}),"")`,
    'one',
    'On board less taxi, climb and trip; blank where one of them is not known, or where more is burned than is there.',
  ],
  minutes: [
    `IF(${both(onTrip('B', trip.timeEnRoute), numberOr(onTrip('B', trip.beforeMinutes), '0'))},${onTrip('B', trip.timeEnRoute)}+${numberOr(onTrip('B', trip.beforeMinutes), '0')},"")`,
    'whole',
  ],
};

const tanks = (letter: string): string => balance(`$${letter}$${tankRows.first - 1}:$${letter}$${tankRows.last}`);
const ofAircraft = `${tanks('A')},aircraft_in_use`;

/**
 * What a tank holds at landing: those of lower order are emptied first, those of one order give the same quantity each (quantitiesAfter in
 * core/loading/tanks.ts). Where one of three or more would run dry before the others, nothing is said.
 */
function leftIn(tankAt: number): string {
  const [quantity, burnOrder] = [balance(`C${tankAt}`), balance(`D${tankAt}`)];
  const together = `${ofAircraft},${tanks('D')},${burnOrder}`;
  const [several, there] = [`COUNTIFS(${together})`, `SUMIFS(${tanks('C')},${together})`];
  const before = `SUMIFS(${tanks('C')},${ofAircraft},${tanks('D')},"<"&${burnOrder})`;
  const given = `MIN(${there},MAX(0,${start}-${left}-${before}))`;
  const dry = `COUNTIFS(${together},${tanks('C')},"<"&(${given})/${several})`;
  return `IF(${dry}=0,${quantity}-(${given})/${several},IF(${several}=2,IF(${quantity}<(${given})/2,0,${there}-(${given})),""))`;
}

const tankCells = Array.from({ length: tankRows.last - tankRows.first + 1 }, (_, index) => tankRows.first + index).flatMap((tankAt, index) => {
  const mine = `${balance(`A${tankAt}`)}=aircraft_in_use`;
  const known = both(start, left, balance(`C${tankAt}`), balance(`D${tankAt}`));
  return line(
    tankRow(index),
    1,
    [`=IFERROR(IF(${mine},"in "&${balance(`B${tankAt}`)},""),"")`, 'computedText'],
    [
      `=IFERROR(IF(AND(${mine},${known}),${leftIn(tankAt)},""),"")`,
      'computed',
      { format: 'one', ...(index === 0 && { note: 'At landing: the tanks burned in their order; those of one order together.' }) },
    ],
    [`=IF(A${tankRow(index)}="","",${wordOfAircraft('fuel in')})`, 'unit'],
  );
});

const unitOf = (told: Told): string => {
  if (told === 'fuelAtStart' || told === 'fuelLeft' || told === 'takenOn') return `=${wordOfAircraft('fuel in')}`;
  return told === 'minutes' ? 'minutes' : '';
};

export const toldCells: TemplateCell[] = [
  ...line(rows.toldHeading, 1, ['14  What the next flight of the day reads', 'heading'], ...Array.from({ length: 5 }, (): Field => ['', 'heading'])),
  cell(rows.toldHelp, 1, 'As planned. "Add a flight" in the panel begins the next flight with it; Flights of the day lists it.', 'subtitle'),
  ...order.flatMap((told) => {
    const [formula, format, note] = formulas[told];
    return line(
      rowOf(told),
      1,
      [toldWords[told], 'label'],
      [`=IFERROR(${formula},"")`, format === 'text' ? 'computedText' : 'computed', { format, ...(note !== undefined && { note }) }],
      [unitOf(told), 'unit'],
    );
  }),
  ...tankCells,
];
