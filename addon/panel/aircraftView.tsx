// What belongs to one aircraft: its tables, put in as its manual prints them, and all of it together.
import { useAsking } from './asking';
import type { PanelHost } from './host';
import { OutcomeLine } from './outcomeLine';
import { TableSection } from './tableSection';
import { WholeSection } from './wholeSection';

export function AircraftView({ host }: { readonly host: PanelHost }) {
  const asking = useAsking();
  return (
    <div>
      <TableSection host={host} asking={asking} />
      <WholeSection host={host} asking={asking} />
      <OutcomeLine outcome={asking.outcome} />
    </div>
  );
}
