// The loopback server: its own page only, from this machine only, and no workbook but a workbook.
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve, type RunningServer } from '../../addon/local/server/server';
import { WorkbookFile } from '../../addon/local/server/workbookFile';

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: string;
}

const first = JSON.stringify({ sheetOrder: ['a'], sheets: { a: {} } });

describe('the loopback server', () => {
  let home: string;
  let server: RunningServer;
  let port: number;
  const path = (): string => join(home, 'workbook.json');

  beforeAll(async () => {
    home = await mkdtemp(join(tmpdir(), 'rampwright-server-'));
    await writeFile(join(home, 'index.html'), '<p>page</p>');
    await writeFile(join(home, 'secret.txt'), 'secret');
    server = await serve({ folder: home, file: new WorkbookFile(path(), () => first), port: 0 });
    port = Number(new URL(server.address).port);
  });
  afterAll(async () => {
    await server.close();
    await rm(home, { recursive: true, force: true });
  });

  /** As a browser or anybody else may ask; fetch would not let these headers through. */
  const ask = (url: string, options: { readonly method?: string; readonly headers?: Record<string, string>; readonly body?: string } = {}): Promise<Answer> =>
    new Promise((resolve, reject) => {
      const asked = request({ host: '127.0.0.1', port, path: url, method: options.method ?? 'GET', headers: { Host: `127.0.0.1:${port}`, ...options.headers } }, (response) => {
        let body = '';
        response.on('data', (part: Buffer) => (body += part.toString()));
        response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, body }));
      });
      asked.on('error', reject);
      asked.end(options.body);
    });
  const own = (): Record<string, string> => ({ Origin: `http://127.0.0.1:${port}` });

  it('listens on the loopback address', () => expect(new URL(server.address).hostname).toBe('127.0.0.1'));

  it('gives its page, under a policy that lets nothing load from elsewhere', async () => {
    const { status, body, headers } = await ask('/');
    expect({ status, body }).toEqual({ status: 200, body: '<p>page</p>' });
    expect(headers['content-security-policy']).toContain("default-src 'self'; script-src 'self';");
    expect(headers['access-control-allow-origin']).toBeUndefined();
  });

  it.each(['evil.example', 'evil.example:80', 'localhost'])('refuses the host "%s"', async (Host) => {
    expect((await ask('/workbook', { headers: { Host } })).status).toBe(403);
  });

  it.each(['http://evil.example', 'null', 'https://127.0.0.1', 'http://127.0.0.1:1'])('refuses the origin %s', async (Origin) => {
    expect((await ask('/workbook', { headers: { Origin } })).status).toBe(403);
    expect((await ask('/workbook', { method: 'PUT', headers: { Origin }, body: first })).status).toBe(403);
  });

  it('refuses a change that names no origin', async () => {
    expect((await ask('/workbook', { method: 'PUT', body: first })).status).toBe(403);
  });

  it.each(['/../package.json', '/%2e%2e/package.json', '/secret.txt', '/none.js', '/workbook.json', '/%00.js'])('has nothing at %s', async (url) => {
    const { status, body } = await ask(url);
    expect(status).toBe(404);
    expect(body).toBe('There is no such page.');
  });

  it('answers a path that cannot be read, and a method it does not know', async () => {
    expect((await ask('/%E0%A4%A')).status).toBe(400);
    expect((await ask('/', { method: 'POST', headers: own() })).status).toBe(405);
    expect((await ask('/workbook', { method: 'DELETE', headers: own() })).status).toBe(405);
  });

  it('replaces the workbook for its own page, and gives the new version', async () => {
    const before = await ask('/workbook');
    const text = JSON.stringify({ sheetOrder: ['a', 'b'], sheets: { a: {}, b: {} } });
    const put = await ask('/workbook', { method: 'PUT', headers: { ...own(), 'If-Match': String(before.headers['etag']) }, body: text });
    expect(put.status).toBe(204);
    const after = await ask('/workbook');
    expect(after.body).toBe(text);
    expect(after.headers['etag']).toBe(put.headers['etag']);
    expect(after.headers['cache-control']).toBe('no-store');
  });

  it.each(['', 'nothing', '{}', '{"sheetOrder":[]}', 'null', '[1]', '{"sheetOrder":["a"]}', '{"sheetOrder":["a"],"sheets":{}}'])('leaves the file as it is where the page sends "%s"', async (body) => {
    const before = await ask('/workbook');
    const { status } = await ask('/workbook', { method: 'PUT', headers: { ...own(), 'If-Match': String(before.headers['etag']) }, body });
    expect(status).toBe(400);
    expect(await readFile(path(), 'utf8')).toBe(before.body);
  });

  it('tells the version of the file alone, and none where there is no file, which it does not make', async () => {
    const before = await ask('/workbook');
    const head = await ask('/workbook', { method: 'HEAD' });
    expect([head.status, head.body, head.headers['etag']]).toEqual([200, '', before.headers['etag']]);
    await rm(path());
    expect((await ask('/workbook', { method: 'HEAD' })).headers['etag']).toBeUndefined();
    await expect(readFile(path())).rejects.toThrow('ENOENT');
  });

  it.each(['', '{"half": ', '[]', '{"sheetOrder":["a"],"sheets":{}}'])('does not open "%s" as if it were an empty workbook, leaves it, and names the copy of before', async (text) => {
    await writeFile(path(), text);
    const { status, body } = await ask('/workbook');
    expect(status).toBe(500);
    expect(body).toContain(`the file ${path()} is not a workbook`);
    expect(body).toContain(`${path()}.backup`);
    expect(await readFile(path(), 'utf8')).toBe(text);
    await writeFile(path(), first);
  });

  it('answers 412 for a version that is not the one of the file', async () => {
    const { status, body } = await ask('/workbook', { method: 'PUT', headers: { ...own(), 'If-Match': 'another' }, body: first });
    expect(status).toBe(412);
    expect(body).toContain('The file was changed elsewhere');
  });

  it('takes a free port where the wanted one is taken', async () => {
    const other = await serve({ folder: home, file: new WorkbookFile(join(home, 'other.json'), () => first), port });
    expect(Number(new URL(other.address).port)).not.toBe(port);
    await other.close();
  });
});
