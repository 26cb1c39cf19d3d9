// Quillon Four: invented, in pounds, inches, feet and US gallons.
import { cruiseRows } from './quillonCruise';
import type { InventedAircraft } from './inventedAircraft';
import { climbRows, landingRows, takeoffRows } from './quillonTables';

export const quillon: InventedAircraft = {
  name: 'Quillon Four',
  list: ['lb', 'in', 'ft', 'US gal', 6, 60, 15, 2500, 2650, 2650, undefined, undefined, 124, 10.5, 1.4, 0.8],
  stations: [
    ['empty aircraft, oil', 1702, 84.2, undefined],
    ['front seats', 345, 86.5, undefined],
    ['rear seats', 160, 118, undefined],
    ['baggage', 45, 142, undefined],
  ],
  tanks: [
    ['left wing', 24, 1, undefined],
    ['right wing', 24, 1, undefined],
  ],
  tankArms: [
    ['left wing', 0, 94],
    ['left wing', 30, 95.5],
    ['right wing', 0, 94],
    ['right wing', 30, 95.5],
  ],
  corners: [
    ['normal', 82, 1650],
    ['normal', 82, 2150],
    ['normal', 85.5, 2650],
    ['normal', 92, 2650],
    ['normal', 92, 1650],
    ['normal', 82, 1650],
    ['utility', 82, 1650],
    ['utility', 82, 2150],
    ['utility', 83.4, 2350],
    ['utility', 88, 2350],
    ['utility', 88, 1650],
    ['utility', 82, 1650],
  ],
  corrections: [
    ['take-off', 'headwind', -10, 12, undefined],
    ['take-off', 'tailwind', 10, 2, undefined],
    ['take-off', 'dry grass', 20, 1, undefined],
    ['take-off', 'slope, up', 5, 1, undefined],
    ['landing', 'headwind', -10, 12, undefined],
    ['landing', 'tailwind', 10, 2, undefined],
    ['landing', 'dry grass', 15, 1, undefined],
    ['landing', 'slope, down', 5, 1, undefined],
  ],
  takeoff: takeoffRows,
  landing: landingRows,
  climb: climbRows,
  cruise: cruiseRows,
};
