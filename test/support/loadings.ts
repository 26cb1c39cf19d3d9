// Makers of loadings for the tests of points, burn and remedy.
import { envelopeFromPoints } from '../../core/loading/balance';
import type { LoadingCase, LoadingPoint, LoadingResult, Station } from '../../core/loading/flight';
import type { Tank } from '../../core/loading/tanks';

export const station = (name: string, weight: number, arm: number, lateralArm?: number): Station => ({ name, weight, arm, lateralArm });
export const level = (arm: number, upTo = 200): Tank['arms'] => [
  { quantity: 0, arm },
  { quantity: upTo, arm },
];
export const tank = (name: string, quantity: number, order: number, arms: Tank['arms'], lateralArm?: number): Tank => ({
  name,
  quantity,
  order,
  arms,
  lateralArm,
});
export const box = (low: number, high: number, bottom: number, top: number) =>
  envelopeFromPoints(
    [
      [low, bottom],
      [low, top],
      [high, top],
      [high, bottom],
    ].map(([arm = 0, weight = 0]) => ({ arm, weight })),
  );
export const noLimits = { zeroFuel: undefined, takeoff: undefined, landing: undefined };

export const plain: LoadingCase = {
  stations: [station('empty', 1000, 40), station('front', 200, 42), station('rear', 100, 70), station('bags', 40, 95)],
  tanks: [tank('wing', 30, 1, level(48), 0)],
  weightPerUnit: 6,
  taxiFuel: 2,
  tripFuel: 18,
  envelope: box(38, 50, 900, 1700),
  limits: noLimits,
  lateralLimits: undefined,
};
export const pointsOf = ({ takeoff, zeroFuel, landing, onTheWay }: LoadingResult): LoadingPoint[] => [takeoff, zeroFuel, landing, onTheWay];
