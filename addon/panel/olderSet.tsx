// One set of sheets with its versions; where it is out of date, what an update would carry over and what stands against it.
import { AskButton } from './askButton';
import type { Asking } from './asking';
import { versionsInWords, type LookedSet } from './updateSets';

function Sentences({ heading, sentences }: { readonly heading: string; readonly sentences: readonly string[] }) {
  return (
    <>
      <h4>{heading}</h4>
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}

function Carried({
  carried: { notes, refusals },
  asking,
  bring,
}: {
  readonly carried: NonNullable<LookedSet['carried']>;
  readonly asking: Asking;
  readonly bring: () => void;
}) {
  return (
    <>
      {refusals.length > 0 && <Sentences heading="Fix these first" sentences={refusals} />}
      {notes.length > 0 && <Sentences heading="Read this first" sentences={notes} />}
      {refusals.length === 0 && (
        <>
          {notes.length === 0 && <p>Everything that you entered has its place in the new sheets.</p>}
          <AskButton look="main" asking={asking} ask={bring}>
            Bring this set up to date
          </AskButton>
        </>
      )}
    </>
  );
}

interface OlderSetProps {
  readonly looked: LookedSet;
  /** Of several sets, the first is 1. */
  readonly number: number;
  readonly asking: Asking;
  readonly bring: () => void;
}

export function OlderSet({ looked, number, asking, bring }: OlderSetProps) {
  const { outOfDate, carried } = looked;
  return (
    <section class="set">
      <h3>
        Set {number}: {outOfDate ? 'out of date' : 'nothing to do'}
      </h3>
      {versionsInWords(looked).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {carried !== undefined && <Carried carried={carried} asking={asking} bring={bring} />}
    </section>
  );
}
