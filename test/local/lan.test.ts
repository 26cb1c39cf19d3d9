// Other devices of the local network: not at all unless asked for, and then each by a code that serves once.
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keyHeader } from '../../addon/local/server/guard';
import { newKey } from '../../addon/local/server/key';
import { openLanDoor } from '../../addon/local/server/lan';
import { serve, type RunningServer } from '../../addon/local/server/server';
import { WorkbookFile } from '../../addon/local/server/workbookFile';

const first = JSON.stringify({ sheetOrder: ['a'], sheets: { a: {} } });
/** An address of this machine that is no loopback: whoever asks from there is, to the server, another device. */
const outer = Object.values(networkInterfaces()).flatMap((ofOne) => (ofOne ?? []).filter(({ family, internal }) => family === 'IPv4' && !internal))[0]
  ?.address;

describe('the door to the local network', () => {
  it.each([
    ['127.0.0.1', true],
    ['::ffff:127.0.0.1', true],
    ['10.0.0.7', true],
    ['172.16.0.1', true],
    ['172.31.255.255', true],
    ['172.32.0.1', false],
    ['192.168.1.20', true],
    ['::ffff:192.168.1.20', true],
    ['192.169.0.1', false],
    ['169.254.3.4', true],
    ['8.8.8.8', false],
    ['fd00::2', false],
    [undefined, false],
  ])('%s may ask: %s', (address, may) => expect(openLanDoor(() => undefined).isNear(address)).toBe(may));

  it('takes a code once, and replaces it after five wrong ones', () => {
    const told: string[] = [];
    const door = openLanDoor((code, why) => told.push(`${why} ${code}`));
    const code = (): string => (told[told.length - 1] ?? '').replace(/\D/g, '');
    const [used, wrong] = [code(), '1'];
    expect(used).toMatch(/^\d{8}$/);
    const key = door.letIn(`${used.slice(0, 4)} ${used.slice(4)}`);
    expect([door.keys(), told[1]]).toEqual([[key], expect.stringMatching(/^used \d{8}$/)]);
    expect(door.letIn(used)).toBeUndefined();
    for (let time = 0; time < 4; time += 1) expect(door.letIn(wrong)).toBeUndefined();
    expect(told[2]).toMatch(/^guessed \d{8}$/);
    expect(door.letIn('')).toBeUndefined();
  });
});

describe.skipIf(outer === undefined)('the server with the local network let in', () => {
  const [key, told] = [newKey(), [] as string[]];
  let home: string;
  let server: RunningServer;
  let address: string;
  let closed: RunningServer;

  beforeAll(async () => {
    home = await mkdtemp(join(tmpdir(), 'rampwright-lan-'));
    await writeFile(join(home, 'index.html'), '<p>page</p>');
    await writeFile(join(home, 'main.js'), '1');
    const file = new WorkbookFile(join(home, 'workbook.json'), () => first);
    server = await serve({
      folder: home,
      file,
      key,
      port: 0,
      lan: openLanDoor(
        (code) => told.push(code),
        (one) => one === outer,
      ),
    });
    closed = await serve({ folder: home, file, key, port: 0 });
    [address = ''] = server.lanAddresses;
  });
  afterAll(async () => {
    await server.close();
    await closed.close();
    await rm(home, { recursive: true, force: true });
  });

  const give = (code: string, origin = address.slice(0, -1)): Promise<Response> =>
    fetch(`${address}code`, { method: 'POST', redirect: 'manual', headers: { Origin: origin }, body: new URLSearchParams({ code }) });

  it('is not there for other devices unless asked for', async () => {
    expect(closed.lanAddresses).toEqual([]);
    await expect(fetch(`http://${outer ?? ''}:${new URL(closed.address).port}/`)).rejects.toThrow();
  });

  it('asks another device for the code, and answers nothing else, not even by the key of this machine', async () => {
    const page = await fetch(address);
    expect([page.status, page.headers.get('Content-Security-Policy')]).toEqual([200, expect.stringContaining("form-action 'self'")]);
    expect(await page.text()).toContain('Code that the terminal shows');
    expect(await (await fetch(`${address}?key=${key}`)).text()).toContain('Code that the terminal shows');
    for (const path of ['workbook', 'main.js', 'none'])
      expect((await fetch(`${address}${path}`, { headers: { [keyHeader]: key } })).status).toBe(403);
  });

  it('refuses a wrong code, and a form of another site', async () => {
    const wrong = await give('1');
    expect([wrong.status, await wrong.text()]).toEqual([403, expect.stringContaining('That is not the code that the terminal shows now.')]);
    expect((await give(told[0] ?? '', 'http://evil.example')).status).toBe(403);
    expect(told.length).toBe(1);
  });

  it('lets the device in by the code, once, with a key of its own', async () => {
    const taken = await give(told[0] ?? '');
    const own = /^\/\?key=([0-9a-f]{32})$/.exec(taken.headers.get('Location') ?? '')?.[1] ?? '';
    expect([taken.status, own === key]).toEqual([303, false]);
    const page = await fetch(`${address}?key=${own}`);
    expect(await page.text()).toBe('<p>page</p>');
    const cookie = (page.headers.get('Set-Cookie') ?? '').split(';')[0] ?? '';
    expect(await (await fetch(`${address}main.js`, { headers: { Cookie: cookie } })).text()).toBe('1');
    expect(await (await fetch(`${address}workbook`, { headers: { [keyHeader]: own } })).text()).toBe(first);
    expect((await give(told[0] ?? '')).status).toBe(403);
    expect(told.length).toBe(2);
  });

  it('goes on for this machine as before', async () => {
    expect(await (await fetch(server.address)).text()).toBe('<p>page</p>');
    expect((await fetch(server.address.replace(key, newKey()))).status).toBe(403);
  });
});
