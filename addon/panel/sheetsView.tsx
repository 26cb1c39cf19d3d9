// The sheets of ours in the document: filling them in as a form, putting them in, and bringing older ones up to date.
import { useEffect, useRef, useState } from 'preact/hooks';
import { useAsking } from './asking';
import type { Catalogue } from './catalogue';
import type { PanelHost } from './host';
import { FlightSection } from './flightSection';
import { FormView } from './formView';
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
  const [asForm, setAsForm] = useState<boolean>();
  const opener = useRef<HTMLButtonElement>(null);
  // Back from the form, the keyboard is where it was.
  useEffect(() => {
    if (asForm === false) opener.current?.focus();
  }, [asForm]);
  if (asForm === true) return <FormView host={host} back={() => setAsForm(false)} />;
  return (
    <div>
      <section>
        <h2>Without the grid</h2>
        <button type="button" class="wide" ref={opener} onClick={() => setAsForm(true)}>
          Fill in the trip as a form
        </button>
      </section>
      <InsertSection host={host} sheets={sheets} asking={asking} />
      <TripSection host={host} asking={asking} />
      <FlightSection host={host} asking={asking} />
      <VisitSection host={host} asking={asking} />
      <UpdateSection host={host} asking={asking} />
      <OutcomeLine outcome={asking.outcome} />
    </div>
  );
}
