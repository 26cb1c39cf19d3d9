// Sheet function that gathers the verdicts of a trip into one, with every reason named.
import { readiness } from '../../core/basics/readiness';
import { folding, result } from '../registry/declaration';
import { column, unreadableMeansUndefined } from '../registry/modifiers';
import { shownName, verdict } from '../registry/readText';

export const READINESS = folding({
  name: 'READINESS',
  subject: 'Readiness',
  summary: 'One verdict for a list of items: the worst of theirs, with every item that is not OK named.',
  parameters: {
    items: column(
      unreadableMeansUndefined(
        shownName({ mustBe: 'the name of the item', help: 'Names of the items, one a row. An item without a name is called by its row.' }),
      ),
    ),
    verdicts: column(verdict('The verdict of each item. Whatever is not one of the four words, a blank or an error too, counts as UNKNOWN.')),
  },
  results: {
    verdict: result('', 'The worst of the verdicts; from worst to best NO, UNKNOWN, CHECK, OK.'),
    reasons: result('', 'Every item that is not OK with its word, worst first.'),
  },
  sources: ['common-practice'],
  notes:
    'Common practice, no source. Rows that are blank in both columns are passed over; a named item with a blank verdict is UNKNOWN. Where every row is blank the answer is blank, never OK.',
  examples: [
    {
      arguments: [
        [['Landing'], ['Fuel'], ['Loading']],
        [['NO'], [''], ['OK']],
      ],
      gives: [['NO', 'Landing NO; Fuel UNKNOWN']],
      source: 'Rule of this function, by hand',
      formula: '=READINESS(A2:A4, B2:B4)',
    },
    {
      arguments: [
        [['Landing'], ['Fuel']],
        [['OK'], ['OK']],
      ],
      gives: [['OK', 'all 2 items OK']],
      source: 'Rule of this function, by hand',
      formula: '=READINESS(A2:A3, B2:B3)',
    },
  ],
  compute: ({ items, verdicts }, { rows }) => {
    const named = verdicts.map((word, index) => ({ name: items[index] ?? `Row ${rows[index] ?? index + 1}`, verdict: word }));
    const { verdict: worst, hindrances } = readiness(named);
    const allGood = named.length === 1 ? '1 item OK' : `all ${named.length} items OK`;
    return { verdict: worst, reasons: hindrances.length === 0 ? allGood : hindrances.map(({ name, verdict: word }) => `${name} ${word}`).join('; ') };
  },
});
