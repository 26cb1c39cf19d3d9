// A program that takes a workbook file, says what came of it, and serves until it is ended. Its arguments: the file, and "hang" to take
// it without ever serving.
import { createServer } from 'node:http';
import { ownFile, processHeader } from '../../addon/local/server/owner';

const [, , path = '', how = ''] = process.argv;
const owned = await ownFile(path);
if ('pid' in owned) {
  console.log(`owned by ${owned.pid} at ${owned.address}`);
} else {
  const server = createServer((_request, response) => response.setHeader(processHeader, process.pid).end());
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  if (how !== 'hang') await owned.serveAt(`http://127.0.0.1:${port}/?key=x`);
  process.on('SIGTERM', () => {
    owned.giveUp();
    process.exit(0);
  });
  console.log(`owner ${process.pid} at http://127.0.0.1:${port}/?key=x`);
}
