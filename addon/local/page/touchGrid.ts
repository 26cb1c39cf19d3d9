// The grid under a finger: a swipe scrolls, a tap selects, and who rests on a cell for a moment and then moves selects a range.
// The grid itself takes every touch for a mouse that drags. Its touches are held back here, and given to it as what they mean.

const slackPixels = 10;
const restMilliseconds = 450;

/** held: not known yet what it becomes; scroll and select: what it became. */
interface Touch {
  readonly pointerId: number;
  readonly target: HTMLCanvasElement;
  readonly first: PointerEvent;
  last: PointerEvent;
  meaning: 'held' | 'scroll' | 'select';
}

/** As the grid would hear of a mouse at the same place. */
function giveAsMouse(type: 'pointerdown' | 'pointermove' | 'pointerup', { target }: Touch, at: PointerEvent): void {
  const { pointerId, clientX, clientY, screenX, screenY } = at;
  const buttons = type === 'pointerup' ? 0 : 1;
  const button = type === 'pointermove' ? -1 : 0;
  target.dispatchEvent(
    new PointerEvent(type, { pointerId, clientX, clientY, screenX, screenY, button, buttons, pointerType: 'mouse', bubbles: true, cancelable: true }),
  );
}

function scrollBy({ target, last }: Touch, to: PointerEvent): void {
  const { clientX, clientY } = to;
  const moved = { deltaX: last.clientX - clientX, deltaY: last.clientY - clientY };
  target.dispatchEvent(new WheelEvent('wheel', { ...moved, clientX, clientY, bubbles: true, cancelable: true }));
}

const hasMoved = ({ first }: Touch, to: PointerEvent): boolean => Math.hypot(to.clientX - first.clientX, to.clientY - first.clientY) > slackPixels;

function beginSelecting(touch: Touch): void {
  touch.meaning = 'select';
  giveAsMouse('pointerdown', touch, touch.first);
  navigator.vibrate?.(10);
}

export function scrollByTouch(grid: HTMLElement): void {
  let touch: Touch | undefined;
  let resting = 0;
  const end = (): void => {
    window.clearTimeout(resting);
    touch = undefined;
  };
  const hear = (type: string, what: (event: PointerEvent) => void): void =>
    grid.addEventListener(
      type,
      (event) => {
        if (!(event instanceof PointerEvent) || event.pointerType !== 'touch' || !(event.target instanceof HTMLCanvasElement)) return;
        event.stopImmediatePropagation();
        what(event);
      },
      { capture: true },
    );
  hear('pointerdown', (event) => {
    // A second finger is no part of any of the three: the first one then means nothing either.
    if (touch !== undefined) return end();
    const begun: Touch = { pointerId: event.pointerId, target: event.target as HTMLCanvasElement, first: event, last: event, meaning: 'held' };
    touch = begun;
    resting = window.setTimeout(() => beginSelecting(begun), restMilliseconds);
  });
  hear('pointermove', (event) => {
    if (touch?.pointerId !== event.pointerId) return;
    if (touch.meaning === 'held' && hasMoved(touch, event)) {
      touch.meaning = 'scroll';
      window.clearTimeout(resting);
    }
    if (touch.meaning === 'scroll') scrollBy(touch, event);
    if (touch.meaning === 'select') giveAsMouse('pointermove', touch, event);
    if (touch.meaning !== 'held') touch.last = event;
  });
  hear('pointerup', (event) => {
    if (touch?.pointerId !== event.pointerId) return;
    if (touch.meaning === 'held') giveAsMouse('pointerdown', touch, event);
    if (touch.meaning !== 'scroll') giveAsMouse('pointerup', touch, event);
    end();
  });
  hear('pointercancel', (event) => {
    if (touch?.meaning === 'select') giveAsMouse('pointerup', touch, event);
    end();
  });
}
