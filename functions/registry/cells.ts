// One cell in, one cell out: between what the host sends or takes and what an implementation reads or gives.
import { ArgumentError } from './argumentError';
import { isWhollyBlank, oneLine, type CellValue } from './cellValues';
import type { DateHost } from './dateHost';
import type { Parameter, ResultCell } from './declaration';
import { NamedArgumentError, internalError, SheetError, sentence } from './wordError';

/** One value of one argument: its default where it may be left out, else what its reader makes of it. */
export function readValue(name: string, parameter: Parameter<unknown>, raw: CellValue, dates: DateHost): unknown {
  const { optional } = parameter;
  if (optional !== undefined && (optional.blankIsMistake === true ? raw === undefined : isWhollyBlank(raw))) return optional.value;
  try {
    return parameter.read(raw, dates);
  } catch (thrown) {
    throw thrown instanceof ArgumentError ? new NamedArgumentError(name, thrown) : thrown;
  }
}

/** A cell as the host takes it: words on one line, 0 without a sign. A number that is not finite is our mistake, and must never reach a sheet. */
export function writeCell(functionName: string, cell: ResultCell, dates: DateHost): CellValue {
  if (typeof cell === 'object') return 'utcMilliseconds' in cell ? dates.fromInstant(cell) : dates.fromCivil(cell);
  if (typeof cell === 'number' && !Number.isFinite(cell)) throw new SheetError(sentence(functionName, internalError('a number that is not finite')));
  if (typeof cell === 'string') return oneLine(cell);
  return cell === 0 ? 0 : cell;
}
