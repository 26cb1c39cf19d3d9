// Whether a text is a workbook of this program, whole, and of a version that this program knows.
import { isLater, type KeptWorkbook } from './fileFormat';

export type Standing = 'whole' | 'damaged' | 'later';

export function standingOf(text: string): Standing {
  try {
    const kept = (JSON.parse(text) as KeptWorkbook | null) ?? {};
    const { sheetOrder, sheets } = kept;
    const whole = Array.isArray(sheetOrder) && sheetOrder.length > 0 && sheetOrder.every((id) => typeof sheets?.[String(id)] === 'object');
    if (!whole) return 'damaged';
    return isLater(kept) ? 'later' : 'whole';
  } catch {
    return 'damaged';
  }
}
