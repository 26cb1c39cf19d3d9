// Which requests the loopback server answers. It listens on this machine only, but any page in the user's browser can
// aim at that address, so Host (against rebinding) and Origin (against other sites) are checked.
import type { IncomingMessage } from 'node:http';

/** Undefined where the request may pass, else why not. */
export function refusal({ method, headers }: Pick<IncomingMessage, 'method' | 'headers'>, port: number): string | undefined {
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
  if (!hosts.includes(headers.host ?? '')) return 'This server answers only at its own address on this machine.';
  const origins = hosts.map((host) => `http://${host}`);
  if (headers.origin !== undefined && !origins.includes(headers.origin)) return 'This server answers only its own page.';
  const reads = method === 'GET' || method === 'HEAD';
  if (!reads && headers.origin === undefined) return 'A change must come from the page of this server.';
  return undefined;
}
