// What stands on the sheets of a copied trip: which entries are emptied, and which read the flight before.
import { address } from '../../sheets-templates/addresses';
import { toldOf, toldOfTank } from '../../sheets-templates/day/places';
import type { SheetKey } from '../../sheets-templates/template';
import { areaOfCell } from './areas';
import { keysIn } from './keys';
import { ofLeg } from './newTrip';
import type { SheetSnapshot } from './snapshot';
import { cellsOf, eachRow, valueAt, type EntryWritten } from './tripEntries';

/** Nothing of the first flight may be left: its way, its weather, its descent and its hold. Loads, people and the pilot's own figures stay. */
const emptiedKeys: Partial<Record<SheetKey, readonly string[]>> = {
  trip: [...ofLeg, 'night', 'instrument', 'judgeDescent', 'judgeHold', 'fuelFlow', 'holding', 'metars.report', 'tafs.report', 'takenOn'],
  route: [
    ...['from', 'to', 'altitude', 'trueAirspeed', 'fuelFlow', 'power', 'highestGround', 'clearance'].map((column) => `legs.${column}`),
    ...['altitude', 'windFrom', 'wind', 'temperature', 'place'].map((column) => `air.${column}`),
    'sourceElevation',
  ],
  card: [
    ...['altitudeNow', 'groundspeedNow', 'trueCourse', 'aboveStandard'],
    ...['heading', 'side', 'turns', 'altitude', 'leg', 'windFrom', 'wind', 'temperature', 'now', 'clearance', 'fuel', 'flow', 'after'].map(
      (entry) => `hold.${entry}`,
    ),
    ...['fix', 'toGo', 'beforeBy', 'altitude', 'kind'].map((column) => `crossings.${column}`),
    ...['altitude', 'from', 'speed'].map((column) => `winds.${column}`),
  ],
};

/** The cells of an entry or of a column of a list, its heads left out. */
function placesUnder(sheet: SheetSnapshot, key: string): { readonly row: number; readonly column: number }[] {
  const head = keysIn(sheet)?.ranges.get(`${key.split('.')[0] ?? ''}.@head`);
  return cellsOf(sheet, [key])
    .flatMap(eachRow)
    .filter(({ row }) => head === undefined || row > head.row);
}

/** Filled cells alone. On the card a formula stays: it reads the copies, as a proposal for the entry. */
export function emptied(sheet: SheetSnapshot, key: SheetKey): EntryWritten[] {
  const holdsFormula = new Set(sheet.formulas.map(({ row, column }) => `${row}-${column}`));
  return (emptiedKeys[key] ?? [])
    .flatMap((entry) => placesUnder(sheet, entry))
    .filter(({ row, column }) => {
      const formula = holdsFormula.has(`${row}-${column}`);
      return key === 'card'
        ? !formula && valueAt(sheet, areaOfCell({ row, column })) !== ''
        : formula || valueAt(sheet, areaOfCell({ row, column })) !== '';
    })
    .map((place) => ({ sheet: sheet.name, ...place, content: '' }));
}

const before = { beforeTo: 'to', beforeLands: 'landing', beforeFuel: 'fuelLeft', beforeMinutes: 'minutes' } as const;

export function reading(trip: SheetSnapshot, told: string): EntryWritten[] {
  return Object.entries(before).flatMap(([key, word]) =>
    placesUnder(trip, key).map((place) => ({ sheet: trip.name, ...place, content: toldOf(told, word), formula: true as const })),
  );
}

export function tanksReading(balance: SheetSnapshot, told: string, aircraft: unknown): EntryWritten[] {
  const [names, tank, onBoard] = ['tanks.aircraft', 'tanks.tank', 'tanks.onBoard'].map((key) => cellsOf(balance, [key])[0]);
  if (names === undefined || tank === undefined || onBoard === undefined)
    throw new Error(`The tanks of "${balance.name}" were not found. Nothing was changed.`);
  return eachRow(names)
    .filter((place) => valueAt(balance, { ...names, ...place }) === aircraft)
    .map(({ row }) => ({
      sheet: balance.name,
      row,
      column: onBoard.column,
      content: toldOfTank(told, address(row, tank.column)),
      formula: true as const,
    }));
}
