// The authorities whose rules are known. A new one is a table in tables/, or a file beside this and a line in this list.
import { easa } from './easa';
import { faa } from './faa';
import { uk } from './uk';
import { tableAuthorities } from './tables.generated';
import type { Authority } from './rule';

export const authorities: readonly Authority[] = [faa, easa, uk, ...tableAuthorities];
