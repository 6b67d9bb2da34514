import { readFile } from 'node:fs/promises';
import { createServer, type IncomingHttpHeaders } from 'node:http';
import path from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};

export interface StaticServer {
  /** With the folder the site lies below: `http://127.0.0.1:4711/guides/`. */
  readonly address: string;
  /** Paths asked for since the last call. */
  asked(): readonly { readonly path: string; readonly headers: IncomingHttpHeaders }[];
  /** Cuts every connection from now on, as where there is no signal, or takes them again. */
  signal(there: boolean): void;
  /** Serves another folder from now on, under the same address, as a new build does. */
  swap(folder: string): void;
  close(): Promise<void>;
}

/** Serves a finished site below a folder of the address, as a plain web server does: it knows nothing of Wayfold. */
export const serveFolder = async (first: string): Promise<StaticServer> => {
  let folder = first;
  let there = true;
  let log: { path: string; headers: IncomingHttpHeaders }[] = [];
  const server = createServer(async (request, response) => {
    if (!there) {
      request.socket.destroy();
      return;
    }
    const asked = decodeURIComponent(new URL(request.url ?? '/', 'http://x').pathname);
    log.push({ path: asked, headers: request.headers });
    const file = path.join(folder, asked.replace(/^\/guides\//, '/'), asked.endsWith('/') ? 'index.html' : '');
    try {
      if (!asked.startsWith('/guides/')) throw new Error('outside');
      const bytes = await readFile(file);
      response.setHeader('content-type', TYPES[path.extname(file)] ?? 'application/octet-stream');
      response.end(bytes);
    } catch {
      response.statusCode = 404;
      response.end('not found');
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('the server has no port');
  return {
    address: `http://127.0.0.1:${address.port}/guides/`,
    asked() {
      const since = log;
      log = [];
      return since;
    },
    signal(now) {
      there = now;
      if (!there) server.closeAllConnections();
    },
    swap(next) {
      folder = next;
    },
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
};
