// A window over the page that keeps everything else waiting until it is closed, by its own button or by Escape.
import { render, type ComponentChildren } from 'preact';

/** `closed` is called however it was closed. */
export function showDialog(title: string, content: (close: () => void) => ComponentChildren, closed?: () => void): void {
  const dialog = document.createElement('dialog');
  dialog.className = 'over-page';
  dialog.setAttribute('aria-label', title);
  document.body.append(dialog);
  dialog.addEventListener('close', () => {
    render(null, dialog);
    dialog.remove();
    closed?.();
  });
  render(
    content(() => dialog.close()),
    dialog,
  );
  dialog.showModal();
}
