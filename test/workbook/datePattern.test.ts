// Number formats that show a date or a time, and those that do not.
import { expect, it } from 'vitest';
import { isDatePattern } from '../../addon/workbook/datePattern';

it.each(['yyyy-mm-dd', 'd mmm yy', 'hh:mm', 'h:mm am/pm', '[h]:mm', '[h]', '[mm]:ss', '[$-409]d/m/yyyy', '"day" d', '[Magenta]s'])(
  '%s shows a date or time',
  (pattern) => expect(isDatePattern(pattern)).toBe(true),
);

it.each([
  'General',
  '0.###############',
  '',
  '#,##0',
  '0.0%',
  '0 "days"',
  '0\\d',
  '[Red]0',
  '[Magenta]0.0;[Red]-0.0',
  '[$USD] #,##0',
  '_s0_d',
  '*y0',
  '@',
])('%s shows no date', (pattern) => expect(isDatePattern(pattern)).toBe(false));
