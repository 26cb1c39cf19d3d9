// What came of the last request, read out by screen readers; a refusal carries its word, never colour alone.
import type { Outcome } from './asking';

export function OutcomeLine({ outcome }: { readonly outcome: Outcome | undefined }) {
  return (
    <p class={`outcome ${outcome?.kind ?? ''}`} role="status" aria-live="polite">
      {outcome?.kind === 'refused' && <strong>Not done. </strong>}
      {outcome?.text}
    </p>
  );
}
