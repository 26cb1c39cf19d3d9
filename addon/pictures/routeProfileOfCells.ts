// From the rows of ROUTE_LEGS and the legs with ROUTE_LEVELS beside them to the route from the side, or why nothing is drawn.
import { numberFromCell } from '../../functions/registry/readNumber';
import { Missing, orEmpty } from './missing';
import { partsOfLegs, partPlaces } from './routeOfCells';
import { routeProfilePicture, type ProfileLeg } from './routeProfile';
import type { Cells } from './sheetPictures';
import type { Sheet } from './svg';

export interface RouteProfileCells {
  readonly parts: Cells;
  /** The legs from their number to the spare height. */
  readonly levels: Cells;
  readonly departure: Cells;
}

/** Columns of the legs, counted from 0. */
const places = { leg: 0, level: 3, ground: 7, spare: 12 } as const;

function groundOf(row: readonly unknown[]): ProfileLeg['ground'] {
  const [level, highestFeet, spare] = [places.level, places.ground, places.spare].map((place) => numberFromCell(row[place]));
  return level === undefined || highestFeet === undefined || spare === undefined ? undefined : { highestFeet, wantedFeet: level - spare };
}

function legOf(number: number, parts: Cells, levels: Cells): ProfileLeg {
  const value = (row: readonly unknown[], place: number): number => {
    const found = numberFromCell(row[place]);
    if (found === undefined) throw new Missing(`leg ${number} is not worked out`);
    return found;
  };
  const level = levels.find((row) => numberFromCell(row[places.leg]) === number) ?? [];
  const last = parts[parts.length - 1] ?? [];
  return {
    number,
    to: String(last[partPlaces.to] ?? ''),
    levelFeet: value(level, places.level),
    parts: parts.map((row) => ({ nauticalMiles: value(row, partPlaces.miles), toFeet: value(row, partPlaces.altitude) })),
    ground: groundOf(level),
  };
}

export const routeProfileOfCells = ({ parts, levels, departure }: RouteProfileCells, size: Pick<Sheet, 'width' | 'height'>): string =>
  orEmpty({ ...size, title: 'Route from the side' }, () => {
    const legs = partsOfLegs(parts).map(({ number, rows }) => legOf(number, rows, levels));
    if (legs.length === 0) throw new Missing('no leg yet');
    const climbs = parts[0]?.[partPlaces.part] === 'climb';
    const elevation = numberFromCell(departure[0]?.[0]);
    if (climbs && elevation === undefined) throw new Missing('the elevation of the departure is not known');
    return routeProfilePicture({ fromFeet: climbs ? (elevation ?? 0) : (legs[0]?.levelFeet ?? 0), legs }, size);
  });
