// Names of parameters in their order, of the functions whose calls are found in sheets: by these an argument is asked for. A test holds them
// to the registry.
import type { FunctionName } from '../../functions/registry/names.generated';

/** Functions that have a picture. Behind those named here comes the parameter of the headings, where the function has one and it is not named. */
export const pictured = {
  HOLD_BRIEF: [
    'heading_at_fix',
    'inbound_course',
    'turns',
    'altitude_ft',
    'indicated_kt',
    'leg',
    'wind_from_deg',
    'wind_kt',
    'temperature_c',
    'rules',
  ],
  DESCENT_PLAN: ['from_ft', 'to_ft', 'schedule', 'winds', 'course_true', 'isa_deviation_c', 'before_fix_nm', 'slow_down_nm', 'headings'],
  BALANCE_CHECK: ['weight', 'arm', 'envelope', 'envelope_in', 'leading_edge', 'chord'],
  LOADING_BRIEF: [
    'stations',
    'weights',
    'arms',
    'tanks',
    'tank_arms',
    'fuel_weight_each',
    'taxi_fuel',
    'trip_fuel',
    'envelope',
    'limits',
    'lateral_arms',
    'track_steps',
    'headings',
    'weight_unit',
    'arm_unit',
    'moments',
    'moments_in',
    'envelope_in',
    'leading_edge',
    'chord',
  ],
  RECENCY_DAYS: ['dates', 'counts', 'as_of', 'days', 'needed'],
  RECENCY_MONTHS: ['dates', 'counts', 'as_of', 'months', 'needed'],
  DUE_STATUS: ['due_on', 'as_of', 'warn_days'],
  PILOT_STATUS: ['log', 'aircraft', 'papers', 'as_of', 'rules'],
  AIRCRAFT_STATUS: ['items', 'aircraft', 'as_of', 'rules'],
} as const satisfies Partial<Record<FunctionName, readonly string[]>>;

/** Functions whose lists the calendar and the import of flights read; the argument behind those named here is that of the headings. */
export const listed = {
  LEDGER_DIARY: ['aircraft', 'database', 'series', 'from_date', 'months', 'licences', 'changes_at_z'],
  PILOT_STATUS: pictured.PILOT_STATUS,
  AIRCRAFT_STATUS: pictured.AIRCRAFT_STATUS,
} as const satisfies Partial<Record<FunctionName, readonly string[]>>;
