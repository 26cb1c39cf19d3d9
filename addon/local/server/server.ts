// The loopback server: the built page, and the user's workbook to read and to replace.
import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { refusal } from './guard';
import { ChangedMeanwhileError, type WorkbookFile } from './workbookFile';

const loopback = '127.0.0.1';
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
  response.writeHead(status, { 'Content-Security-Policy': policyFor(''), 'X-Content-Type-Options': 'nosniff', 'Cross-Origin-Resource-Policy': 'same-origin', 'Referrer-Policy': 'no-referrer', ...headers });
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

interface Workbook {
  readonly sheetOrder?: unknown;
  readonly sheets?: Readonly<Record<string, unknown>>;
}

function isWorkbook(text: string): boolean {
  try {
    const { sheetOrder, sheets } = (JSON.parse(text) as Workbook | null) ?? {};
    return Array.isArray(sheetOrder) && sheetOrder.length > 0 && sheetOrder.every((id) => typeof sheets?.[String(id)] === 'object');
  } catch {
    return false;
  }
}

async function readWorkbook(response: ServerResponse, file: WorkbookFile): Promise<void> {
  const { text, version } = await file.read();
  // Opened as an empty one, it would be written over by the first entry.
  if (!isWorkbook(text)) throw new RequestError(500, `the file ${file.path} is not a workbook of this program, or only a part of one. It was left as it is. Where there is a file ${file.backupPath}, that is the workbook as it was before the last session: copy it over the other and load this page again.`);
  send(response, 200, { 'Content-Type': 'application/json', 'Cache-Control': 'no-store', ETag: version }, text);
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
  if (!isWorkbook(text)) throw new RequestError(400, 'What the page sent is not a workbook; the file was left as it is.');
  const { version } = await file.write(text, request.headers['if-match'] ?? '');
  send(response, 204, { ETag: version });
}

async function answerPage(path: string, response: ServerResponse, folder: string): Promise<void> {
  const full = normalize(join(folder, path === '/' ? 'index.html' : path));
  const type = mediaTypes[extname(full)];
  if (!full.startsWith(folder + sep) || type === undefined) throw new RequestError(404, 'There is no such page.');
  const content = await readFile(full).catch(() => undefined);
  if (content === undefined) throw new RequestError(404, 'There is no such page.');
  send(response, 200, { 'Content-Type': type, 'Cache-Control': 'no-cache', 'Content-Security-Policy': policyFor(path) }, content);
}

async function answer(request: IncomingMessage, response: ServerResponse, folder: string, file: WorkbookFile): Promise<void> {
  const refused = refusal(request, request.socket.localPort ?? 0);
  if (refused !== undefined) throw new RequestError(403, refused);
  const path = decodeURIComponent(new URL(request.url ?? '/', 'http://page').pathname);
  if (path === '/workbook') return answerWorkbook(request, response, file);
  if (request.method !== 'GET') throw new RequestError(405, 'Pages can only be read.');
  return answerPage(path, response, folder);
}

function statusOf(thrown: unknown): number {
  if (thrown instanceof ChangedMeanwhileError) return 412;
  if (thrown instanceof URIError) return 400;
  return thrown instanceof RequestError ? thrown.status : 500;
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, loopback, () => {
      server.off('error', reject);
      const address = server.address();
      resolve(typeof address === 'object' && address !== null ? address.port : port);
    });
  });
}

export interface RunningServer {
  readonly address: string;
  close(): Promise<void>;
}

/** Serves on the port wanted, or on a free one where that is taken. */
export async function serve(options: { readonly folder: string; readonly file: WorkbookFile; readonly port: number }): Promise<RunningServer> {
  const server = createServer((request, response) => {
    answer(request, response, options.folder, options.file).catch((thrown: unknown) => {
      const message = thrown instanceof Error ? thrown.message : String(thrown);
      if (response.headersSent) response.destroy();
      else send(response, statusOf(thrown), { 'Content-Type': 'text/plain; charset=utf-8' }, message);
    });
  });
  const taken = (thrown: unknown): boolean => thrown instanceof Error && 'code' in thrown && thrown.code === 'EADDRINUSE';
  const port = await listen(server, options.port).catch((thrown: unknown) => {
    if (taken(thrown)) return listen(server, 0);
    throw thrown;
  });
  return {
    address: `http://${loopback}:${port}/`,
    close: () => new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    }),
  };
}
