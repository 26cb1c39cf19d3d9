// Text as a cell of an Excel file can hold it.

/** Characters in a cell. */
export const maxTextLength = 32_767;

/** Errors that the file format knows; any other error goes as text. */
export const fileErrors: ReadonlySet<string> = new Set(['#NULL!', '#DIV/0!', '#VALUE!', '#REF!', '#NAME?', '#NUM!', '#N/A']);

/** Whole characters: a pair of two code units is not cut apart. */
export const cut = (text: string, length: number): string => text.slice(0, length).replace(/[\ud800-\udbff]$/, '');

/** The format reads _x0041_ as a letter A, takes line breaks as \n, and has no place for half a pair or for two codes that XML forbids. */
export function fileText(text: string): string {
  const lines = text.replace(/\r\n?/g, '\n');
  const whole = lines.replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]|[\ufffe\uffff]/g, '\ufffd');
  return cut(whole, maxTextLength).replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_');
}
