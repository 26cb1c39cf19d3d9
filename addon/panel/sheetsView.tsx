// The sheets of ours in the document: putting them in, and bringing older ones up to date.
import { useAsking } from './asking';
import type { Catalogue } from './catalogue';
import type { PanelHost } from './host';
import { FlightSection } from './flightSection';
import { InsertSection } from './insertSection';
import { OutcomeLine } from './outcomeLine';
import { TripSection } from './tripSection';
import { VisitSection } from './visitSection';
import { UpdateSection } from './updateSection';

interface SheetsViewProps {
  readonly host: PanelHost;
  readonly sheets: Catalogue['sheets'];
}

export function SheetsView({ host, sheets }: SheetsViewProps) {
  const asking = useAsking();
  return (
    <div>
      <InsertSection host={host} sheets={sheets} asking={asking} />
      <TripSection host={host} asking={asking} />
      <FlightSection host={host} asking={asking} />
      <VisitSection host={host} asking={asking} />
      <UpdateSection host={host} asking={asking} />
      <OutcomeLine outcome={asking.outcome} />
    </div>
  );
}
