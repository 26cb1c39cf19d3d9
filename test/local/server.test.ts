// The loopback server: its own page only, from this machine only, and no workbook but a workbook.
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keyHeader, passCookie } from '../../addon/local/server/guard';
import { newKey, passOf } from '../../addon/local/server/key';
import { serve, type RunningServer } from '../../addon/local/server/server';
import { WorkbookFile } from '../../addon/local/server/workbookFile';

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: string;
}

const first = JSON.stringify({ sheetOrder: ['a'], sheets: { a: {} } });

describe('the loopback server', () => {
  const key = newKey();
  let home: string;
  let server: RunningServer;
  let port: number;
  const path = (): string => join(home, 'workbook.json');

  beforeAll(async () => {
    home = await mkdtemp(join(tmpdir(), 'rampwright-server-'));
    await writeFile(join(home, 'index.html'), '<p>page</p>');
    await writeFile(join(home, 'secret.txt'), 'secret');
    server = await serve({ folder: home, file: new WorkbookFile(path(), () => first), key, port: 0 });
    port = Number(new URL(server.address).port);
  });
  afterAll(async () => {
    await server.close();
    await rm(home, { recursive: true, force: true });
  });

  const pass = (): Record<string, string> => ({ Cookie: `other=1; ${passCookie(port)}=${passOf(key)}` });
  /** As a browser or anybody else may ask; fetch would not let these headers through. Whoever asks knows the key. */
  const ask = (url: string, options: Parameters<typeof askUnknown>[1] = {}): Promise<Answer> =>
    askUnknown(url === '/' ? `/?key=${key}` : url, { ...options, headers: { [keyHeader]: key, ...pass(), ...options.headers } });
  const askUnknown = (
    url: string,
    options: { readonly method?: string; readonly headers?: Record<string, string>; readonly body?: string } = {},
  ): Promise<Answer> =>
    new Promise((resolve, reject) => {
      const asked = request(
        { host: '127.0.0.1', port, path: url, method: options.method ?? 'GET', headers: { Host: `127.0.0.1:${port}`, ...options.headers } },
        (response) => {
          let body = '';
          response.on('data', (part: Buffer) => (body += part.toString()));
          response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, body }));
        },
      );
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
    for (const target of ['/%E0%A4%A', '//', 'http://', '///']) expect([target, (await ask(target)).status]).toEqual([target, 400]);
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

  it.each(['', 'nothing', '{}', '{"sheetOrder":[]}', 'null', '[1]', '{"sheetOrder":["a"]}', '{"sheetOrder":["a"],"sheets":{}}'])(
    'leaves the file as it is where the page sends "%s"',
    async (body) => {
      const before = await ask('/workbook');
      const { status } = await ask('/workbook', { method: 'PUT', headers: { ...own(), 'If-Match': String(before.headers['etag']) }, body });
      expect(status).toBe(400);
      expect(await readFile(path(), 'utf8')).toBe(before.body);
    },
  );

  it('tells the version of the file alone, and none where there is no file, which it does not make', async () => {
    const before = await ask('/workbook');
    const head = await ask('/workbook', { method: 'HEAD' });
    expect([head.status, head.body, head.headers['etag']]).toEqual([200, '', before.headers['etag']]);
    await rm(path());
    expect((await ask('/workbook', { method: 'HEAD' })).headers['etag']).toBeUndefined();
    await expect(readFile(path())).rejects.toThrow('ENOENT');
  });

  it.each(['', '{"half": ', '[]', '{"sheetOrder":["a"],"sheets":{}}'])(
    'does not open "%s" as if it were an empty workbook, leaves it, and says where the copies of before are',
    async (text) => {
      await writeFile(path(), text);
      const { status, body } = await ask('/workbook');
      expect(status).toBe(500);
      expect(body).toContain(`the file ${path()} is not a workbook`);
      expect(body).toContain('workbook.json.backup-');
      expect(await readFile(path(), 'utf8')).toBe(text);
      await writeFile(path(), first);
    },
  );

  it('hands out the list of the dated copies, and each by its moment, to whoever has the key', async () => {
    const copy = JSON.stringify({ sheetOrder: ['a'], sheets: { a: { name: 'before' } } });
    await writeFile(`${path()}.backup-2026-11-01T07-00-00Z`, copy);
    const made = Date.UTC(2026, 10, 1, 7);
    const list = await ask('/workbook/copies');
    expect([list.status, JSON.parse(list.body)]).toEqual([200, expect.arrayContaining([{ made, standing: 'whole' }])]);
    expect((await ask(`/workbook/copies/${made}`)).body).toBe(copy);
    for (const wrong of ['1', 'x', '../workbook.json', '', `${made}/x`])
      expect([wrong, (await ask(`/workbook/copies/${wrong}`)).status]).toEqual([wrong, 404]);
    expect((await ask('/workbook/copies', { method: 'DELETE', headers: own() })).status).toBe(405);
    for (const url of ['/workbook/copies', `/workbook/copies/${made}`]) expect((await askUnknown(url)).status).toBe(403);
    expect((await askUnknown('/workbook/copies', { headers: pass() })).status).toBe(403);
  });

  it('makes a dated copy of what is there before it replaces it, where the page asks for one', async () => {
    const count = async (): Promise<number> => (JSON.parse((await ask('/workbook/copies')).body) as unknown[]).length;
    const put = async (word: string, copyFirst: Record<string, string>): Promise<number> => {
      const { headers } = await ask('/workbook');
      const body = JSON.stringify({ sheetOrder: ['a'], sheets: { a: { name: word } } });
      return (await ask('/workbook', { method: 'PUT', headers: { ...own(), 'If-Match': String(headers['etag']), ...copyFirst }, body })).status;
    };
    expect(await put('one', {})).toBe(204);
    const before = await count();
    expect(await put('two', {})).toBe(204);
    expect(await count()).toBe(before);
    expect(await put('three', { 'X-Rampwright-Copy-First': 'yes' })).toBe(204);
    expect(await count()).toBe(before + 1);
  });

  it('says with 409 that a file of a later version is not written', async () => {
    const later = JSON.stringify({ sheetOrder: ['a'], sheets: { a: {} }, appVersion: '9.0.0' });
    await writeFile(path(), later);
    const { headers } = await ask('/workbook');
    const { status, body } = await ask('/workbook', { method: 'PUT', headers: { ...own(), 'If-Match': String(headers['etag']) }, body: first });
    expect(status).toBe(409);
    expect(body).toContain('written by a later version of Rampwright');
    expect(await readFile(path(), 'utf8')).toBe(later);
    await writeFile(path(), first);
  });

  it('answers nothing without the key: neither page nor workbook, read or replaced', async () => {
    const before = await readFile(path(), 'utf8');
    const wrong = newKey();
    const cases: readonly [string, Record<string, string>][] = [
      ['/', {}],
      [`/?key=${wrong}`, {}],
      ['/', pass()],
      ['/none.js', {}],
      ['/none.js', { Cookie: `${passCookie(port)}=${passOf(wrong)}` }],
      ['/workbook', {}],
      ['/workbook', pass()],
      [`/workbook?key=${key}`, {}],
      ['/workbook', { [keyHeader]: wrong }],
    ];
    for (const [url, headers] of cases) expect([url, (await askUnknown(url, { headers })).status]).toEqual([url, 403]);
    const put = await askUnknown('/workbook', { method: 'PUT', headers: { ...own(), ...pass(), 'If-Match': '' }, body: first });
    expect([put.status, put.body]).toEqual([403, expect.stringContaining('the whole address that the program prints')]);
    expect((await askUnknown('/workbook', { method: 'HEAD' })).status).toBe(403);
    expect(await readFile(path(), 'utf8')).toBe(before);
  });

  it('gives the page a pass that is not the key, for this page and no script', async () => {
    const cookie = String((await ask('/')).headers['set-cookie']);
    expect(cookie).toMatch(/; Path=\/; HttpOnly; SameSite=Strict$/);
    expect(cookie).not.toContain(key);
  });

  it('takes a save again that has landed unanswered, and one that goes on from it', async () => {
    const opened = String((await ask('/workbook')).headers['etag']);
    const put = (known: string, body: string): Promise<Answer> => ask('/workbook', { method: 'PUT', headers: { ...own(), 'If-Match': known }, body });
    const landed = JSON.stringify({ sheetOrder: ['a'], sheets: { a: { landed: 1 } } });
    const { headers } = await put(opened, landed);
    expect((await put(opened, landed)).status).toBe(204);
    expect((await put(opened, first)).status).toBe(412);
    expect((await put(`${opened}, ${String(headers['etag'])}`, first)).status).toBe(204);
  });

  it('answers 412 for a version that is not the one of the file', async () => {
    const { status, body } = await ask('/workbook', { method: 'PUT', headers: { ...own(), 'If-Match': 'another' }, body: `${first} ` });
    expect(status).toBe(412);
    expect(body).toContain('The file was changed elsewhere');
  });

  it('takes a free port where the wanted one is taken', async () => {
    const other = await serve({ folder: home, file: new WorkbookFile(join(home, 'other.json'), () => first), key, port });
    expect(Number(new URL(other.address).port)).not.toBe(port);
    await other.close();
  });
});
