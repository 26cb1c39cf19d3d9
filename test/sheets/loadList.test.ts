// The Load list in the engine: the demo club by hand, one load written down, and a ledger whose cards cannot be read.
import { describe, expect, it } from 'vitest';
import { openHeadless } from '../../addon/local/engine/headless';
import { loadListSheet } from '../../sheets-templates/due/sheet';
import { placesFor, defaultRoom } from '../../sheets-templates/ledger/places';
import { dataLedgerSheet } from '../../sheets-templates/ledger/sheet';
import { startSheet } from '../../sheets-templates/start/sheet';
import { tripAsTyped } from '../support/tripAsTyped';

const { cards, loads } = placesFor(defaultRoom);
const opened = () => openHeadless([startSheet, tripAsTyped, dataLedgerSheet, loadListSheet]);

describe('the load list of the demo club (AIRAC dates of 2026 by hand: 29 October, 26 November)', () => {
  it('has what is overdue first, a box for each, and takes a load off when it is written down', async () => {
    const workbook = await opened();
    const rows = (): unknown[][] => workbook.values('Load list', 'A10:N30').filter((row) => row[3] !== '');
    expect(rows()[0]?.slice(0, 10)).toEqual([
      ...['[   ]', '[   ]', '__________', 'overdue', 'Brindle Two', 'Dag', 'panel, right', 'navigation', 'load', '2611'],
    ]);
    expect(rows().map((row) => row[3])).toEqual(['overdue', 'now', 'now', ...Array<string>(7).fill('next')]);
    expect(workbook.value('Load list', 'A3')).toBe('1 overdue, 2 more to do now, 7 at the next visits; the first of them from 2026-11-26 00:00.');
    expect(workbook.value('Data ledger', 'C4')).toMatch(/^1 out of date now, see the Load list; then 2026-11-26 00:00 /);
    const load = { A: 'Brindle Two', B: 'panel, right', C: 'navigation', D: '2026-10-29', E: '2026-11-25', F: '2026-11-25', G: 'Dag' };
    const cells = Object.entries(load).map(([letter, value]) => [`${letter}${loads.first + 13}`, 'DEF'.includes(letter) ? { date: value } : value]);
    await workbook.set('Data ledger', Object.fromEntries(cells) as Record<string, string>);
    expect(rows().some((row) => row[3] === 'overdue')).toBe(false);
    expect(workbook.values('Data ledger', `J${cards.first + 4}:J${cards.first + 5}`)).toEqual([['CHECK'], ['CHECK']]);
    workbook.dispose();
  });

  it('says that it cannot tell where the call was typed over', async () => {
    const workbook = await opened();
    await workbook.set('Load list', { D9: 'when' });
    expect(workbook.value('Load list', 'A3')).toMatch(/^UNKNOWN: the list is empty/);
    expect(workbook.value('Load list', 'A7')).toMatch(/^typed over: /);
    workbook.dispose();
  });
});
