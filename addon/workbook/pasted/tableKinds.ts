// Which tables of an aircraft can be put in, and where their inputs and figures stand in Manual tables.
import type { InputRole } from '../../../core/manual/columns';
import type { TableUnit } from '../../../core/manual/tableUnits';

export interface FigureKind {
  /** As in the heading of its column. */
  readonly name: string;
  /** Key of its column. */
  readonly key: string;
  /** Headings of manuals that mean it. */
  readonly printed: RegExp;
}

export interface TableKind {
  /** Key of the list in Manual tables. */
  readonly list: 'takeoff' | 'landing' | 'climb';
  readonly title: string;
  readonly figures: readonly FigureKind[];
  readonly figureUnits: readonly TableUnit[];
}

const distances: readonly FigureKind[] = [
  { name: 'ground roll', key: 'groundRoll', printed: /\broll\b|\bgrnd\b|ground (?:run|distance)/i },
  { name: 'over 50 ft', key: 'over50Feet', printed: /\b50\b|\b15 ?m\b|obstacle|\btotal\b/i },
];

export const tableKinds: readonly TableKind[] = [
  { list: 'takeoff', title: 'Take-off distance', figures: distances, figureUnits: ['ft', 'm'] },
  { list: 'landing', title: 'Landing distance', figures: distances, figureUnits: ['ft', 'm'] },
  {
    list: 'climb',
    title: 'Rate of climb',
    figures: [{ name: 'rate of climb', key: 'rateOfClimb', printed: /climb|\brate\b|\broc\b/i }],
    figureUnits: ['ft/min', 'm/s'],
  },
];

/** What a column can be beside a figure. */
export type SideRole = Exclude<InputRole, 'power' | 'other'>;
export const sideRoles: readonly SideRole[] = ['weight', 'pressure altitude', 'density altitude', 'temperature', 'isa deviation', 'headwind'];

export const roleWords: Readonly<Record<SideRole, string>> = {
  weight: 'weight',
  'pressure altitude': 'pressure altitude',
  'density altitude': 'density altitude',
  temperature: 'temperature',
  'isa deviation': 'ISA deviation',
  headwind: 'headwind',
};

/** Units that share one question. */
export type UnitOf = 'weight' | 'altitude' | 'temperature' | 'headwind' | 'figure';
export const unitOfRole: Readonly<Record<SideRole, UnitOf>> = {
  weight: 'weight',
  'pressure altitude': 'altitude',
  'density altitude': 'altitude',
  temperature: 'temperature',
  'isa deviation': 'temperature',
  headwind: 'headwind',
};
export const unitChoices: Readonly<Record<Exclude<UnitOf, 'figure'>, readonly TableUnit[]>> = {
  weight: ['lb', 'kg'],
  altitude: ['ft', 'm'],
  temperature: ['°C', '°F'],
  headwind: ['kt', 'km/h', 'mph', 'm/s'],
};

/** The columns of inputs, in their order, and which of them a role takes. A headwind takes one that is left. */
export const inputColumns = ['weight', 'pressureAltitude', 'temperature'] as const;
export type InputColumnKey = (typeof inputColumns)[number];
export const columnOfRole: Readonly<Record<SideRole, InputColumnKey | undefined>> = {
  weight: 'weight',
  'pressure altitude': 'pressureAltitude',
  'density altitude': 'pressureAltitude',
  temperature: 'temperature',
  'isa deviation': 'temperature',
  headwind: undefined,
};
