// npm start: judges the demo trip in the terminal, then serves the workbook to the browser of this machine. Its options are those of
// startOptions.mjs, which addon/build/start.mjs has looked over.
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { sheetTemplates } from '../../sheets-templates';
import { localToday } from '../panel/localToday';
import { demoOn } from '../workbook/demoOn';
import { buildPage } from './buildPage';
import { demoTripLines } from './demoTrip';
import { workbookData } from './engine/workbookData';
import { withFormat } from './saved/fileFormat';
import { keptKey } from './server/key';
import { openFile, type OpenedFile } from './server/openFile';
import { openLanDoor } from './server/lan';
import { StopsHereError } from './server/opening';
import { serve, type RunningServer } from './server/server';
import { defaultFile, readOptions, type StartOptions } from './startOptions.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const keyPath = join(homedir(), '.rampwright', 'key');

/** Ends with the start that began this program, however that one ends, and gives the file up. */
function endWhenTold({ giveUp }: OpenedFile): void {
  process.on('exit', giveUp);
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => process.exit(0));
  process.on('disconnect', () => process.exit(0));
}

/** The command that starts the program with this file, to be typed after a prompt. */
const commandFor = (file: string): string =>
  file === defaultFile ? 'npm start --' : `npm start -- --file ${/^[\w./:\\-]+$/.test(file) ? file : `"${file}"`}`;

const spaced = (code: string): string => `${code.slice(0, 4)} ${code.slice(4)}`;
const codeWords = {
  first: 'Its code, for one device',
  used: 'That code was used. The next one',
  guessed: 'Five wrong codes were typed. The code is now another one',
} as const;

const tellLan = ({ lanAddresses }: RunningServer): void =>
  console.log(
    lanAddresses.length === 0
      ? 'This computer has no address in a local network now, so only this machine can open the workbook.'
      : `Other devices in the same local network open ${lanAddresses.join(' or ')} and type the code. The network carries the workbook in the clear: let it in only where you trust it.`,
  );

async function serveFile({ file, port, lan, restore, new: anew }: StartOptions): Promise<void> {
  const given = resolve(process.env['INIT_CWD'] ?? '.', file);
  const makeFirst = (): string => JSON.stringify(withFormat(workbookData(demoOn(sheetTemplates, localToday()))));
  const opened = await openFile({ given, answer: { anew, restore }, command: commandFor(file), makeFirst });
  if (opened === undefined) return;
  endWhenTold(opened);
  const { folder } = await buildPage(root);
  const door = lan ? { lan: openLanDoor((code, why) => console.log(`${codeWords[why]}: ${spaced(code)}`)) } : {};
  const server = await serve({ folder, file: opened.file, key: await keptKey(keyPath), port, ...door });
  if (!(await opened.serveAt(server.address))) {
    throw new StopsHereError(
      `This start took so long that another program has opened ${opened.file.path} meanwhile. Start again to be told its address.`,
    );
  }
  console.log(
    `\nThe workbook is open at ${server.address} (on this machine, and only by this address), kept in ${opened.file.path}. Ctrl-C ends it.`,
  );
  if (lan) tellLan(server);
}

async function start(): Promise<void> {
  const { values, wrong } = readOptions(process.argv.slice(2));
  if (wrong !== undefined) throw new StopsHereError(wrong);
  console.log((await demoTripLines(localToday())).join('\n'));
  if (!values.print) await serveFile(values);
}

start().catch((thrown: unknown) => {
  // A stack trace is for mistakes of the program only.
  console.error(thrown instanceof StopsHereError ? `\n${thrown.message}` : thrown);
  process.exit(1);
});
