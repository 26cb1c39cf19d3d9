// The workbook opened once for many cases: each is typed in, read and taken back together with the next, so that a case costs one calculation.
import { openHeadless, type HeadlessWorkbook } from '../../addon/local/engine/headless';
import { sheetTemplates } from '../../sheets-templates';
import type { TemplateValue } from '../../sheets-templates/template';
import { sheetName, standing, type Typed } from './tripCells';

export interface TripSeen {
  readonly verdict: string;
  /** The line beside the verdict. */
  readonly said: string;
  readonly items: ReadonlyMap<string, { readonly word: string; readonly reason: string }>;
}

export interface OpenTrip {
  readonly workbook: HeadlessWorkbook;
  /** What the trip says with these cells typed and every other as it comes. */
  seenWith(cells: readonly Typed[]): Promise<TripSeen>;
  dispose(): void;
}

export async function openTrip(): Promise<OpenTrip> {
  const workbook = await openHeadless(sheetTemplates);
  let changed: readonly Typed[] = [];

  async function change(cells: readonly Typed[]): Promise<void> {
    const sheets: Record<string, Record<string, TemplateValue>> = {};
    for (const { sheet, cell, value } of cells) sheets[sheetName(sheet)] = { ...sheets[sheetName(sheet)], [cell]: value };
    await workbook.setSheets(sheets);
  }
  const seen = (): TripSeen => ({
    verdict: String(workbook.named('trip_verdict')[0]?.[0]),
    said: String(workbook.value(sheetName('trip'), 'G3')),
    items: new Map(workbook.named('trip_reasons').map(([item, word, reason]) => [String(item), { word: String(word), reason: String(reason) }])),
  });
  return {
    workbook,
    seenWith: async (cells) => {
      const back = changed.map(({ sheet, cell }) => ({ sheet, cell, value: standing(sheet, cell) }));
      changed = cells;
      if (back.length + cells.length > 0) await change([...back, ...cells]);
      return seen();
    },
    dispose: () => workbook.dispose(),
  };
}
