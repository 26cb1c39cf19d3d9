// Invented from end to end: three fields and their runways, for the Fields sheet. No field has these names, positions or stations.
import type { Content } from '../build';

/** Field, station, latitude, longitude, elevation, remark. */
export const demoFields: readonly (readonly Content[])[] = [
  ['Marrowfield', 'ZZXA', -30.25, -15.5, 420, undefined],
  ['Tansy Ridge', 'ZZXB', -31.4, -13.9, 1310, undefined],
  ['Sorrel Plain', 'ZZXC', -31.85, -14.55, 690, undefined],
];

/** Field, runway, direction, take-off available, landing available, length in, surface, slope. */
export const demoRunways: readonly (readonly Content[])[] = [
  ['Marrowfield', '03', 30, 3400, 3300, 'ft', 'grass, dry', -0.5],
  ['Marrowfield', '21', 210, 3400, 3400, 'ft', 'grass, dry', 0.5],
  ['Tansy Ridge', '08', 80, 3600, 3600, 'ft', 'grass, dry', 0],
  ['Tansy Ridge', '26', 260, 3600, 3600, 'ft', 'grass, dry', 0],
  ['Sorrel Plain', '12', undefined, 1250, 1250, 'm', 'paved, dry', 0],
  ['Sorrel Plain', '30', undefined, 1250, 1250, 'm', 'paved, dry', 0],
];
