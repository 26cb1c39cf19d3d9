// The server: the built page, and the user's workbook to read and to replace. On the loopback address, unless the user lets the local network in.
import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { basename, extname, join, normalize, sep } from 'node:path';
import { keyOf, passCookie, refusal } from './guard';
import { passOf } from './key';
import { codePage, codePolicy, codeFrom } from './codePage';
import { isLoopback, type LanDoor } from './lan';
import { processHeader } from './owner';
import { ChangedMeanwhileError, NotOursToWriteError, type WorkbookFile } from './workbookFile';
import { standingOf } from '../saved/workbookText';

/** Asks that what is there becomes a dated copy before it is replaced. */
const copyFirstHeader = 'x-rampwright-copy-first';

const loopback = '127.0.0.1';
const everyAddress = '0.0.0.0';
const largestWorkbook = 64 * 1024 * 1024;
const mediaTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};
/** The page may load from this server only; the panel is one file with its script inside it. */
const policyFor = (path: string): string =>
  `default-src 'self'; script-src 'self'${path === '/panel.html' ? " 'unsafe-inline'" : ''}; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self' data:; base-uri 'none'; form-action 'none'; frame-ancestors 'self'`;

class RequestError extends Error {
  readonly status: number;

  constructor(status: number, message: string) {
    super(message);
    this.status = status;
  }
}

function send(response: ServerResponse, status: number, headers: Readonly<Record<string, string>>, body: string | Uint8Array = ''): void {
  response.writeHead(status, {
    'Content-Security-Policy': policyFor(''),
    'X-Content-Type-Options': 'nosniff',
    'Cross-Origin-Resource-Policy': 'same-origin',
    'Referrer-Policy': 'no-referrer',
    [processHeader]: String(process.pid),
    ...headers,
  });
  response.end(body);
}

async function bodyOf(request: IncomingMessage): Promise<string> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length;
    if (size > largestWorkbook) throw new RequestError(413, 'The workbook is too large to save.');
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}

async function readWorkbook(response: ServerResponse, file: WorkbookFile): Promise<void> {
  const { text, version } = await file.read();
  // Opened as an empty one, it would be written over by the first entry.
  if (standingOf(text) === 'damaged')
    throw new RequestError(
      500,
      `the file ${file.path} is not a workbook of this program, or only a part of one. It was left as it is. Copies of it as it was before stand beside it (${basename(file.path)}.backup-...). End the program and start it again: it will ask which to go on from.`,
    );
  send(response, 200, { 'Content-Type': 'application/json', 'Cache-Control': 'no-store', ETag: version }, text);
}

const copiesPath = '/workbook/copies';

/** The list of the dated copies, or one of them by the moment at which it was made. */
async function answerCopies(path: string, request: IncomingMessage, response: ServerResponse, file: WorkbookFile): Promise<void> {
  if (request.method !== 'GET') throw new RequestError(405, 'Copies of the workbook can only be read.');
  const headers = { 'Content-Type': 'application/json', 'Cache-Control': 'no-store' };
  if (path === copiesPath) return send(response, 200, headers, JSON.stringify(await file.copies()));
  const moment = /^\/(\d+(?:\.\d+)?)$/.exec(path.slice(copiesPath.length))?.[1];
  const text = moment === undefined ? undefined : await file.copyOf(Number(moment));
  if (text === undefined) throw new RequestError(404, 'There is no such copy of the workbook (any more).');
  send(response, 200, headers, text);
}

async function answerWorkbook(request: IncomingMessage, response: ServerResponse, file: WorkbookFile): Promise<void> {
  if (request.method === 'GET') return readWorkbook(response, file);
  if (request.method === 'HEAD') {
    const version = await file.version();
    send(response, 200, { 'Cache-Control': 'no-store', ...(version !== undefined && { ETag: version }) });
    return;
  }
  if (request.method !== 'PUT') throw new RequestError(405, 'The workbook can be read and replaced.');
  const text = await bodyOf(request);
  // What is not a workbook must not replace one.
  if (standingOf(text) === 'damaged') throw new RequestError(400, 'What the page sent is not a workbook; the file was left as it is.');
  const known = (request.headers['if-match'] ?? '').split(',').map((one) => one.trim());
  const { version } = await file.write(text, known, request.headers[copyFirstHeader] !== undefined);
  send(response, 204, { ETag: version });
}

async function answerPage(path: string, response: ServerResponse, folder: string, headers: Readonly<Record<string, string>>): Promise<void> {
  const full = normalize(join(folder, path === '/' ? 'index.html' : path));
  const type = mediaTypes[extname(full)];
  if (!full.startsWith(folder + sep) || type === undefined) throw new RequestError(404, 'There is no such page.');
  const content = await readFile(full).catch(() => undefined);
  if (content === undefined) throw new RequestError(404, 'There is no such page.');
  send(response, 200, { 'Content-Type': type, 'Cache-Control': 'no-cache', 'Content-Security-Policy': policyFor(path), ...headers }, content);
}

