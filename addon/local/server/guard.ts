// Which requests the server answers. It listens on this machine only (unless the user lets the local network in, lan.ts), but any page in
// the user's browser can aim at that address, so Host (against rebinding) and Origin (against other sites) are checked; and so can any
// user of the machine, so the key is.
import type { IncomingMessage } from 'node:http';
import { isSame, passOf } from './key';

/** The page sends the key with each request for the workbook. */
export const keyHeader = 'x-rampwright-key';
export const passCookie = (port: number): string => `rampwright-${port}`;

/** Undefined where the request may pass, else why not. `addresses`: other addresses of this machine at which it answers. */
export function refusal(
  { method, headers }: Pick<IncomingMessage, 'method' | 'headers'>,
  port: number,
  addresses: readonly string[],
): string | undefined {
  const hosts = ['127.0.0.1', 'localhost', ...addresses].map((address) => `${address}:${port}`);
  if (!hosts.includes(headers.host ?? '')) return 'This server answers only at its own address on this machine.';
  const origins = hosts.map((host) => `http://${host}`);
  if (headers.origin !== undefined && !origins.includes(headers.origin)) return 'This server answers only its own page.';
  const reads = method === 'GET' || method === 'HEAD';
  if (!reads && headers.origin === undefined) return 'A change must come from the page of this server.';
  return undefined;
}

function cookieIn(text: string | undefined, name: string): string {
  const pairs = (text ?? '').split(';').map((pair) => pair.trim().split('='));
  return pairs.find(([one]) => one === name)?.[1] ?? '';
}

/**
 * The key, out of those that open, that a request brings: the page itself comes by the key in its address, the workbook by the key in a header,
 * all else by the pass that the page was given.
 */
export function keyOf({ headers }: Pick<IncomingMessage, 'headers'>, url: URL, port: number, keys: readonly string[]): string | undefined {
  const header = headers[keyHeader];
  const [workbook, inAddress] = [typeof header === 'string' ? header : '', url.searchParams.get('key') ?? ''];
  if (/^\/workbook(?:\/|$)/.test(url.pathname)) return keys.find((key) => isSame(workbook, key));
  if (url.pathname === '/') return keys.find((key) => isSame(inAddress, key));
  return keys.find((key) => isSame(cookieIn(headers.cookie, passCookie(port)), passOf(key)));
}
