// A flight as it was flown: its times across midnight, and what it cost.
import { CoreError } from '../basics/errors';
import { minutesPerDay } from '../basics/units';

/** In the order in which they come. */
export type RecordedTime = 'off_block' | 'take_off' | 'landing' | 'on_block';

export interface FlightRecord {
  readonly blockMinutes: number;
  readonly flightMinutes: number;
  /** After 0000 UTC of the day on which the aircraft began to move; over 1440 on the next. */
  readonly takeOffMinutes: number;
  readonly landingMinutes: number;
}

/** Nobody taxis longer; a time that seems so stands in the wrong order. @source common-practice */
const longestTaxiMinutes = 240;
const longestFlightMinutes = 1200;

/**
 * Block time is from first movement to rest, flight time here from take-off to landing. Each time is the next of its name after the one before it.
 * @source part-fcl, FCL.010 "flight time" and cfr-1-1, "flight time" (both from first movement to rest, the block time here), from memory.
 */
export function flightRecord(offBlock: number, takeOff: number, landing: number, onBlock: number): FlightRecord {
  const next = (before: number, time: number, most: number, name: RecordedTime, after: RecordedTime): number => {
    const wait = (((time - before) % minutesPerDay) + minutesPerDay) % minutesPerDay;
    if (wait > most) throw new CoreError('times-out-of-order', { name, after, time, before, most });
    return before + wait;
  };
  const up = next(offBlock, takeOff, longestTaxiMinutes, 'take_off', 'off_block');
  const down = next(up, landing, longestFlightMinutes, 'landing', 'take_off');
  const on = next(down, onBlock, longestTaxiMinutes, 'on_block', 'landing');
  return { blockMinutes: on - offBlock, flightMinutes: down - up, takeOffMinutes: up, landingMinutes: down };
}
