// Draws the picture, the grid as it was understood, the curves and the points over it, and a part of it under a magnifier.
import type { Place } from '../../../tracing/greyPicture';
import { toScreen, type View } from './view';

export interface OverlayLine {
  readonly places: readonly Place[];
  readonly look: 'grid' | 'followed' | 'curve' | 'other';
}

export interface Overlay {
  readonly lines: readonly OverlayLine[];
  /** Points that can be taken hold of. */
  readonly handles: readonly (Place & { readonly hollow?: boolean })[];
  readonly labels: readonly { readonly at: Place; readonly text: string }[];
}

const looks: Readonly<Record<OverlayLine['look'], readonly [colour: string, width: number]>> = {
  grid: ['rgba(0, 114, 178, 0.55)', 1],
  followed: ['rgba(204, 121, 167, 0.9)', 3],
  curve: ['#d55e00', 1.5],
  other: ['#0072b2', 1.5],
};
const [ink, paper] = ['#d55e00', '#ffffff'];
const magnification = 5;

function drawOverlay(context: CanvasRenderingContext2D, view: View, { lines, handles, labels }: Overlay): void {
  for (const { places, look } of lines) {
    [context.strokeStyle, context.lineWidth] = looks[look];
    context.beginPath();
    for (const place of places) {
      const { x, y } = toScreen(view, place);
      context.lineTo(x, y);
    }
    context.stroke();
  }
  for (const handle of handles) {
    const { x, y } = toScreen(view, handle);
    context.beginPath();
    context.arc(x, y, 4.5, 0, 2 * Math.PI);
    [context.fillStyle, context.strokeStyle, context.lineWidth] = handle.hollow === true ? [paper, ink, 2] : [ink, paper, 1.5];
    context.fill();
    context.stroke();
  }
  context.font = 'bold 13px Arial, sans-serif';
  for (const { at, text } of labels) {
    const { x, y } = toScreen(view, at);
    [context.lineWidth, context.strokeStyle, context.fillStyle] = [4, paper, '#1b1f24'];
    context.strokeText(text, x + 8, y - 7);
    context.fillText(text, x + 8, y - 7);
  }
}

function drawCross(context: CanvasRenderingContext2D, { x, y }: Place, arm: number): void {
  for (const [colour, width] of [
    [paper, 3],
    ['#1b1f24', 1],
  ] as const) {
    [context.strokeStyle, context.lineWidth] = [colour, width];
    context.beginPath();
    for (const [right, down] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ] as const) {
      context.moveTo(x + 3 * right, y + 3 * down);
      context.lineTo(x + arm * right, y + arm * down);
    }
    context.stroke();
  }
}

function drawThrough(context: CanvasRenderingContext2D, image: HTMLCanvasElement, view: View, overlay: Overlay): void {
  context.imageSmoothingEnabled = view.scale < 2;
  context.drawImage(image, view.x, view.y, image.width * view.scale, image.height * view.scale);
  drawOverlay(context, view, overlay);
}

export function drawPicture(
  canvas: HTMLCanvasElement,
  magnifier: HTMLCanvasElement | null,
  image: HTMLCanvasElement,
  view: View,
  overlay: Overlay,
  cross: Place,
): void {
  const fine = window.devicePixelRatio;
  [canvas.width, canvas.height] = [Math.round(canvas.clientWidth * fine), Math.round(canvas.clientHeight * fine)];
  const context = canvas.getContext('2d');
  if (context === null) return;
  context.scale(fine, fine);
  drawThrough(context, image, view, overlay);
  drawCross(context, toScreen(view, cross), 14);
  const close = magnifier?.getContext('2d');
  if (magnifier === null || close === null || close === undefined) return;
  const scale = Math.max(view.scale * 2, magnification);
  close.fillStyle = '#888';
  close.fillRect(0, 0, magnifier.width, magnifier.height);
  const about = { scale, x: magnifier.width / 2 - (cross.x + 0.5) * scale, y: magnifier.height / 2 - (cross.y + 0.5) * scale };
  drawThrough(close, image, about, overlay);
  drawCross(close, { x: magnifier.width / 2, y: magnifier.height / 2 }, 22);
  // In the corner that the cross is not in.
  magnifier.classList.toggle('left', toScreen(view, cross).x > canvas.clientWidth / 2);
}
