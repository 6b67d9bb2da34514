/// <reference lib="dom" />

/** Lets the guide's own service worker keep it for days without signal; a browser that refuses loses nothing else. */
export const keepOffline = (document: Document): void => {
  const worker = document.querySelector<HTMLLinkElement>('link[rel=manifest]')?.href.replace(/[^/]*$/, 'sw.js');
  if (worker === undefined || !('serviceWorker' in navigator)) return;
  navigator.serviceWorker.register(worker).catch(() => undefined);
};
