// What a file, or a printed page, of one sheet is called: the sheet, the member where it is the statement of one, and the day.
import { localToday } from '../../panel/localToday';
import type { SheetSnapshot } from '../../workbook/snapshot';
import { statementSheet } from '../../../sheets-templates/dues/statement';
import { rangeFromA1 } from '../engine/a1';

/** The member whose statement it is. */
function memberIn({ mark, values }: SheetSnapshot): string {
  const place = statementSheet.keys?.entries['member'];
  if (mark?.key !== statementSheet.key || place === undefined) return '';
  const { startRow, startColumn } = rangeFromA1(place);
  return String(values[startRow]?.[startColumn] ?? '').trim();
}

/** Letters and digits of every language, and nothing that a file's name cannot hold somewhere. */
const permitted = (text: string): string => text.replace(/[^\p{L}\p{M}\p{N} ._-]+/gu, '-').trim();

export const sharedName = (sheet: SheetSnapshot): string =>
  [permitted(sheet.name).slice(0, 60), permitted(memberIn(sheet)).slice(0, 60), localToday()].filter((part) => part !== '').join(' ');
