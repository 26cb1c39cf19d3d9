// Keys of the columns of the aircraft list.
import { columnsFrom } from '../keys';

export const listKeys = columnsFrom(
  1,
  'aircraft',
  'weightIn',
  'armIn',
  'distanceIn',
  'fuelIn',
  'fuelWeight',
  'usableFuel',
  'crosswindShown',
  'mostZeroFuelWeight',
  'mostTakeoffWeight',
  'mostLandingWeight',
  'lateralLimitLeft',
  'lateralLimitRight',
  'cruiseTrueAirspeed',
  'cruiseFuelFlow',
  'taxiFuel',
  'climbFuel',
  'momentsIn',
  'envelopeIn',
  'leadingEdge',
  'chord',
);
