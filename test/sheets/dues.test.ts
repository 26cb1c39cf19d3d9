// Dues and the Statement in the engine: the demo club against the cents worked out again from what is typed, a slip, another member chosen.
import { describe, expect, it } from 'vitest';
import { openHeadless } from '../../addon/local/engine/headless';
import { duesPlaces, lines } from '../../sheets-templates/dues/places';
import { duesSheet } from '../../sheets-templates/dues/sheet';
import { statementSheet } from '../../sheets-templates/dues/statement';
import { startSheet } from '../../sheets-templates/start/sheet';
import { tripAsTyped } from '../support/tripAsTyped';

const { members, costs } = duesPlaces;

describe('the dues of the demo club', () => {
  it('come to the costs of the year, shown beside each member and on his statement', async () => {
    const workbook = await openHeadless([startSheet, tripAsTyped, duesSheet, statementSheet]);
    // By hand: 12 x 240 + 1860 + 620 x 1.05 + 96 x 114.6 hours, and 120 - 35.50 from before.
    const charged = 12 * 240 + 1860 + 651 + 96 * 114.6 + 84.5;
    expect(workbook.value('Dues', 'A3')).toBe(
      `Charged ${charged.toLocaleString('en', { minimumFractionDigits: 2 })}, paid 5,650.00, still owed 10,827.10 EUR.`,
    );
    const beside = workbook.values('Dues', `H${members.first}:J${members.first + 5}`);
    expect(beside.reduce((sum, [one]) => sum + Math.round(Number(one) * 100), 0)).toBe(Math.round(charged * 100));
    const own = workbook.values('Statement', 'A8:E14');
    expect(own.filter(([what]) => what === 'balance')).toEqual([['balance', '', ...(beside[0] ?? [])]]);
    await workbook.set('Statement', { B3: 'Eve' });
    const rows = workbook.values('Statement', 'A8:E20').filter(([what]) => what !== '');
    expect(rows[0]).toEqual(['brought forward', '', -35.5, '', '']);
    expect(rows[1]?.[1]).toBe('9 times, equal');
    expect(rows.at(-1)).toEqual(['balance', '', ...(beside[4] ?? [])]);
    workbook.dispose();
  });

  it('tell a cost that cannot be read at the top, and a member that cannot be read in every sum', async () => {
    const workbook = await openHeadless([startSheet, tripAsTyped, duesSheet, statementSheet]);
    await workbook.set('Dues', { [`B${costs.first}`]: 'n/a' });
    expect(workbook.value('Dues', 'A3')).toMatch(/UNKNOWN: 1 rows are not in the sums, see the foot of the lines\.$/);
    await workbook.set('Dues', { [`E${members.first + 1}`]: 'many' });
    expect(workbook.value('Dues', 'A3')).toMatch(/^UNKNOWN: the lines at the right cannot be worked out; the cell L11 says why\.$/);
    expect(workbook.value('Dues', `J${members.first}`)).toBe('?');
    expect(workbook.value('Statement', 'A8')).toMatch(/^Dues has no lines of this member/);
    expect(lines.head).toBe(members.head);
    workbook.dispose();
  });
});
