// Puts a drawing of ours over the grid. The grid places a box for each and calls a React component by name; all that the
// component does is to fill its box with the drawing, anew after each calculation.
import type { FUniver } from '@univerjs/core/facade';
import type {} from '@univerjs/sheets-drawing-ui/facade';
import type {} from '@univerjs/ui/facade';
import { createElement, useEffect, useRef, type ReactElement } from 'react';
import { sheetNamed } from './cells';
import type { Workbook } from './grid';

export interface Drawing<Data> {
  /** Name by which the workbook's drawings ask for it. */
  readonly component: string;
  readonly className: string;
  /** Markup for the box; texts in it are escaped. */
  readonly draw: (workbook: Workbook, data: Data) => string;
  /** One of the names of the workbook behind the drawing: it tells whose cells are drawn. */
  readonly nameOf: (data: Data) => string | undefined;
}

const ofAnotherSheet =
  '<p>This sheet is a copy, and this drawing would show the cells of the sheet it was copied from. To have a sheet with a drawing of its own, insert it from the panel.</p>';

/** The grid copies a drawing with its sheet, but not the names that it reads: the copy would look right and show other cells. */
function standsElsewhere(workbook: Workbook, drawing: string, name: string | undefined): boolean {
  const standsOn = workbook.getSheets().find((sheet) => sheet.getAllFloatDoms().some(({ id }) => id === drawing));
  const read = name === undefined ? undefined : sheetNamed(workbook, name);
  return standsOn !== undefined && read !== undefined && standsOn.getSheetId() !== read.getSheetId();
}

type Markup = (workbook: Workbook, drawing: string, data: unknown) => string;
const markups = new Map<string, Markup>();

interface Box {
  readonly id: string;
  readonly componentKey: unknown;
  readonly data?: unknown;
}

/** What stands in a box of the grid now; nothing where it is none of ours. */
export const markupOf = (workbook: Workbook, { id, componentKey, data }: Box): string =>
  markups.get(String(componentKey))?.(workbook, id, data) ?? '';

export function registerDrawing<Data>(api: FUniver, { component, className, draw, nameOf }: Drawing<Data>): void {
  const formula = api.getFormula();
  const markup = (workbook: Workbook, drawing: string, data: Data): string =>
    standsElsewhere(workbook, drawing, nameOf(data)) ? ofAnotherSheet : draw(workbook, data);
  markups.set(component, (workbook, drawing, data) => markup(workbook, drawing, data as Data));
  const Box = ({ data, floatDomId }: { readonly data: Data; readonly floatDomId: string }): ReactElement => {
    const box = useRef<HTMLDivElement>(null);
    useEffect(() => {
      const element = box.current;
      if (element === null) return undefined;
      const drawNow = (): void => {
        const workbook = api.getActiveWorkbook();
        if (workbook !== null) element.innerHTML = markup(workbook, floatDomId, data);
      };
      drawNow();
      const calculated = formula.calculationEnd(drawNow);
      return () => calculated.dispose();
    }, [data, floatDomId]);
    return createElement('div', { ref: box, className });
  };
  api.registerComponent(component, Box);
}
