// Stands in for the worker while the page is being written: whatever a finished
// build kept on this address is dropped, so that every change shows at once.

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(retire()));

async function retire() {
  const ours = (name) => name.startsWith(`trayward ${self.registration.scope} `);
  await Promise.all((await caches.keys()).filter(ours).map((name) => caches.delete(name)));
  await self.registration.unregister();
  for (const page of await self.clients.matchAll({ type: "window" })) page.navigate(page.url);
}
