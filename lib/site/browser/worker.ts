/// <reference lib="webworker" />

/** Filled in when the guide is built: a hash of every file of the guide, and what to keep. */
declare const VERSION: string;
declare const GUIDE: string;
declare const FILES: readonly string[];

const scope = self as unknown as ServiceWorkerGlobalScope;
const NAME = `wayfold ${GUIDE} `;
const AT_ONCE = 12;

const keepAll = async (): Promise<void> => {
  const cache = await caches.open(NAME + VERSION);
  for (let at = 0; at < FILES.length; at += AT_ONCE) {
    await cache.addAll(FILES.slice(at, at + AT_ONCE).map((file) => new Request(file, { cache: 'no-cache' })));
  }
};

const dropOld = async (): Promise<void> => {
  for (const name of await caches.keys())
    if (name.startsWith(NAME) && name !== NAME + VERSION) await caches.delete(name);
  await scope.clients.claim();
};

/** A picture of another width stands in when the one asked for was not kept. */
const narrower = (address: string): readonly string[] => [
  address.replace(/-(960|240)\.webp$/, '-480.webp'),
  address.replace(/-large\.webp$/, '-small.webp'),
];

const answer = async (request: Request): Promise<Response> => {
  const cache = await caches.open(NAME + VERSION);
  const kept = await cache.match(request, { ignoreSearch: true });
  if (kept !== undefined) return kept;
  try {
    return await fetch(request);
  } catch (offline) {
    for (const address of narrower(request.url)) {
      const other = await cache.match(address, { ignoreSearch: true });
      if (other !== undefined) return other;
    }
    throw offline;
  }
};

scope.addEventListener('install', (event) => event.waitUntil(keepAll().then(() => scope.skipWaiting())));
scope.addEventListener('activate', (event) => event.waitUntil(dropOld()));
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method === 'GET' && new URL(request.url).origin === location.origin) event.respondWith(answer(request));
});
