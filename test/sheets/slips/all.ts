// All the slips: those of the flight itself, and those of the places and lists it rests on.
import { cardSlips, dateSlips, fuelSlips, mixedSlips, typedOverSlips } from './flight';
import { loadingSlips } from './loading';
import { alternateSlips, fieldSlips, listSlips, tableSlips } from './places';
import type { Slip } from './slip';
import { typedWeatherSlips, weatherSlips, windSlips } from './weather';

export const slipsOfFlight: readonly Slip[] = [...loadingSlips, ...fuelSlips, ...dateSlips, ...typedOverSlips, ...cardSlips, ...mixedSlips];
export const slipsOfPlaces: readonly Slip[] = [
  ...weatherSlips,
  ...windSlips,
  ...typedWeatherSlips,
  ...fieldSlips,
  ...tableSlips,
  ...listSlips,
  ...alternateSlips,
];
export const slips: readonly Slip[] = [...slipsOfFlight, ...slipsOfPlaces];
