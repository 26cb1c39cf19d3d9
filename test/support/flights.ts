// Flights of a day in a saved workbook: the next one added as the local page does it, and what it needs typed so that it is judged.
import type { IWorkbookData } from '@univerjs/core';
import type { HeadlessWorkbook } from '../../addon/local/engine/headless';
import { withTripCopied, type TripCopied } from '../../addon/local/saved/copyTrip';
import { withEntries } from '../../addon/local/saved/withEntries';
import { addFlight, placedOnCopies, type FlightPlan } from '../../addon/workbook/addFlight';
import type { WorkbookSnapshot } from '../../addon/workbook/snapshot';
import { sheetTemplates } from '../../sheets-templates';
import { flightList } from '../../sheets-templates/day/places';
import { tripRows as rows } from '../../sheets-templates/trip/rows';
import type { TemplateValue } from '../../sheets-templates/template';

export const idOf = (data: IWorkbookData, name: string): string => data.sheetOrder.find((id) => data.sheets[id]?.name === name) ?? '';

export function withFlightAdded(data: IWorkbookData, snapshot: WorkbookSnapshot, trip: string): TripCopied & { readonly plan: FlightPlan } {
  const plan = addFlight({ ...snapshot, selected: { sheet: trip, row: 1, column: 1 } }, sheetTemplates);
  const copied = withTripCopied(data, idOf(data, trip));
  return { ...copied, data: withEntries(copied.data, placedOnCopies(plan, copied.names)), plan };
}

/** What a pilot types for a flight on from Tansy Ridge, an hour after the demonstration's landing. */
export const wayBack: Readonly<Record<string, TemplateValue>> = {
  [`B${rows.takeoffTime}`]: 1630,
  [`B${rows.night}`]: 'no',
  [`B${rows.instrument}`]: 'no',
  [`B${rows.judgeDescent}`]: 'no',
  [`B${rows.judgeHold}`]: 'no',
  [`C${rows.field}`]: 'Marrowfield',
  [`B${rows.runwayName}`]: '08',
  [`C${rows.runwayName}`]: '21',
  [`B${rows.groundspeed}`]: 110,
  [`B${rows.gradient}`]: 200,
  [`A${rows.metars.first}`]: 'METAR ZZXB 251550Z 09008KT CAVOK 21/12 Q1007',
  [`A${rows.metars.first + 1}`]: 'METAR ZZXA 251550Z 22012KT 9999 FEW040 18/09 Q1009',
  [`A${rows.tafs.first}`]: 'TAF ZZXB 251100Z 2512/2612 09008KT CAVOK',
  [`A${rows.tafs.first + 1}`]: 'TAF ZZXA 251100Z 2512/2612 21012KT 9999 FEW040',
};

export const day = 'Flights of the day';
/** The rows of the flights, each by its columns from its Trip sheet to why it follows. */
export const flightsOn = (workbook: HeadlessWorkbook): readonly unknown[][] => workbook.values(day, `B${flightList.first}:M${flightList.last}`);
export const dayVerdict = (workbook: HeadlessWorkbook): unknown => workbook.value(day, 'B3');
export const dayReason = (workbook: HeadlessWorkbook): string => String(workbook.value(day, 'D3'));
