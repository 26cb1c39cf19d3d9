// What came of the last request, the same for every view: read out by screen readers, at the foot of what is in sight; a
// refusal carries its word, never colour alone.
import type { Outcome } from './asking';

export function OutcomeLine({ outcome }: { readonly outcome: Outcome | undefined }) {
  return (
    // A long refusal scrolls, so the keyboard must reach it.
    <p class={`outcome ${outcome?.kind ?? ''}`} role="status" tabIndex={outcome?.kind === 'refused' ? 0 : undefined}>
      {outcome?.kind === 'refused' && <strong>Not done. </strong>}
      {outcome?.text}
    </p>
  );
}
