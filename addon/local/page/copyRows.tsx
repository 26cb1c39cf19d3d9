// The dated copies of the workbook as a list, each with what can be done with it.
import type { ComponentChildren } from 'preact';
import type { KeptCopy } from './keeper';
import { momentWords } from './goBack';

interface Props {
  /** The newest first. */
  readonly copies: readonly KeptCopy[];
  /** Undefined where no workbook is open that could go back. */
  readonly goBack: ((made: number) => void) | undefined;
  /** What else can be done with a whole copy. */
  readonly others?: (copy: KeptCopy) => ComponentChildren;
}

export function CopyRows({ copies, goBack, others }: Props) {
  return (
    <ul>
      {copies.map((copy) => (
        <li key={copy.made} class="choices">
          <span>{momentWords(copy.made)}</span>
          {copy.standing === 'damaged' && <span>damaged: nobody can go back to it</span>}
          {copy.standing === 'later' && <span>of a later version of Rampwright</span>}
          {copy.standing === 'whole' && goBack !== undefined && (
            <button type="button" onClick={() => goBack(copy.made)}>
              Go back to this copy
            </button>
          )}
          {copy.standing !== 'damaged' && others?.(copy)}
        </li>
      ))}
    </ul>
  );
}
