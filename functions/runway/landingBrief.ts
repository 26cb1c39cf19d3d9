// The sheet function that lays out the landing section of a sheet, with the landing at the alternate beside it.
import { CoreError } from '../../core/basics/errors';
import { laying, type ResultCell } from '../registry/declaration';
import { Unread } from '../registry/modifiers';
import { wordCore } from '../registry/wordCoreError';
import { NamedArgumentError } from '../registry/wordError';
import { alternateParameters, type AlternateCase } from './alternate';
import { atSeaLevel, briefOf, type BriefArguments } from './brief';
import { inventedCorrections, inventedTable } from './inventedExample';
import { landing } from './operation';
import { sideBySide } from './sideBySide';

const ofOne = briefOf(landing);

type WithAlternate = BriefArguments & { readonly alternate_corrections: BriefArguments['corrections'] | Unread };

/** Where the alternate cannot be worked out, that is told there and the destination stands. */
function alternateRows(given: WithAlternate, alternate: AlternateCase | Unread): ResultCell[][] {
  const { alternate_corrections: corrections } = given;
  const unknown = (reason: string): ResultCell[][] => [['verdict', 'UNKNOWN', reason]];
  if (alternate instanceof Unread) return unknown(alternate.reason);
  if (corrections instanceof Unread) return unknown(corrections.reason);
  try {
    return ofOne.compute({ ...given, ...alternate, corrections });
  } catch (thrown) {
    if (thrown instanceof CoreError) return unknown(wordCore(thrown));
    if (thrown instanceof NamedArgumentError) return unknown(`${thrown.argument} must be ${thrown.error.mustBe}; got ${thrown.error.got}`);
    throw thrown;
  }
}

export const LANDING_BRIEF = laying({
  name: 'LANDING_BRIEF',
  ...ofOne,
  parameters: { ...ofOne.parameters, ...alternateParameters },
  notes: `${ofOne.notes} With an alternate its rows stand at the right, in three columns more.`,
  examples: [
    {
      arguments: [inventedTable, 'over 50 ft', 1000, 270, 700, 0, 1013.25, 15, 270, 9, undefined, inventedCorrections],
      gives: [
        ...atSeaLevel,
        ['factored distance', 711, 'as the table'],
        ['available', 700, 'as the table'],
        ['margin', -11, 'as the table'],
        ['ratio', 700 / 426.6, 'available / corrected'],
        ['verdict', 'NO', '11 short with the factor 1.667 (needs 711, has 700)'],
      ],
      tolerance: 1e-6,
      source: 'Invented table; by hand: 395 x 0.9 x 1.2 = 426.6, / 0.6 = 711',
      formula: '=LANDING_BRIEF(A1:D9, "over 50 ft", 1000, 270, 700, 0, 1013.25, 15, 270, 9, , F1:I3)',
    },
  ],
  compute: (given) => {
    const rows = ofOne.compute(given);
    return given.alternate === undefined ? rows : sideBySide(rows, alternateRows(given, given.alternate));
  },
});
