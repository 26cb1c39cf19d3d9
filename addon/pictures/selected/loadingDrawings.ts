// The pictures of BALANCE_CHECK and LOADING_BRIEF on any sheet: the envelope with what is loaded, the selected row's point ringed.
import { numberFromCell } from '../../../functions/registry/readNumber';
import type { CellValue } from '../../workbook/snapshot';
import { Missing, orEmpty } from '../missing';
import { scatterPicture, type DrawnSeries, type ScatterRequest } from '../scatterPicture';
import type { Point } from '../svg';
import { from, type Drawable, type Drawing, type Size } from './drawable';
import type { PicturedCall } from './picturedCall';
import { isNumber } from './workbookCells';

const title = 'Loading in the envelope';

/** Parts of a line of moments, which is a curve of arms. */
const parts = 12;

/** What an envelope is printed as, made arms: a straight line of moments becomes a chain of short ones. */
function asArms(call: PicturedCall, corners: readonly Point[]): Point[] {
  const printed = String(call.value('envelope_in')).replace(/[ ,]/g, '').toLowerCase();
  if (printed.startsWith('moment')) {
    const divisor = Number(/\d+$/.exec(printed)?.[0] ?? 1);
    return corners.flatMap((corner, index) => {
      const next = corners[(index + 1) % corners.length] ?? corner;
      const steps = Array.from({ length: next.y === corner.y ? 1 : parts }, (_, step) => (next.y === corner.y ? 0 : step / parts));
      return steps.map((step) => {
        const y = corner.y + step * (next.y - corner.y);
        return { x: ((corner.x + step * (next.x - corner.x)) * divisor) / y, y };
      });
    });
  }
  if (!printed.endsWith('mac')) return [...corners];
  const [edge, chord] = [call.number('leading_edge'), call.number('chord')];
  return corners.map(({ x, y }) => ({ x: edge + (x / 100) * chord, y }));
}

/** The corners in their order, closed. */
function outline(call: PicturedCall): DrawnSeries {
  const typed = (call.cells('envelope') ?? []).flatMap((corner) => {
    const [x, y] = corner.map(numberFromCell);
    return x === undefined || y === undefined ? [] : [{ x, y }];
  });
  const corners = asArms(call, typed);
  const [first] = corners;
  if (first === undefined || corners.length < 3) throw new Missing(`no envelope yet for ${call.place}`);
  return { title: 'envelope', drawn: 'line', runs: [[...corners, first]] };
}

const drawn = (size: Size, request: () => Omit<ScatterRequest, 'title' | 'xTitle' | 'yTitle'>): string =>
  orEmpty({ ...size, title }, () => scatterPicture({ title, xTitle: 'arm', yTitle: 'weight', ...request() }, size));
const isJudged = (verdict: CellValue | undefined): boolean => verdict === 'OK' || verdict === 'NO' || verdict === 'CHECK';

export function checkDrawable(call: PicturedCall): Drawable {
  const count = call.rows('weight', 'arm');
  const pointAt = (index: number): Point => ({ x: call.number('arm', undefined, index), y: call.number('weight', undefined, index) });
  const draw = (selectedRow: number, size: Size): Drawing => {
    const index = Math.min(count - 1, Math.max(0, selectedRow - call.cell.row));
    const row = call.cell.row + index;
    const svg = drawn(size, () => {
      const envelope = outline(call);
      const verdict = call.answer(index, 0);
      if (!isJudged(verdict)) throw call.unlike(verdict);
      const points = Array.from({ length: count }, (_, at) => at)
        .filter((at) => isJudged(call.answer(at, 0)))
        .map((at) => [pointAt(at)]);
      return {
        description: `Weight against arm. ${call.rowName(row)} is ${String(verdict)}.`,
        series: [envelope, { title: count === 1 ? 'loading' : 'loadings', drawn: 'points', runs: points }],
        selected: { ...pointAt(index), words: `${call.rowName(row)}, ${String(verdict)}` },
      };
    });
    return { svg, what: title, row };
  };
  return { ...from(call.cell, count, 4), name: 'BALANCE_CHECK', draw };
}

const maxRows = 220;
const points = ['zero fuel', 'take-off', 'landing'];

interface BriefRow {
  readonly name: CellValue;
  readonly verdict: CellValue;
  readonly point: Point | undefined;
}

function briefOf(call: PicturedCall): BriefRow[] {
  const rows: BriefRow[] = [];
  for (let index = 0; index < maxRows && call.answer(index, 0) !== ''; index += 1) {
    const [name = '', verdict = '', y, x] = [0, 1, 2, 3].map((column) => call.answer(index, column));
    rows.push({ name, verdict, point: isNumber(x) && isNumber(y) ? { x, y } : undefined });
    // "suggested change" ends the brief unless the rows of the burn follow.
    if (rows.some((row) => row.name === 'suggested change') && call.answer(index + 1, 0) !== 'burn') break;
  }
  return rows;
}

export function briefDrawable(call: PicturedCall): Drawable {
  const rows = briefOf(call);
  const seriesNamed = (name: string, how: DrawnSeries['drawn']): DrawnSeries => ({
    title: name,
    drawn: how,
    runs: [rows.flatMap((row) => (row.name === name && row.point !== undefined ? [row.point] : []))].filter((run) => run.length > 0),
  });
  const draw = (selectedRow: number, size: Size): Drawing => {
    const row = rows[selectedRow - call.cell.row];
    const svg = drawn(size, () => {
      if (rows[0]?.name !== points[0]) throw call.unlike(call.answer(0, 0));
      const burn = seriesNamed('burn', 'line');
      return {
        description: 'Weight against arm: the outline of the envelope and the points judged.',
        series: [outline(call), ...(burn.runs.length > 0 ? [burn] : []), ...points.map((name) => seriesNamed(name, 'points'))],
        ...(row?.point !== undefined && { selected: { ...row.point, words: `${String(row.name)}, ${String(row.verdict)}` } }),
      };
    });
    return { svg, what: title, row: selectedRow };
  };
  return { ...from(call.cell, rows.length, 8), name: 'LOADING_BRIEF', draw };
}
