// The findings of one sheet, each with its cell as a button. Of many, the first are shown until the rest are asked for.
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Finding } from '../workbook/check/checkWorkbook';
import { AskButton } from './askButton';
import type { Asking } from './asking';

const shownAtFirst = 8;

/** The sheet's own formula, at the end of the sentence, stands on lines of its own. */
function Sentence({ sentence }: Finding) {
  const [, words, formula] = /^(.* own is) (=.*)$/s.exec(sentence) ?? [];
  return (
    <div>
      {words ?? sentence}
      {formula !== undefined && <code class="formula">{formula}</code>}
    </div>
  );
}

interface CheckedSheetProps {
  readonly name: string;
  readonly findings: readonly Finding[];
  readonly asking: Asking;
  readonly goTo: (finding: Finding) => void;
}

export function CheckedSheet({ name, findings, asking, goTo }: CheckedSheetProps) {
  const [all, setAll] = useState(false);
  const list = useRef<HTMLUListElement>(null);
  const shown = all ? findings : findings.slice(0, shownAtFirst);
  // The button that showed the rest is gone, so the keyboard goes on at the first of them.
  useLayoutEffect(() => {
    if (all) list.current?.querySelectorAll('button')[shownAtFirst]?.focus();
  }, [all]);
  return (
    <>
      <h3>{name}</h3>
      <ul class="plain findings" ref={list}>
        {shown.map((finding, index) => (
          <li key={index}>
            <AskButton look="cell" asking={asking} ask={() => goTo(finding)} label={`Go to ${finding.cell} of ${name}`}>
              {finding.cell}
            </AskButton>
            <Sentence {...finding} />
          </li>
        ))}
      </ul>
      {shown.length < findings.length && (
        <button type="button" aria-label={`Show the other ${findings.length - shown.length} of ${name}`} onClick={() => setAll(true)}>
          Show the other {findings.length - shown.length}
        </button>
      )}
    </>
  );
}
