// The strip at the foot in which the page says what became of something, until it is closed.
import { elementNamed } from './elements';

export interface Choice {
  readonly label: string;
  readonly chosen: () => void;
}

/** The button pressed goes with the sentence, so the keyboard is put back on one that stays. */
function close(): void {
  notify('');
  elementNamed('calendar-button').focus();
}

/** Shows sentences, with buttons for what may be answered. */
export function notify(sentence: string, choices: readonly Choice[] = []): void {
  elementNamed('files-said').textContent = sentence;
  const buttons = [...choices, { label: 'Close', chosen: close }].map(({ label, chosen }) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = label;
    button.addEventListener('click', chosen);
    return button;
  });
  elementNamed('files-choices').replaceChildren(...(sentence === '' ? [] : buttons));
}

export const notifyFailure = (thrown: unknown): void => notify(`Not done: ${thrown instanceof Error ? thrown.message : String(thrown)}`);
