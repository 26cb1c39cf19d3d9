// The side panel: the caution, then its views as tabs. One panel for both hosts; it knows only the Host interface.
import { render } from 'preact';
import { useState } from 'preact/hooks';
import catalogue from 'rampwright:catalogue';
import { FunctionsView } from './functionsView';
import type { PanelHost } from './host';
import { SheetsView } from './sheetsView';
import { Tabs, type TabEntry } from './tabs';

type ViewName = 'sheets' | 'functions';

const tabs: readonly TabEntry<ViewName>[] = [
  { name: 'sheets', label: 'Sheets' },
  { name: 'functions', label: 'Functions' },
];

function Panel({ host }: { readonly host: PanelHost }) {
  const [shown, show] = useState<ViewName>('sheets');
  return (
    <>
      <header>
        <h1>Rampwright</h1>
        <p class="caution">Planning aid only: the approved manual, official data, local rules and the pilot in command decide.</p>
      </header>
      <Tabs tabs={tabs} shown={shown} show={show}>
        {shown === 'sheets' ? <SheetsView host={host} sheets={catalogue.sheets} /> : <FunctionsView host={host} functions={catalogue.functions} />}
      </Tabs>
    </>
  );
}

/** Draws the panel into the page's #panel. */
export function mountPanel(host: PanelHost): void {
  const place = document.getElementById('panel');
  if (place === null) throw new Error('the page has no place for the panel');
  render(<Panel host={host} />, place);
}
