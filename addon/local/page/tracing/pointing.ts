// What the mouse, a finger and the keys do in the picture.
import type { Place } from '../../../tracing/greyPicture';
import { toPicture, toScreen, zoomed, type View } from './view';

/** What the handlers read and change; made anew for each drawing. */
export interface Pointing {
  readonly canvas: HTMLCanvasElement | null;
  readonly image: HTMLCanvasElement;
  readonly view: View | undefined;
  readonly setView: (view: View) => void;
  readonly cross: Place;
  readonly setCross: (place: Place) => void;
  readonly held: number | undefined;
  readonly setHeld: (handle: number | undefined) => void;
  readonly handles: readonly Place[];
  /** Kept from one drawing to the next. */
  readonly drag: { current: Drag | undefined };
  /** A press on a point sets another one there too; else it only takes hold of it. */
  readonly overPoints: boolean;
  readonly onPress: (place: Place) => void;
  readonly onMove: (handle: number, place: Place) => void;
  readonly onRemove: (handle: number) => void;
}

export interface Drag {
  readonly from: Place;
  readonly view: View;
  readonly handle: number | undefined;
  moved: boolean;
}

/** Screen pixels about a point in which it is taken hold of. */
const grip = { exact: 9, finger: 24 };

const clamped = ({ x, y }: Place, { width, height }: HTMLCanvasElement): Place => ({
  x: Math.min(Math.max(x, 0), width - 1),
  y: Math.min(Math.max(y, 0), height - 1),
});

function handleNear({ handles, view }: Pointing, place: Place, reach: number): number | undefined {
  const distances = handles.map((one) => Math.hypot(one.x - place.x, one.y - place.y) * (view?.scale ?? 1));
  const nearest = distances.indexOf(Math.min(...distances));
  return (distances[nearest] ?? Infinity) <= reach ? nearest : undefined;
}

function placeOf({ canvas, view }: Pointing, event: MouseEvent): Place | undefined {
  const box = canvas?.getBoundingClientRect();
  return box === undefined || view === undefined ? undefined : toPicture(view, { x: event.clientX - box.left, y: event.clientY - box.top });
}

export function pointerDown(pointing: Pointing, event: PointerEvent): void {
  const { canvas, view, drag } = pointing;
  const place = placeOf(pointing, event);
  if (place === undefined || view === undefined || event.button !== 0) return;
  canvas?.setPointerCapture(event.pointerId);
  const handle = handleNear(pointing, place, event.pointerType === 'touch' ? grip.finger : grip.exact);
  drag.current = { from: { x: event.clientX, y: event.clientY }, view, handle, moved: false };
}

/** Moves the point that was taken hold of, else the picture. */
export function pointerMove(pointing: Pointing, event: PointerEvent): void {
  const place = placeOf(pointing, event);
  if (place === undefined) return;
  const inside = clamped(place, pointing.image);
  pointing.setCross(inside);
  const now = pointing.drag.current;
  if (now === undefined) return;
  const [right, below] = [event.clientX - now.from.x, event.clientY - now.from.y];
  now.moved ||= Math.hypot(right, below) > 4;
  if (!now.moved) return;
  if (now.handle === undefined) pointing.setView({ ...now.view, x: now.view.x + right, y: now.view.y + below });
  else pointing.onMove(now.handle, inside);
}

export function pointerUp(pointing: Pointing, event: PointerEvent): void {
  const [place, now] = [placeOf(pointing, event), pointing.drag.current];
  pointing.drag.current = undefined;
  if (place !== undefined && now !== undefined && !now.moved && (pointing.overPoints || now.handle === undefined))
    pointing.onPress(clamped(place, pointing.image));
}

export function wheel(pointing: Pointing, event: WheelEvent): void {
  event.preventDefault();
  const place = placeOf(pointing, event);
  if (place !== undefined && pointing.view !== undefined)
    pointing.setView(zoomed(pointing.view, event.deltaY < 0 ? 1.25 : 0.8, toScreen(pointing.view, place)));
}

const arrows: Readonly<Record<string, Place>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};
/** A pixel of the picture, or with Shift these of the screen. */
const large = 12;
const fromEdge = 20;

function stepCross(pointing: Pointing, view: View, arrow: Place, isLarge: boolean): void {
  const { cross, image, canvas, held } = pointing;
  const pixels = isLarge ? large / view.scale : 1;
  const next = clamped({ x: cross.x + arrow.x * pixels, y: cross.y + arrow.y * pixels }, image);
  pointing.setCross(next);
  if (held !== undefined) pointing.onMove(held, next);
  const [{ x, y }, width, height] = [toScreen(view, next), canvas?.clientWidth ?? 0, canvas?.clientHeight ?? 0];
  if (x < fromEdge || y < fromEdge || x > width - fromEdge || y > height - fromEdge)
    pointing.setView({ ...view, x: width / 2 - next.x * view.scale, y: height / 2 - next.y * view.scale });
}

function pressAtCross(pointing: Pointing): void {
  const { cross, held, setHeld, onPress } = pointing;
  const near = handleNear(pointing, cross, grip.exact);
  if (held !== undefined) setHeld(undefined);
  else if (near !== undefined) setHeld(near);
  else onPress(cross);
}

function removeAtCross(pointing: Pointing): void {
  const near = pointing.held ?? handleNear(pointing, pointing.cross, grip.exact);
  pointing.setHeld(undefined);
  if (near !== undefined) pointing.onRemove(near);
}

export function keyDown(pointing: Pointing, event: KeyboardEvent): void {
  const { view, cross } = pointing;
  const arrow = arrows[event.key];
  if (view === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
  if (arrow !== undefined) stepCross(pointing, view, arrow, event.shiftKey);
  else if (event.key === 'Enter' || event.key === ' ') pressAtCross(pointing);
  else if (event.key === 'Delete' || event.key === 'Backspace') removeAtCross(pointing);
  else if (event.key === '+' || event.key === '-') pointing.setView(zoomed(view, event.key === '+' ? 1.5 : 1 / 1.5, toScreen(view, cross)));
  else return;
  event.preventDefault();
}
