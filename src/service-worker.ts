/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
import { base, build, files, prerendered, version } from '$service-worker';

/**
 * Makes the site work without a signal after the first visit: everything that a version of the site is made of is
 * fetched once and kept; a new version brings its own and throws the old away.
 */
const worker = globalThis.self as unknown as ServiceWorkerGlobalScope;
const CACHE = `knucklebook-${version}`;
const SITE = [...build, ...files, ...prerendered];

worker.addEventListener('install', (event) => {
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(SITE)));
});

worker.addEventListener('activate', (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) =>
        Promise.all(names.filter((name) => name !== CACHE).map((name) => caches.delete(name))),
      ),
  );
});

worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== worker.location.origin) return;
  event.respondWith(answer(request, url));
});

/** From the kept site where it has the file, which never changes within a version; else from the network. */
async function answer(request: Request, url: URL): Promise<Response> {
  const cache = await caches.open(CACHE);
  const kept =
    (await cache.match(request, { ignoreSearch: true })) ??
    (await cache.match(url.pathname === `${base}/` ? `${base}/` : url.pathname.replace(/\/$/, '')));
  return kept ?? fetch(request);
}
