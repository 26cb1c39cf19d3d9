// A scatter chart as SVG. Series differ in shape or dash as well as in colour, so that it reads in grey print.
import type { JSX } from 'preact';
import { pathOf, scalesOf, type ChartPoint, type DrawnSeries, type PlotArea, type Scales } from './chartModel';

export interface ChartProperties {
  readonly title: string;
  readonly description: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly width: number;
  readonly height: number;
  readonly series: readonly DrawnSeries[];
}

/** Okabe and Ito's colour-blind-safe set (Color Universal Design, 2008): black, blue, vermilion, bluish green, reddish purple. */
const colours = ['#000000', '#0072b2', '#d55e00', '#009e73', '#cc79a7'];
const dashes = ['', '7 3', '2 3', '8 3 2 3', '4 2'];
const faint = '#57606a';
const gridColour = '#e4e8ec';

/** One outline for each series in turn, about 9 pixels wide, centred on 0,0. */
const markers = ['M-4.5,0a4.5,4.5 0 1,0 9,0a4.5,4.5 0 1,0 -9,0', 'M-4,-4H4V4H-4Z', 'M0,-5L5,4H-5Z', 'M0,-5.5L5.5,0L0,5.5L-5.5,0Z', 'M0,5L5,-4H-5Z'];
const of = (list: readonly string[], index: number): string => list[index % list.length] ?? '';

function Axes({ scales, area, xTitle, yTitle }: { readonly scales: Scales; readonly area: PlotArea; readonly xTitle: string; readonly yTitle: string }): JSX.Element {
  const [xFormat, yFormat] = [scales.x.tickFormat(6), scales.y.tickFormat(6)];
  const middle = (area.top + area.bottom) / 2;
  return (
    <g fill={faint}>
      {scales.x.ticks(6).map((tick) => (
        <g key={`x${tick}`} transform={`translate(${scales.x(tick)},0)`}>
          <line y1={area.top} y2={area.bottom} stroke={gridColour} />
          <text y={area.bottom + 14} text-anchor="middle">{xFormat(tick)}</text>
        </g>
      ))}
      {scales.y.ticks(6).map((tick) => (
        <g key={`y${tick}`} transform={`translate(0,${scales.y(tick)})`}>
          <line x1={area.left} x2={area.right} stroke={gridColour} />
          <text x={area.left - 6} dy="0.32em" text-anchor="end">{yFormat(tick)}</text>
        </g>
      ))}
      <text x={(area.left + area.right) / 2} y={area.bottom + 30} text-anchor="middle">{xTitle}</text>
      <text transform={`translate(14,${middle}) rotate(-90)`} text-anchor="middle">{yTitle}</text>
    </g>
  );
}

const marker = (point: ChartPoint, index: number, { x, y }: Scales): JSX.Element => (
  <path key={`${point.x} ${point.y}`} d={of(markers, index)} transform={`translate(${x(point.x)},${y(point.y)})`} fill={of(colours, index)} stroke="#fff" />
);

function Series({ series, index, scales }: { readonly series: DrawnSeries; readonly index: number; readonly scales: Scales }): JSX.Element {
  if (series.drawn === 'points') return <g>{series.runs.flat().map((point) => marker(point, index, scales))}</g>;
  return (
    <g fill="none" stroke={of(colours, index)} stroke-width="1.8" stroke-dasharray={of(dashes, index)}>
      {series.runs.map((run) => <path key={pathOf(run, scales)} d={pathOf(run, scales)} />)}
    </g>
  );
}

const legendLetterWidth = 6;
const legendGap = 34;

/** The names of the series side by side, on as many lines as they need. */
function legendPlaces(titles: readonly string[], width: number): { readonly x: number; readonly line: number }[] {
  let [x, line] = [0, 0];
  return titles.map((title) => {
    const needed = title.length * legendLetterWidth + legendGap;
    if (x > 0 && x + needed > width) [x, line] = [0, line + 1];
    const place = { x, line };
    x += needed;
    return place;
  });
}

function Key({ series, index }: { readonly series: DrawnSeries; readonly index: number }): JSX.Element {
  return series.drawn === 'points' ? (
    <path d={of(markers, index)} transform="translate(9,-4)" fill={of(colours, index)} />
  ) : (
    <line x2="18" y1="-4" y2="-4" stroke={of(colours, index)} stroke-width="1.8" stroke-dasharray={of(dashes, index)} />
  );
}

export function ScatterChart({ title, description, xTitle, yTitle, width, height, series }: ChartProperties): JSX.Element {
  const left = 62;
  const legend = legendPlaces(series.map((one) => one.title), width - left - 14);
  const top = 46 + 15 * (legend.at(-1)?.line ?? 0);
  const area: PlotArea = { left, right: width - 14, top, bottom: height - 40 };
  const scales = scalesOf(series, area);
  return (
    <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={`${title}. ${description}`}>
      <title>{description}</title>
      <text x={left} y={17} font-weight="bold" font-size="12" fill="#1b1f24">{title}</text>
      {series.map((one, index) => (
        <g key={one.title} transform={`translate(${left + (legend[index]?.x ?? 0)},${35 + 15 * (legend[index]?.line ?? 0)})`}>
          <Key series={one} index={index} />
          <text x="24" fill="#1b1f24">{one.title}</text>
        </g>
      ))}
      {scales === undefined ? (
        <text x={width / 2} y={height / 2} text-anchor="middle" fill={faint}>Nothing to draw yet: the cells hold no numbers.</text>
      ) : (
        <>
          <Axes scales={scales} area={area} xTitle={xTitle} yTitle={yTitle} />
          {series.map((one, index) => <Series key={one.title} series={one} index={index} scales={scales} />)}
        </>
      )}
    </svg>
  );
}
