// The next flight of the day: what would be copied and emptied is said first, and done when the button is pressed again.
import { useState } from 'preact/hooks';
import { addFlight, type FlightPlan } from '../workbook/addFlight';
import { AskButton } from './askButton';
import type { Asking } from './asking';
import type { PanelHost } from './host';
import { pageTemplates } from './pageTemplates';

export function FlightAdding({ host, asking }: { readonly host: PanelHost; readonly asking: Asking }) {
  const [plan, setPlan] = useState<FlightPlan>();
  const worked = async (): Promise<FlightPlan> => addFlight(await host.ask('readWorkbook', { sheets: 'all' }), pageTemplates());
  const look = async (): Promise<string> => {
    setPlan(undefined);
    setPlan(await worked());
    return 'Nothing is changed yet. Read what would be, then press the button below it.';
  };
  const add = async (shown: FlightPlan): Promise<string> => {
    const now = await worked();
    if (JSON.stringify(now) !== JSON.stringify(shown)) {
      setPlan(now);
      throw new Error('The sheets were changed since you looked. Read again what would be copied, then press once more.');
    }
    const { copies } = await host.ask('addFlight', { sheet: now.sheet, entries: now.entries, listed: now.listed });
    setPlan(undefined);
    return `The next flight is on ${copies.map((name) => `"${name}"`).join(', ')}. It is UNKNOWN until you have typed what is missing.`;
  };
  return (
    <>
      <AskButton look="wide" asking={asking} ask={() => asking.run('Reading the workbook.', look)}>
        Add a flight
      </AskButton>
      {plan !== undefined && (
        <section class="set">
          <h3>Add a flight</h3>
          <p>{plan.said}</p>
          <AskButton look="main" asking={asking} ask={() => asking.run('Copying the sheets of the trip.', () => add(plan))}>
            Copy them
          </AskButton>
        </section>
      )}
    </>
  );
}
