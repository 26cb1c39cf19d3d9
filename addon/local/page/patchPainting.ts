// A patch of how the grid puts painting off to the next turn. As it comes, it opens a message channel each time and closes it only where
// the painting is called off, and the browser keeps an open channel for ever: three for each edit. Here the channel is closed when its
// message has come. It can go once the library's requestImmediateMacroTask closes its channel: test/browser/leaks.test.ts tells.
import { requestImmediateMacroTask } from '@univerjs/core';
import { Layer } from '@univerjs/preset-sheets-core';

/** What the library's class has of its own, as far as it is used here. */
interface Painted {
  _debounceDirtyFunc: (() => void) | null | undefined;
  readonly _disposed: boolean;
  makeDirty(state: boolean): unknown;
}

/** A thing drawn on a layer: a frame of the selection, the shadow of a drawing. */
interface Drawn {
  readonly onTransformChange$: { subscribeEvent(moved: () => void): unknown };
  layer: Painted;
}

export function patchPainting(): void {
  (Layer.prototype as { makeDirtyWithDebounce: unknown }).makeDirtyWithDebounce = function paintSoon(this: Painted, state = true): void {
    this._debounceDirtyFunc?.();
    const close = requestImmediateMacroTask(() => {
      close();
      this._debounceDirtyFunc = null;
      this.makeDirty(state);
    });
    this._debounceDirtyFunc = close;
  };
  /** As it comes, the layer holds what it has drawn until it goes itself, which is never: each selection leaves its frames behind. */
  (Layer.prototype as unknown as { _layerBehavior: unknown })._layerBehavior = function listenTo(this: Painted, drawn: Drawn): void {
    drawn.onTransformChange$.subscribeEvent(() => {
      if (!this._disposed) this.makeDirty(true);
    });
    drawn.layer = this;
  };
}
