// What is drawn over the picture at each stage.
import type { Place } from '../../../tracing/greyPicture';
import type { ChartFrame, ChartValue } from '../../../tracing/knownPoints';
import { valueOfPoint } from '../../../tracing/readings';
import { frameOf, typedNumber, type Draft } from './draft';
import type { Overlay, OverlayLine } from './drawOver';
import { rising, type ChartWork } from './work';

const most = 400;

/** The printed grid as the known points tell it: where it lies beside the printed one, a point or a value is wrong. */
function gridLines({ range: { least, most: top }, placeOf }: ChartFrame, draft: Draft): OverlayLine[] {
  const line = (one: ChartValue, other: ChartValue): OverlayLine => ({ look: 'grid', places: [one, other].flatMap((value) => placeOf(value) ?? []) });
  const steps = (low: number, high: number, step: number | undefined): number[] => {
    if (step === undefined || !(step > 0) || (high - low) / step > most) return [low, high];
    const first = Math.ceil(low / step - 1e-9);
    return [low, ...Array.from({ length: Math.floor(high / step + 1e-9) - first + 1 }, (_, index) => (first + index) * step), high];
  };
  return [
    ...steps(least.across, top.across, typedNumber(draft.axes.across.minor)).map((across) => line({ across, up: least.up }, { across, up: top.up })),
    ...steps(least.up, top.up, typedNumber(draft.axes.up.minor)).map((up) => line({ across: least.across, up }, { across: top.across, up })),
  ];
}

const shown = ({ across, up }: ChartValue): string => `${across}, ${up}`;

export function axesOverlay(draft: Draft, valueOfCorner: (index: number) => ChartValue | undefined): Overlay {
  const found = frameOf(draft);
  const own = draft.corners.flatMap((at, index) => (at === undefined ? [] : [{ at, value: valueOfCorner(index) }]));
  const all = [...own, ...draft.further];
  return {
    lines: 'frame' in found ? gridLines(found.frame, draft) : [],
    handles: all.map(({ at }) => at),
    labels: all.map(({ at, value }, index) => ({ at, text: `${index + 1}: ${value === undefined ? 'no value yet' : shown(value)}` })),
  };
}

export function curvesOverlay({ frame, axis }: ChartWork, draft: Draft, withGrid: boolean): Overlay {
  const place = (point: { input: number; figure: number }): Place[] => {
    const found = frame.placeOf(valueOfPoint(point, axis));
    return found === undefined ? [] : [found];
  };
  const lines = draft.curves.flatMap(({ lines: followed, readings }, index): OverlayLine[] => {
    const curve: OverlayLine = { look: index === draft.current ? 'curve' : 'other', places: rising(readings).flatMap(place) };
    const seen = followed.map((points): OverlayLine => ({ look: 'followed', places: points.flatMap(place) }));
    return index === draft.current ? [...seen, curve] : [curve];
  });
  const labels = draft.curves.flatMap(({ value, readings }) => {
    const [end] = rising(readings).slice(-1).flatMap(place);
    return end === undefined || value === '' ? [] : [{ at: end, text: value }];
  });
  const handles = (draft.curves[draft.current]?.readings ?? []).flatMap((one) => place(one).map((at) => ({ ...at, hollow: one.how === 'gap' })));
  return { lines: [...(withGrid ? gridLines(frame, draft) : []), ...lines], handles, labels };
}
