// The verdict of the trip with its reasons, for the top of a form: opened, it tells every reason.
import type { TripFigures, TripItem } from '../workbook/pocket/tripFigures';
import { isVerdict } from '../workbook/pocket/verdictWords';
import { Answer } from './parts';

interface VerdictProps {
  readonly figures: TripFigures;
  /** The Trip sheet whose verdict it is. */
  readonly sheet: string;
  /** Something was entered whose answers are not there yet: then the verdict of before is not shown. */
  readonly working: boolean;
  readonly caution: string;
}

const inShort = ({ item, reason }: TripItem): string => `${item}: ${reason}`;

export function Verdict({ figures: { verdict, items, judgedOn }, sheet, working, caution }: VerdictProps) {
  const first = items.find(({ word }) => isVerdict(word));
  return (
    <details class="verdict" aria-busy={working}>
      <summary>
        {working ? <b class="word UNKNOWN">...</b> : <Answer text={verdict} />}
        <span class="reason" role="status">
          {working ? 'working it out' : first === undefined ? `${sheet}, ${judgedOn}` : inShort(first)}
        </span>
      </summary>
      {!working &&
        items.map((one) => (
          <p key={one.item}>
            <Answer text={one.word} /> {inShort(one)}
          </p>
        ))}
      <p>
        {sheet}, {judgedOn}. {caution}
      </p>
    </details>
  );
}
