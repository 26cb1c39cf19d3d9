import { it } from 'vitest';
import { openHeadless, openSaved } from '../../addon/local/engine/headless';
import { savedAfter } from '../local/savedSheets';
import { sheetTemplates } from '../../sheets-templates';
import { flightsOn, wayBack, withFlightAdded, dayReason, dayVerdict } from '../support/flights';
import { tripRows } from '../../sheets-templates/trip/rows';
it('x', { timeout: 120000 }, async () => {
  const w = await openHeadless(sheetTemplates);
  const saved = await savedAfter(sheetTemplates);
  const two = withFlightAdded(saved, w.snapshot(), 'Trip sheet');
  const b = await openSaved(two.data);
  const show = (name = 'Trip sheet 2') => {
    console.log(dayVerdict(b), dayReason(b), '\n', flightsOn(b).map((r) => JSON.stringify(r)).join('\n'));
    console.log(b.values(name, `G${tripRows.judged.first}:I${tripRows.judged.last}`).filter((r) => r[1] !== 'OK' || /before/.test(String(r[0]))).map((r) => JSON.stringify(r)).join('\n'));
    console.log(JSON.stringify(b.values(name, `B${tripRows.beforeTo}:B${tripRows.takenOn}`)), JSON.stringify(b.values('Weight and balance 2', 'A28:D33')));
  };
  console.log(two.copies, two.plan.entries.length);
  show();
  await b.set('Trip sheet 2', wayBack);
  show();
  await b.set('Trip sheet', { [`C${tripRows.field}`]: 'Sorrel Plain' });
  show();
  w.dispose(); b.dispose();
});
