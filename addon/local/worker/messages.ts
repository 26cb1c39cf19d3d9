// What the page asks the worker that keeps the files of the program.

export type WorkerQuestion = 'which versions' | 'use the newest';

export interface WorkerAnswer {
  /** The version whose files the pages get. */
  readonly inUse: string;
  /** The newest that is here whole. */
  readonly newest: string;
  /** Other windows of the program that are open: as long as there are any, another version is not taken into use. */
  readonly others?: number;
}
