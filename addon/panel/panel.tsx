// The side panel: the caution, then its views as tabs. One panel for both hosts; it knows only the Host interface.
import { render } from 'preact';
import catalogue from 'rampwright:catalogue';
import { AircraftView } from './aircraftView';
import { CheckView } from './checkView';
import { FunctionsView } from './functionsView';
import type { PanelHost } from './host';
import { oneAtATime } from './oneAtATime';
import { PictureView } from './pictureView';
import { SendView } from './sendView';
import { SheetsView } from './sheetsView';
import { Tabs } from './tabs';

function Panel({ host }: { readonly host: PanelHost }) {
  return (
    <>
      <header>
        <h1>Rampwright</h1>
        <p class="caution">Planning aid only: the approved manual, official data, local rules and the pilot in command decide.</p>
      </header>
      <Tabs
        tabs={[
          { name: 'sheets', label: 'Sheets', view: () => <SheetsView host={host} sheets={catalogue.sheets} /> },
          { name: 'aircraft', label: 'Aircraft', view: () => <AircraftView host={host} /> },
          { name: 'functions', label: 'Functions', view: () => <FunctionsView host={host} functions={catalogue.functions} /> },
          { name: 'picture', label: 'Picture', view: () => <PictureView host={host} /> },
          { name: 'check', label: 'Check', view: () => <CheckView host={host} /> },
          { name: 'send', label: 'Send', view: () => <SendView host={host} /> },
        ]}
      />
    </>
  );
}

/** Draws the panel into the page's #panel. */
export function mountPanel(host: PanelHost): void {
  const place = document.getElementById('panel');
  if (place === null) throw new Error('the page has no place for the panel');
  render(<Panel host={oneAtATime(host)} />, place);
}
