// Invented from end to end: a route between the invented fields, its own points, and the air over it. No point has this name or position.
import type { Content } from '../build';

/** From, to, altitude; typed true airspeed, fuel flow and power; highest ground, clearance. */
export const demoLegs: readonly (readonly Content[])[] = [
  ['Marrowfield', 'Fennel Weir', 5500, undefined, undefined, undefined, 1850, undefined],
  [undefined, 'Quince Bend', 5500, undefined, undefined, undefined, 3120, undefined],
  [undefined, 'Tansy Ridge', 4500, 118, undefined, undefined, 2640, 1500],
];

/** Point, position. */
export const demoPoints: readonly (readonly Content[])[] = [
  ['Fennel Weir', 'S30 42 W015 02'],
  ['Quince Bend', 'S31 04 12 W014 18 30'],
];

/** Altitude, wind from, wind, temperature, place. */
export const demoAir: readonly (readonly Content[])[] = [
  [0, 240, 8, 21, undefined],
  [3000, 250, 14, 15, undefined],
  [6000, 265, 22, 9, undefined],
  [9000, 270, 30, 3, undefined],
];
