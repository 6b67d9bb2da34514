import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import sirv from 'sirv';
import { insideFolder } from '../content/index.ts';
import type { Problem } from '../model/index.ts';
import { LIVE_SCRIPT, problemsPage } from './pages.ts';

/** The reader's own machine only. */
const LOOPBACK = '127.0.0.1';
const LIVE_PATH = '/live.js';
const EVENTS_PATH = '/live-events';

export interface LiveServer {
  readonly address: string;
  /** Shows new pages in every open window, or the problems that stopped them. */
  refresh(problems: readonly Problem[]): void;
  close(): Promise<void>;
}

const send = (response: ServerResponse, type: string, body: string): void => {
  response.writeHead(200, { 'content-type': `${type}; charset=utf-8`, 'cache-control': 'no-store' });
  response.end(body);
};

/** Real path of the file an address names; undefined when it is missing or a link leads out of the folder. */
const fileOf = async (folder: string, address: string): Promise<string | undefined> => {
  const asked = decodeURIComponent(address);
  const name = asked.endsWith('/') ? `${asked}index.html` : asked;
  return insideFolder(folder, `.${name}`).catch(() => undefined);
};

const listen = (server: Server, port: number): Promise<number> =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, LOOPBACK, () => {
      const address = server.address();
      resolve(typeof address === 'object' && address !== null ? address.port : port);
    });
  });

/**
 * Serves a built guide on the loopback address and reloads open windows on `refresh`.
 * @throws the system's error when the port is taken
 */
export const startServer = async (folder: string, port: number): Promise<LiveServer> => {
  const windows = new Set<ServerResponse>();
  let problems: readonly Problem[] = [];
  const files = sirv(folder, { dev: true, etag: true });

  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    // Only names of this machine: a page elsewhere must not read the guide through a rebound name.
    const host = (request.headers.host ?? '').replace(/:\d+$/, '');
    if (host !== LOOPBACK && host !== 'localhost') {
      response.writeHead(403).end();
      return;
    }
    const address = (request.url ?? '/').split('?')[0] ?? '/';
    if (address === LIVE_PATH) return send(response, 'text/javascript', LIVE_SCRIPT(EVENTS_PATH));
    if (address === EVENTS_PATH) {
      response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
      response.write('retry: 500\n\n');
      windows.add(response);
      request.on('close', () => windows.delete(response));
      return;
    }
    const file = await fileOf(folder, address);
    const isPage = address.endsWith('/') || address.endsWith('.html');
    if (problems.length > 0 && isPage) {
      return send(response, 'text/html', problemsPage(problems, LIVE_PATH));
    }
    if (file === undefined) {
      response.writeHead(404).end('There is no such page in this guide.');
      return;
    }
    if (isPage) {
      const text = await readFile(file, 'utf8');
      return send(response, 'text/html', text.replace('</body>', `<script src="${LIVE_PATH}"></script></body>`));
    }
    files(request, response, () => {
      response.writeHead(404).end('There is no such page in this guide.');
    });
  };

  const server = createServer((request, response) => {
    answer(request, response).catch(() => {
      if (!response.headersSent) response.writeHead(400);
      response.end();
    });
  });
  const used = await listen(server, port);
  return {
    address: `http://${LOOPBACK}:${used}/`,
    refresh(found) {
      problems = found;
      for (const window of windows) window.write('event: refresh\ndata: now\n\n');
    },
    close: () =>
      new Promise((resolve) => {
        for (const window of windows) window.end();
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
};
