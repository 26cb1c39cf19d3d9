// The authorities whose rules are known. A new one is a file beside this, and a line in this list.
import { easa } from './easa';
import { faa } from './faa';
import type { Authority } from './rule';

export const authorities: readonly Authority[] = [faa, easa];
