// npm start: judges the demo trip in the terminal, then serves the workbook to the browser of this machine.
//   --print          print the verdict and its reasons, and stop
//   --file <path>    the workbook file (else .rampwright/workbook.json in the home folder)
//   --port <number>  the port wanted (else 4760; a free one where it is taken)
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { sheetTemplates } from '../../sheets-templates';
import { buildPage } from './buildPage';
import { demoTripLines } from './demoTrip';
import { workbookData } from './engine/workbookData';
import { serve } from './server/server';
import { WorkbookFile } from './server/workbookFile';

const root = fileURLToPath(new URL('../..', import.meta.url));
const defaultPort = '4760';

const { values: options } = parseArgs({
  options: {
    print: { type: 'boolean', default: false },
    file: { type: 'string', default: join(homedir(), '.rampwright', 'workbook.json') },
    port: { type: 'string', default: defaultPort },
  },
});

console.log((await demoTripLines()).join('\n'));
if (!options.print) {
  const { folder } = await buildPage(root);
  const file = new WorkbookFile(resolve(process.env['INIT_CWD'] ?? '.', options.file), () => JSON.stringify(workbookData(sheetTemplates)));
  const { address } = await serve({ folder, file, port: Number(options.port) });
  console.log(`\nThe workbook is open at ${address} (on this machine only), kept in ${file.path}. Ctrl-C ends it.`);
}
