// The runway sections of the Trip sheet: each step of the brief, and what the runway would still allow.
import { area, line, on } from './build';
import type { FormatName } from './look';
import { tableInUse } from './manualTables';
import { balanceCells, sheetNames } from './places';
import { formulaCall, type TemplateCell } from './template';
import { blockRows, correctionsRead, entryRows as rows, type Block } from './tripRows';

/** Of the rows of a brief with four corrections: knots and per cent to a tenth, the ratio to a hundredth; then room for a fifth. */
const briefFormats: readonly FormatName[] = ['whole', 'whole', 'one', 'one', 'whole', 'one', 'one', 'one', 'one', 'whole', 'whole', 'whole', 'whole', 'two', 'whole', 'whole'];
const limitFormats: readonly FormatName[] = ['whole', 'whole', 'one', 'one', 'whole'];

function spill(block: Block, call: string, formats: readonly FormatName[], note: string): TemplateCell[] {
  return formats.slice(0, block.last - block.first + 1).flatMap((format, index) =>
    line(block.first + index, 6, [index === 0 ? `=${call}` : undefined, 'computedText', index === 0 ? { note } : {}], [undefined, 'computed', { format }], [undefined, 'unit'], [undefined, 'unit']),
  );
}

interface Runway {
  readonly table: 'takeoff' | 'landing';
  readonly column: 'B' | 'C';
  readonly weight: string;
  readonly corrections: Block;
}

function given({ table, column, weight, corrections }: Runway): string[] {
  const at = (row: number): string => `${column}${row}`;
  const entries = [rows.runway, rows.available, rows.elevation, rows.altimeter, rows.temperature, rows.windFrom, rows.wind, rows.factor].map(at);
  const { first, last } = correctionsRead(corrections);
  return [tableInUse(table), '"over 50 ft"', on(sheetNames.balance, weight), ...entries, area(first, 1, last, 4)];
}

const takeoff: Runway = { table: 'takeoff', column: 'B', weight: balanceCells.takeoffWeight, corrections: blockRows.takeoffCorrections };
const landing: Runway = { table: 'landing', column: 'C', weight: balanceCells.landingWeight, corrections: blockRows.landingCorrections };

const heading = (row: number, title: string): TemplateCell[] => line(row, 6, [title, 'heading'], ['', 'heading'], ['', 'heading'], ['', 'heading']);

const briefNote = 'Every factor of the distance, from the aircraft table to the margin. Corrections multiply one another (Safety Sense Leaflet 7).';
const limitNote = 'What the runway would still carry, other things as today: solved inside the table, never beyond it.';

export const briefCells: TemplateCell[] = [
  ...heading(blockRows.takeoffBrief.first - 1, 'Take-off over 50 ft, step by step'),
  ...spill(blockRows.takeoffBrief, formulaCall('TAKEOFF_BRIEF', ...given(takeoff)), briefFormats, briefNote),
  ...heading(blockRows.takeoffLimits.first - 1, 'This take-off would still allow'),
  ...spill(blockRows.takeoffLimits, formulaCall('TAKEOFF_LIMITS', ...given(takeoff)), limitFormats, limitNote),
  ...heading(blockRows.landingBrief.first - 1, 'Landing over 50 ft, step by step'),
  ...spill(blockRows.landingBrief, formulaCall('LANDING_BRIEF', ...given(landing)), briefFormats, briefNote),
  ...heading(blockRows.landingLimits.first - 1, 'This landing would still allow'),
  ...spill(blockRows.landingLimits, formulaCall('LANDING_LIMITS', ...given(landing)), limitFormats, limitNote),
];
