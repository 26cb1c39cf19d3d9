// A copied trip is worked out from its own entries: its steps stand on a Trip working of its own.
import { expect, it } from 'vitest';
import { openSaved } from '../../addon/local/engine/headless';
import { withTripCopied } from '../../addon/local/saved/copyTrip';
import { sheetTemplates } from '../../sheets-templates';
import { sheetNames } from '../../sheets-templates/places';
import { tripRows } from '../../sheets-templates/trip/rows';
import { savedAfter } from './savedSheets';

it('takes fuel and runway from the entries of the copy, and leaves the first trip as it is', async () => {
  const data = await savedAfter(sheetTemplates, () => Promise.resolve());
  const tripId = data.sheetOrder.find((id) => data.sheets[id]?.name === sheetNames.trip) ?? '';
  const copied = withTripCopied(data, tripId);
  expect(copied.copies).toContain(`${sheetNames.working} 2`);
  const workbook = await openSaved(copied.data);
  const second = `${sheetNames.trip} 2`;
  const tripFuel = `H${tripRows.tripFuel}`;
  const [before, copyBefore] = [workbook.value(sheetNames.trip, tripFuel), workbook.value(second, tripFuel)];
  expect(copyBefore).toBe(before);
  await workbook.set(second, { [`B${tripRows.fuelFlow}`]: 14, [`B${tripRows.runwayName}`]: 'no such' });
  expect(workbook.value(second, tripFuel)).toBeGreaterThan(Number(copyBefore) * 1.2);
  expect(workbook.value(sheetNames.trip, tripFuel)).toBe(before);
  expect([workbook.named('trip_verdict'), workbook.named('trip_verdict_2')]).toEqual([[['OK']], [['UNKNOWN']]]);
  workbook.dispose();
});