/** The target of a request as an address of this server. */
function addressOf(request: IncomingMessage): { readonly url: URL; readonly path: string } {
  try {
    const url = new URL(request.url ?? '/', 'http://page');
    return { url, path: decodeURIComponent(url.pathname) };
  } catch {
    throw new RequestError(400, 'What was asked for is no address.');
  }
}

const noKey =
  'This workbook opens only by the whole address that the program prints when it starts (npm start), with the key at its end. Copy it from the terminal.';

/** Guessing takes its time. */
const pauseAfterWrong = 1000;

/** Another device without a key gets the page that asks for the code, and with the code its own key. */
async function askForCode(path: string, request: IncomingMessage, response: ServerResponse, { letIn }: LanDoor): Promise<void> {
  const page = (status: number, said: string): void =>
    send(
      response,
      status,
      { 'Content-Type': 'text/html; charset=utf-8', 'Cache-Control': 'no-store', 'Content-Security-Policy': codePolicy },
      codePage(said),
    );
  if (path === '/' && request.method === 'GET') return page(200, '');
  if (path !== '/code' || request.method !== 'POST')
    throw new RequestError(
      403,
      'This device is not let in (any more). Open the address again without its end, and type the code that the program shows.',
    );
  const key = letIn(codeFrom(await bodyOf(request)));
  if (key !== undefined) return send(response, 303, { Location: `/?key=${key}`, 'Cache-Control': 'no-store' });
  await new Promise((resolve) => setTimeout(resolve, pauseAfterWrong));
  page(403, 'That is not the code that the terminal shows now.');
}

async function answer(request: IncomingMessage, response: ServerResponse, { folder, file, key: own, lan }: Served): Promise<void> {
  const [port, isOwn] = [request.socket.localPort ?? 0, isLoopback(request.socket.remoteAddress)];
  const refused = refusal(request, port, lan?.addresses() ?? []);
  if (refused !== undefined) throw new RequestError(403, refused);
  const { url, path } = addressOf(request);
  const key = keyOf(request, url, port, isOwn ? [own] : (lan?.keys() ?? []));
  if (key === undefined && lan !== undefined && !isOwn) return askForCode(path, request, response, lan);
  if (key === undefined) throw new RequestError(403, noKey);
  if (path === '/workbook') return answerWorkbook(request, response, file);
  if (path === copiesPath || path.startsWith(`${copiesPath}/`)) return answerCopies(path, request, response, file);
  if (request.method !== 'GET') throw new RequestError(405, 'Pages can only be read.');
  const pass = `${passCookie(port)}=${passOf(key)}; Path=/; HttpOnly; SameSite=Strict`;
  return answerPage(path, response, folder, path === '/' ? { 'Set-Cookie': pass } : {});
}

function statusOf(thrown: unknown): number {
  if (thrown instanceof ChangedMeanwhileError) return 412;
  if (thrown instanceof NotOursToWriteError) return 409;
  return thrown instanceof RequestError ? thrown.status : 500;
}

function listen(server: Server, port: number, address: string): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, address, () => {
      server.off('error', reject);
      const bound = server.address();
      resolve(typeof bound === 'object' && bound !== null ? bound.port : port);
    });
  });
}

export interface RunningServer {
  /** With the key. */
  readonly address: string;
  /** For other devices of the local network; none where they are not let in. */
  readonly lanAddresses: readonly string[];
  close(): Promise<void>;
}

interface Served {
  readonly folder: string;
  readonly file: WorkbookFile;
  /** What every request of this machine must know. */
  readonly key: string;
  /** Where other devices of the local network are let in. */
  readonly lan?: LanDoor;
}

/** Serves on the port wanted, or on a free one where that is taken. */
export async function serve(options: Served & { readonly port: number }): Promise<RunningServer> {
  const server = createServer((request, response) => {
    answer(request, response, options).catch((thrown: unknown) => {
      const message = thrown instanceof Error ? thrown.message : String(thrown);
      if (response.headersSent) response.destroy();
      else send(response, statusOf(thrown), { 'Content-Type': 'text/plain; charset=utf-8' }, message);
    });
  });
  const taken = (thrown: unknown): boolean => thrown instanceof Error && 'code' in thrown && thrown.code === 'EADDRINUSE';
  // Whoever is neither here nor in the local network is not even answered.
  server.on('connection', (socket) => {
    if (options.lan?.isNear(socket.remoteAddress) === false) socket.destroy();
  });
  const address = options.lan === undefined ? loopback : everyAddress;
  const port = await listen(server, options.port, address).catch((thrown: unknown) => {
    if (taken(thrown)) return listen(server, 0, address);
    throw thrown;
  });
  return {
    address: `http://${loopback}:${port}/?key=${options.key}`,
    lanAddresses: (options.lan?.addresses() ?? []).map((one) => `http://${one}:${port}/`),
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
