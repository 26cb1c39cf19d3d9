// The air over a route: winds and temperatures by level at one place or several, of which the nearest to the middle of a leg counts.
import { standardTemperatureCelsius } from '../air/atmosphere';
import { windAt, windsAloft, type WindLevel, type WindsAloft, type WindVector } from '../air/windsAloft';
import { CoreError } from '../basics/errors';
import { byName, type Named } from '../basics/named';
import { geodesicLeg, type Position } from '../navigation/geodesy';
import { placeOf, type ListedPlace } from './places';

export interface AirLevel extends WindLevel {
  /** Undefined: wherever the route goes. */
  readonly place: Named | undefined;
  readonly temperatureCelsius: number | undefined;
}

/** The air of one place. */
export interface AirColumn {
  readonly name: string;
  readonly position: Position | undefined;
  readonly levelsFeet: readonly number[];
  readonly windAt: (altitudeFeet: number) => WindVector;
  /** Undefined where no temperature is given. */
  readonly temperatureAt: (altitudeFeet: number) => number | undefined;
}

export interface AirOfLeg extends AirColumn {
  /** From the middle of the leg; 0 where the air is the same everywhere. */
  readonly awayNauticalMiles: number;
}

/** Temperatures in a straight line between the levels that give one. @source common-practice, as for winds aloft */
function temperatures(levels: readonly AirLevel[]): (altitudeFeet: number) => number | undefined {
  const given = levels
    .flatMap(({ altitudeFeet, temperatureCelsius }) => (temperatureCelsius === undefined ? [] : [{ altitudeFeet, temperatureCelsius }]))
    .sort((one, other) => one.altitudeFeet - other.altitudeFeet);
  return (altitudeFeet) => {
    const above = given.find((level) => level.altitudeFeet >= altitudeFeet);
    const below = [...given].reverse().find((level) => level.altitudeFeet <= altitudeFeet);
    if (above === undefined || below === undefined) return undefined;
    if (above === below) return above.temperatureCelsius;
    const part = (altitudeFeet - below.altitudeFeet) / (above.altitudeFeet - below.altitudeFeet);
    return below.temperatureCelsius + (above.temperatureCelsius - below.temperatureCelsius) * part;
  };
}

function columnOf(name: string, position: Position | undefined, levels: readonly AirLevel[]): AirColumn {
  const winds: WindsAloft = windsAloft(levels);
  return {
    name,
    position,
    levelsFeet: winds.altitudesFeet,
    windAt: (altitudeFeet) => windAt(winds, altitudeFeet),
    temperatureAt: temperatures(levels),
  };
}

/** The air of each place. Rows with a place and rows without one cannot be told which of them holds. */
export function airColumns(levels: readonly AirLevel[], places: readonly ListedPlace[]): AirColumn[] {
  if (levels.length === 0) throw new CoreError('nothing-given', { what: 'winds' });
  const placed = levels.flatMap((level) => (level.place === undefined ? [] : [{ ...level, place: level.place }]));
  if (placed.length === 0) return [columnOf('', undefined, levels)];
  if (placed.length < levels.length) throw new CoreError('winds-mixed', {});
  return byName(placed, ({ place }) => place).map(({ named, things }) => columnOf(named.name, placeOf(named, places).position, things));
}

const away = (from: Position, { position }: AirColumn): number => {
  if (position === undefined) return 0;
  const same = from.latitudeDegrees === position.latitudeDegrees && from.longitudeDegrees === position.longitudeDegrees;
  return same ? 0 : geodesicLeg(from, position).distanceNauticalMiles;
};

/** @source common-practice: the wind of the nearest station of the forecast. */
export function nearestAir(columns: readonly AirColumn[], middle: Position): AirOfLeg {
  const [first, ...others] = columns.map((column) => ({ ...column, awayNauticalMiles: away(middle, column) }));
  if (first === undefined) throw new CoreError('nothing-given', { what: 'winds' });
  return others.reduce((nearest, one) => (one.awayNauticalMiles < nearest.awayNauticalMiles ? one : nearest), first);
}

/** How much warmer than standard; 0 where no temperature is given. */
export function aboveStandardCelsius({ temperatureAt }: AirColumn, altitudeFeet: number): number {
  const temperature = temperatureAt(altitudeFeet);
  return temperature === undefined ? 0 : temperature - standardTemperatureCelsius(altitudeFeet);
}
