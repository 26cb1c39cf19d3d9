// The picture with what is drawn over it: moved, made larger, and pointed into, by mouse, finger or keys.
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Place } from '../../../tracing/greyPicture';
import { drawPicture, type Overlay } from './drawOver';
import { keyDown, pointerDown, pointerMove, pointerUp, wheel, type Drag, type Pointing } from './pointing';
import { fitted, zoomed, type View } from './view';

interface PictureViewProps extends Pick<Pointing, 'overPoints' | 'onPress' | 'onMove' | 'onRemove'> {
  readonly image: HTMLCanvasElement;
  readonly overlay: Overlay;
  /** What the place below the cross is, in words. */
  readonly said: (place: Place) => string;
}

/** The room that an element has, as it changes. */
function useRoom(element: { readonly current: HTMLElement | null }): { readonly width: number; readonly height: number } {
  const [room, setRoom] = useState({ width: 0, height: 0 });
  useEffect(() => {
    const { current } = element;
    if (current === null) return undefined;
    const observer = new ResizeObserver(() => setRoom({ width: current.clientWidth, height: current.clientHeight }));
    observer.observe(current);
    return () => observer.disconnect();
  }, []);
  return room;
}

const keysHelp =
  'The picture. Arrow keys move the cross by one pixel of the picture, with Shift farther. Enter sets a point, or takes hold of one and lets it go. Delete removes one. Plus and minus change the size.';

export function PictureView({ image, overlay, said, ...actions }: PictureViewProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const magnifier = useRef<HTMLCanvasElement>(null);
  const drag = useRef<Drag>();
  const room = useRoom(canvas);
  const [view, setView] = useState<View>();
  const [cross, setCross] = useState<Place>({ x: image.width / 2, y: image.height / 2 });
  const [held, setHeld] = useState<number>();
  useEffect(() => setView(fitted(room, image)), [image, room]);
  useEffect(() => {
    if (canvas.current !== null && view !== undefined) drawPicture(canvas.current, magnifier.current, image, view, overlay, cross);
  });
  const own = { image, view, setView, cross, setCross, held, setHeld, handles: overlay.handles };
  const pointing = (): Pointing => ({ canvas: canvas.current, drag: drag as Pointing['drag'], ...own, ...actions });
  const larger = (factor: number) => (): void => {
    if (view !== undefined) setView(zoomed(view, factor, { x: room.width / 2, y: room.height / 2 }));
  };
  return (
    <div class="picture-side">
      <div class="picture-place" tabIndex={0} role="application" aria-label={keysHelp} onKeyDown={(event) => keyDown(pointing(), event)}>
        <canvas
          ref={canvas}
          aria-hidden="true"
          onPointerDown={(event) => pointerDown(pointing(), event)}
          onPointerMove={(event) => pointerMove(pointing(), event)}
          onPointerUp={(event) => pointerUp(pointing(), event)}
          onPointerCancel={() => (drag.current = undefined)}
          onWheel={(event) => wheel(pointing(), event)}
        />
        <canvas ref={magnifier} class="magnifier" width={150} height={150} aria-hidden="true" />
      </div>
      <p class="choices">
        <button type="button" onClick={larger(1.5)}>
          Larger
        </button>
        <button type="button" onClick={larger(1 / 1.5)}>
          Smaller
        </button>
        <button type="button" onClick={() => setView(fitted(room, image))}>
          All of it
        </button>
        <span class="under-cross">
          {held === undefined ? '' : 'A point is held: arrow keys move it, Enter lets it go. '}
          {said(cross)}
        </span>
      </p>
    </div>
  );
}
