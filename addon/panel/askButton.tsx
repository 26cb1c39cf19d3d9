// A button that asks something of the host. While an answer is awaited it says so and does nothing, but keeps the focus.
import type { ComponentChildren } from 'preact';
import type { Asking } from './asking';

interface AskButtonProps {
  readonly asking: Asking;
  readonly ask: () => void;
  readonly look?: 'main' | 'wide' | 'cell';
  /** For screen readers, where the text alone does not say what the button does; it contains that text. */
  readonly label?: string;
  readonly children: ComponentChildren;
}

export function AskButton({ asking, ask, look, label, children }: AskButtonProps) {
  return (
    <button type="button" class={look} aria-disabled={asking.busy} aria-label={label} onClick={() => !asking.busy && ask()}>
      {children}
    </button>
  );
}
