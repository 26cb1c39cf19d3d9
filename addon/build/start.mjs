// npm start: installs what is missing, then starts addon/local/start.ts with the same arguments.
import { spawn } from 'node:child_process';
import { installMissing, root } from './install.mjs';

installMissing();
const child = spawn(process.execPath, ['--import', 'tsx', 'addon/local/start.ts', ...process.argv.slice(2)], { cwd: root, stdio: 'inherit' });
// Ctrl-C reaches the whole group; this process waits for its child to end.
process.on('SIGINT', () => undefined);
process.on('SIGTERM', () => child.kill('SIGTERM'));
child.on('exit', (code, signal) => process.exit(code ?? (signal === null ? 0 : 1)));
