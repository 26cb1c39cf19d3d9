// The nine jobs, and the recency log, which has a target of its own.
import type { Job } from './job';
import { densityAltitude, descentStart, pressureAltitude, trueAirspeed, windComponents, windTriangle } from './jobsOfAir';
import { balanceCheck, cycleStatus, recencyLog, tableRead } from './jobsOfTables';

export type MakeJob = (rows: number) => Job;

export const nineJobs: readonly MakeJob[] = [
  pressureAltitude,
  densityAltitude,
  trueAirspeed,
  windComponents,
  windTriangle,
  descentStart,
  cycleStatus,
  balanceCheck,
  tableRead,
];
export const recencyJob: MakeJob = recencyLog;
/** One result column and three. */
export const jobsOfManyRows: readonly MakeJob[] = [descentStart, windTriangle];
