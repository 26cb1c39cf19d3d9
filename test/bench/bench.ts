// npm run bench: what "fast" means here, measured side by side in one run. All sections, or those named:
//   npm run bench -- columns row rows route start insert
// Figures only: a missed target fails nothing. Columns that differ are an error, since their times would mean nothing.
import { builtCode, builtFiles } from '../bundle/built';
import { oneEditedRow, spilledColumns } from './columnSections';
import { insertion } from './insertSection';
import { longRoute } from './routeSection';
import { manyRows } from './rowsSection';
import { bundleSize, coldStarts } from './startSection';
import { printed, type Section } from './table';

const parts: Readonly<Record<string, () => Promise<readonly Section[]>>> = {
  start: async () => {
    const { code } = await builtCode();
    return [bundleSize(code), coldStarts(code)];
  },
  insert: async () => [insertion(await builtFiles())],
  rows: async () => [manyRows((await builtCode()).code)],
  route: async () => [longRoute((await builtCode()).code)],
  columns: async () => [await spilledColumns()],
  row: async () => [await oneEditedRow()],
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => parts[name] === undefined);
if (unknown.length > 0) throw new Error(`no section "${unknown.join('", "')}"; there are ${Object.keys(parts).join(', ')}`);

for (const [name, measure] of Object.entries(parts)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  try {
    for (const section of await measure()) console.log(printed(section));
  } catch (thrown) {
    console.error(`${name}: ${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
    process.exitCode = 1;
  }
}
