// The page for any web host, served by a plain server of files that writes down what it is asked for.
import { cp, mkdtemp, readFile, rm } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import type { Page } from 'playwright-core';
import { publishedFolder } from './buildOnce';
import { until } from './support';

const mediaTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

export interface PublishedHost {
  /** In a folder of the host, as a project's pages are. */
  readonly address: string;
  readonly folder: string;
  /** Method and path of every request since the last time this was emptied. */
  readonly asked: string[];
  /** The host is gone, as far as a browser can tell; and back. */
  pause(): Promise<void>;
  resume(): Promise<void>;
  stop(): Promise<void>;
}

const listen = (server: Server, port: number): Promise<number> =>
  new Promise((resolve) => {
    server.listen(port, '127.0.0.1', () => {
      const address = server.address();
      resolve(typeof address === 'object' && address !== null ? address.port : port);
    });
  });

export async function hostPublished(): Promise<PublishedHost> {
  const folder = await mkdtemp(join(tmpdir(), 'rampwright-page-'));
  await cp(publishedFolder, folder, { recursive: true });
  const asked: string[] = [];
  const begin = (): Server =>
    createServer((request, response) => {
      const { pathname } = new URL(request.url ?? '/', 'http://host');
      asked.push(`${request.method ?? ''} ${pathname}`);
      const name = pathname.replace(/^\/club\//, '') || 'index.html';
      readFile(join(folder, name)).then(
        (content) =>
          response.writeHead(200, { 'Content-Type': mediaTypes[extname(name)] ?? 'text/plain', 'Cache-Control': 'max-age=600' }).end(content),
        () => response.writeHead(404).end(),
      );
    });
  let server = begin();
  const port = await listen(server, 0);
  const close = (): Promise<void> =>
    new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return {
    address: `http://127.0.0.1:${port}/club/`,
    folder,
    asked,
    pause: close,
    resume: async () => {
      server = begin();
      await listen(server, port);
    },
    stop: async () => {
      await close().catch(() => undefined);
      await rm(folder, { recursive: true, force: true });
    },
  };
}

export const untilKept = (page: Page): Promise<void> =>
  until(page, "document.getElementById('saved').textContent.startsWith('Saved in this browser, ')");
