// One question at a time to the host, and what came of the last one.
import { useRef, useState } from 'preact/hooks';
import type { Progress, Watch } from './host';

export interface Outcome {
  /** shown: the answer itself stands in the view, so its sentence is only for those who do not see it. */
  readonly kind: 'waiting' | 'done' | 'shown' | 'refused';
  readonly text: string;
  /** Only while a run is waited for that the host tells the progress of, and that can be stopped. */
  readonly run?: { readonly progress: Progress; readonly stop: () => void };
}

/** The sentence about an answer, and whether the view shows that answer. */
export type Said = string | { readonly shown: string };

export interface Asking {
  readonly outcome: Outcome | undefined;
  readonly busy: boolean;
  /** Shows `waiting` until the answer is there, then the sentence it gives, or the reason why not. Nothing is started while busy. */
  readonly run: (waiting: string, work: (watch: Watch) => Promise<Said>) => void;
}

/** Refusals are plain Errors with a sentence; anything else is a fault of the panel itself. */
function reasonOf(thrown: unknown): string {
  if (thrown instanceof Error && thrown.name === 'Error') return thrown.message;
  return `The panel has a fault. It said: ${String(thrown).replace(/\.?$/, '.')} Reload the page, open the panel again and try once more.`;
}

/** What a run may be watched with, each step of it shown; stopping it puts the keyboard back where the run was asked for. */
function watchOf(show: (outcome: Outcome) => void): Watch {
  const [stopping, asked] = [new AbortController(), document.activeElement];
  const stop = (): void => {
    show({ kind: 'waiting', text: 'Stopping. What was added so far is being removed again.' });
    if (asked instanceof HTMLElement) asked.focus();
    stopping.abort();
  };
  return { stop: stopping.signal, onProgress: (progress) => show({ kind: 'waiting', text: progress.doing, run: { progress, stop } }) };
}

export function useAsking(): Asking {
  const [outcome, setOutcome] = useState<Outcome>();
  // State is drawn a moment later; a second press in between must find the first.
  const running = useRef(false);
  const run = (waiting: string, work: (watch: Watch) => Promise<Said>): void => {
    if (running.current) return;
    running.current = true;
    setOutcome({ kind: 'waiting', text: waiting });
    const watch = watchOf(setOutcome);
    work(watch)
      .then(
        (said) => {
          const late = watch.stop.aborted ? 'It was done before it could be stopped. ' : '';
          setOutcome(typeof said === 'string' ? { kind: 'done', text: `${late}${said}` } : { kind: 'shown', text: said.shown });
        },
        (thrown: unknown) => setOutcome({ kind: 'refused', text: reasonOf(thrown) }),
      )
      .finally(() => {
        running.current = false;
      });
  };
  return { outcome, busy: outcome?.kind === 'waiting', run };
}
