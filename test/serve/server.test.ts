import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { get } from 'node:http';
import { networkInterfaces, tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type LiveServer, startServer } from '../../lib/serve/index.ts';

let folder: string;
let server: LiveServer;
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'wayfold-serve-'));
  await mkdir(path.join(folder, 'site', 'looks'), { recursive: true });
  await writeFile(path.join(folder, 'site', 'index.html'), '<html><body><h1>Cover</h1></body></html>');
  await writeFile(path.join(folder, 'site', 'looks', 'index.html'), '<html><body><h1>Looks</h1></body></html>');
  await writeFile(path.join(folder, 'site', 'site.css'), 'body{}');
  await writeFile(path.join(folder, 'secret.html'), 'secret');
  server = await startServer(path.join(folder, 'site'), 0);
});
afterEach(async () => {
  await server.close();
  await rm(folder, { recursive: true, force: true });
});

const asked = (address: string, headers: Record<string, string> = {}): Promise<{ status: number; body: string }> =>
  new Promise((resolve, reject) => {
    get(new URL(address, server.address), { headers }, (response) => {
      let body = '';
      response.setEncoding('utf8');
      response.on('data', (part: string) => {
        body += part;
      });
      response.on('end', () => resolve({ status: response.statusCode ?? 0, body }));
    }).on('error', reject);
  });

describe('the preview', () => {
  it('serves pages with the reload script, and files as they are', async () => {
    expect((await asked('/')).body).toContain('<h1>Cover</h1><script src="/live.js"></script>');
    expect((await asked('/looks/')).body).toContain('Looks');
    expect((await asked('/site.css')).body).toBe('body{}');
    expect((await asked('/nowhere.html')).status).toBe(404);
  });

  it('listens on this machine only', async () => {
    expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    const elsewhere = Object.values(networkInterfaces())
      .flat()
      .find((entry) => entry !== undefined && !entry.internal && entry.family === 'IPv4');
    if (elsewhere === undefined) return;
    const port = new URL(server.address).port;
    await expect(
      fetch(`http://${elsewhere.address}:${port}/`, { signal: AbortSignal.timeout(2000) }),
    ).rejects.toThrow();
  });

  it('answers no other name, so that a page elsewhere cannot read the guide', async () => {
    expect((await asked('/', { host: 'guide.example' })).status).toBe(403);
  });

  it('gives nothing from outside its folder', async () => {
    await symlink(path.join(folder, 'secret.html'), path.join(folder, 'site', 'link.html'));
    for (const address of ['/../secret.html', '/%2e%2e/secret.html', '/..%2fsecret.html', '/link.html']) {
      const { body } = await asked(address);
      expect(body, address).not.toBe('secret');
      expect(body, address).not.toContain('secret<');
    }
  });

  it('shows the problems in the place of every page, and the pages again when they are gone', async () => {
    server.refresh([
      { file: 'wardrobes/ada/coat.md', line: 3, wrong: 'there is no kind "<coat>"', mend: 'write "wool coat"' },
    ]);
    const { body } = await asked('/looks/');
    expect(body).toContain('One thing to mend');
    expect(body).toContain('wardrobes/ada/coat.md, line 3');
    expect(body).toContain('&lt;coat&gt;');
    expect((await asked('/site.css')).body).toBe('body{}');
    server.refresh([]);
    expect((await asked('/looks/')).body).toContain('<h1>Looks</h1>');
  });

  it('tells open windows to load again', async () => {
    const heard = new Promise<string>((resolve, reject) => {
      get(new URL('/live-events', server.address), (response) => {
        response.setEncoding('utf8');
        response.on('data', (part: string) => {
          if (part.includes('event: refresh')) resolve(part);
          else server.refresh([]);
        });
      }).on('error', reject);
    });
    expect(await heard).toContain('event: refresh');
  });
});
