// One question at a time to the host, and what came of the last one.
import { useRef, useState } from 'preact/hooks';

export interface Outcome {
  /** shown: the answer itself stands in the view, so its sentence is only for those who do not see it. */
  readonly kind: 'waiting' | 'done' | 'shown' | 'refused';
  readonly text: string;
}

/** The sentence about an answer, and whether the view shows that answer. */
export type Said = string | { readonly shown: string };

export interface Asking {
  readonly outcome: Outcome | undefined;
  readonly busy: boolean;
  /** Shows `waiting` until the answer is there, then the sentence it gives, or the reason why not. Nothing is started while busy. */
  readonly run: (waiting: string, work: () => Promise<Said>) => void;
}

/** Refusals are plain Errors with a sentence; anything else is a fault of the panel itself. */
function reasonOf(thrown: unknown): string {
  if (thrown instanceof Error && thrown.name === 'Error') return thrown.message;
  return `The panel has a fault. It said: ${String(thrown).replace(/\.?$/, '.')} Reload the page, open the panel again and try once more.`;
}

export function useAsking(): Asking {
  const [outcome, setOutcome] = useState<Outcome>();
  // State is drawn a moment later; a second press in between must find the first.
  const running = useRef(false);
  const run = (waiting: string, work: () => Promise<Said>): void => {
    if (running.current) return;
    running.current = true;
    setOutcome({ kind: 'waiting', text: waiting });
    work()
      .then(
        (said) => setOutcome(typeof said === 'string' ? { kind: 'done', text: said } : { kind: 'shown', text: said.shown }),
        (thrown: unknown) => setOutcome({ kind: 'refused', text: reasonOf(thrown) }),
      )
      .finally(() => {
        running.current = false;
      });
  };
  return { outcome, busy: outcome?.kind === 'waiting', run };
}
