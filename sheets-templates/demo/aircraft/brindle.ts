// Brindle Two: invented, in kilograms, millimetres, metres and litres.
import { cruiseRows } from './brindleCruise';
import { climbRows, landingRows, takeoffRows } from './brindleTables';
import type { InventedAircraft } from './inventedAircraft';

export const brindle: InventedAircraft = {
  name: 'Brindle Two',
  list: ['kg', 'mm', 'm', 'L', 0.72, 98, 12, undefined, 720, 700, -60, 60, 98, 19, 2.5, 1.2],
  stations: [
    ['empty aircraft, oil', 445, 310, 2],
    ['left seat', 78, 420, -230],
    ['right seat', 70, 420, 230],
    ['baggage', 9, 1150, 0],
  ],
  tanks: [['main', 70, 1, 0]],
  tankArms: [
    ['main', 0, 690],
    ['main', 98, 720],
  ],
  corners: [
    ['normal', 320, 480],
    ['normal', 320, 640],
    ['normal', 350, 720],
    ['normal', 470, 720],
    ['normal', 470, 480],
    ['normal', 320, 480],
  ],
  corrections: [
    ['take-off', 'headwind', -10, 10, undefined],
    ['take-off', 'tailwind', 10, 2, undefined],
    ['landing', 'headwind', -10, 10, undefined],
    ['landing', 'tailwind', 12, 2, undefined],
  ],
  takeoff: takeoffRows,
  landing: landingRows,
  climb: climbRows,
  cruise: cruiseRows,
};
