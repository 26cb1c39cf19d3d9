// What an argument reader throws: what the argument must be, and what it was. wordError.ts makes the sentence.

export class ArgumentError extends Error {
  readonly mustBe: string;
  /** What was got, in words already ("a blank", "\"warm\"", "a range of 2 rows x 1 column"). */
  readonly got: string;
  /** Place inside a table or column argument, counted from 1. */
  readonly row: number | undefined;
  readonly column: number | undefined;

  constructor(mustBe: string, got: string, row?: number, column?: number) {
    super(mustBe);
    this.name = 'ArgumentError';
    this.mustBe = mustBe;
    this.got = got;
    this.row = row;
    this.column = column;
  }
}
