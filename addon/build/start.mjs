// npm start: looks at the options, installs what is missing, then starts addon/local/start.ts with the same arguments.
import { spawn } from 'node:child_process';
import { help, readOptions } from '../local/startOptions.mjs';
import { endWithParents } from './endWithParents.mjs';
import { installMissing, root } from './install.mjs';

const { values, wrong } = readOptions(process.argv.slice(2));
if (wrong !== undefined) {
  console.error(`${wrong.slice(0, -1)}; npm start -- --help tells the options.`);
  process.exit(2);
}
if (values.help) {
  process.stdout.write(help);
  process.exit(0);
}

await installMissing();
const child = spawn(process.execPath, ['--import', 'tsx', 'addon/local/start.ts', ...process.argv.slice(2)], {
  cwd: root,
  // By the fourth, the child hears that this process is gone, whatever ended it.
  stdio: ['inherit', 'inherit', 'inherit', 'ipc'],
});
// Ctrl-C reaches the whole group, a kill this process alone; either way it waits for its child to end.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
endWithParents(() => child.kill('SIGTERM'));
child.on('exit', (code, signal) => process.exit(code ?? (signal === null ? 0 : 1)));
