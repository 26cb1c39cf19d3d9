// What came of the last request, the same for every view: read out by screen readers, at the foot of what is in sight; a
// refusal carries its word, never colour alone. A long run shows how far it is, and can be stopped.
import type { Outcome } from './asking';

export function OutcomeLine({ outcome }: { readonly outcome: Outcome | undefined }) {
  const { kind, text, run } = outcome ?? {};
  return (
    <div class="foot">
      {/* A long refusal scrolls, so the keyboard must reach it. */}
      <p class={`outcome ${kind ?? ''}`} role="status" tabIndex={kind === 'refused' ? 0 : undefined}>
        {kind === 'refused' && <strong>Not done. </strong>}
        {text}
      </p>
      {run !== undefined && (
        <div class="run">
          <progress max={run.progress.of} value={run.progress.done} aria-label="Sheets written" />
          <button type="button" onClick={run.stop}>
            Stop
          </button>
        </div>
      )}
    </div>
  );
}
