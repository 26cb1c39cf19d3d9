// One question at a time to the host, and what came of the last one.
import { useState } from 'preact/hooks';

export interface Outcome {
  readonly kind: 'waiting' | 'done' | 'refused';
  readonly text: string;
}

export interface Asking {
  readonly outcome: Outcome | undefined;
  readonly busy: boolean;
  /** Shows `waiting` until the answer is there, then the sentence it gives, or the reason why not. */
  readonly run: (waiting: string, work: () => Promise<string>) => void;
  /** Forgets the last outcome, when it no longer belongs to what is shown. */
  readonly clear: () => void;
}

export function useAsking(): Asking {
  const [outcome, setOutcome] = useState<Outcome>();
  const run = (waiting: string, work: () => Promise<string>): void => {
    setOutcome({ kind: 'waiting', text: waiting });
    work().then(
      (text) => setOutcome({ kind: 'done', text }),
      (thrown: unknown) => setOutcome({ kind: 'refused', text: thrown instanceof Error ? thrown.message : String(thrown) }),
    );
  };
  return { outcome, busy: outcome?.kind === 'waiting', run, clear: () => setOutcome(undefined) };
}
