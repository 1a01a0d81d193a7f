// Keeps one whole build on the device, so that the page opens without a
// connection. `cargo site build` fills in the build's name and its files, each
// with the digest of its bytes: a half-published site is never kept.

const BUILD = "__BUILD__";
const FILES = new Map(__FILES__);

// Several copies of the site may live on one host: each tends its own caches.
const FAMILY = `trayward ${self.registration.scope} `;
const CACHE = FAMILY + BUILD;

async function fetched(name, integrity) {
  // A named-by-content file that the page has just fetched is taken from the
  // browser's own cache; if that copy is bad, or for the page itself, afresh.
  const ask = (cache) => fetch(name, { integrity, cache });
  const response = await (name === "./" ? ask("reload") : ask("default").catch(() => ask("reload")));
  if (!response.ok) throw new Error(`${name} answered ${response.status}`);
  // A redirected answer may not be given to a navigation.
  return response.redirected ? new Response(await response.blob(), { headers: response.headers }) : response;
}

async function keep() {
  const cache = await caches.open(CACHE);
  const each = [...FILES].map(async ([name, integrity]) => {
    await cache.put(name, await fetched(name, integrity));
  });
  try {
    await Promise.all(each);
  } catch (error) {
    // All or nothing; no file may still be on its way when the rest goes.
    await Promise.allSettled(each);
    await caches.delete(CACHE);
    throw error;
  }
}

async function takeOver() {
  const stale = (name) => name.startsWith(FAMILY) && name !== CACHE;
  await Promise.all((await caches.keys()).filter(stale).map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function answer(name, request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(name, { ignoreVary: true })) ?? fetch(request);
}

self.addEventListener("install", (event) => event.waitUntil(keep()));
self.addEventListener("activate", (event) => event.waitUntil(takeOver()));
self.addEventListener("message", (event) => {
  if (event.data === "SKIP_WAITING") self.skipWaiting();
});
self.addEventListener("fetch", (event) => {
  const { origin, pathname } = new URL(event.request.url);
  const scope = new URL(self.registration.scope);
  if (event.request.method !== "GET" || origin !== scope.origin) return;
  if (!pathname.startsWith(scope.pathname)) return;
  const path = pathname.slice(scope.pathname.length);
  const name = path === "" || path === "index.html" ? "./" : path;
  if (FILES.has(name)) event.respondWith(answer(name, event.request));
});
