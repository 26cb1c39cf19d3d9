// The sheet function that reads a position as people write it.
import { readPosition } from '../../core/navigation/position';
import { mapping, result } from '../registry/declaration';
import { text } from '../registry/readText';
import { positionMustBe } from '../registry/sharedWords';

export const POSITION_READ = mapping({
  name: 'POSITION_READ',
  subject: 'Position and course',
  summary: 'Latitude and longitude in decimal degrees from a position as it is written on charts, in publications or flight plans.',
  parameters: {
    text: text({ mustBe: positionMustBe, help: 'Position in one cell, latitude and longitude, with the letters N, S, E, W or with signs.' }),
  },
  results: {
    latitude: result('degrees', 'Latitude, south negative.'),
    longitude: result('degrees', 'Longitude, west negative.'),
  },
  sources: ['iso-6709', 'icao-4444'],
  notes:
    'Reads decimal degrees, degrees and minutes, and degrees, minutes and seconds; letters before or behind the figures, in either order; or signs, latitude first. Without gaps a latitude has two digits of degrees and a longitude three. A comma may be the decimal mark where there is no point. What could be read in two ways is refused, never guessed.',
  examples: [
    { arguments: ['N31 24 36 W041 12 18'], gives: [[31.41, -41.205]], source: 'By hand: 24 min 36 s is 0.41 degrees, 12 min 18 s is 0.205 degrees' },
    { arguments: ['3124.6N04112.3W'], gives: [[31.41, -41.205]], source: 'By hand: 24.6 min is 0.41 degrees, 12.3 min is 0.205 degrees' },
    { arguments: ['-31.41, 41.205'], gives: [[-31.41, 41.205]], source: 'As written: south and east' },
  ],
  compute: ({ text: written }) => {
    const { latitudeDegrees, longitudeDegrees } = readPosition(written);
    return { latitude: latitudeDegrees, longitude: longitudeDegrees };
  },
});
