// What the workbook holds of an aircraft. Both aircraft are invented from end to end; they differ in every unit, so
// that nothing can be wired to one of them.
import type { Content } from '../../build';

export type TableRow = readonly number[];

export interface InventedAircraft {
  readonly name: string;
  /** Values of the aircraft list, in the order of its headers after the name. */
  readonly list: readonly Content[];
  /** Station, weight, arm, lateral arm. */
  readonly stations: readonly (readonly Content[])[];
  /** Tank, quantity on board, place in the order of burning (the same place: burned together), lateral arm. */
  readonly tanks: readonly (readonly Content[])[];
  /** Tank, quantity in it, arm of that fuel. */
  readonly tankArms: readonly (readonly Content[])[];
  /** Envelope: category, arm, weight of each corner in order round the outline, the first again at the end. */
  readonly corners: readonly (readonly Content[])[];
  /** Corrections of the manual: for take-off or landing, name, percent, for each, amount (blank for wind, surface and slope). */
  readonly corrections: readonly (readonly Content[])[];
  readonly takeoff: readonly TableRow[];
  readonly landing: readonly TableRow[];
  readonly climb: readonly TableRow[];
  /** Power, pressure altitude, temperature, true airspeed, fuel flow; a row of words above them. */
  readonly cruise: readonly (readonly Content[])[];
}
