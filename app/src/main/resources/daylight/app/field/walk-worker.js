// Lets the pages of the walk and of the levels be loaded again out of reach. What comes from the archive comes first;
// only where it cannot be reached is a page shown as it was. Nothing that is written passes here.

const OURS = `walk-${new URL(self.registration.scope).pathname}-`;
const CACHE = OURS + VERSION;
const MARKS = [
  '/assets/mark.svg', '/assets/DaylightSans-Regular.woff2', '/assets/DaylightSans-Bold.woff2',
];
const isWalk = (url) => /^\/site\/[^/]+\/visit\/[^/]+\/(?:walk|levels)$/.test(url.pathname);
const isShell = (url) => FILES.includes(url.pathname) || MARKS.includes(url.pathname);

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches.open(CACHE).then((cache) => cache.addAll([...FILES, ...MARKS])).then(() => self.skipWaiting()));
});

self.addEventListener('activate', (event) => {
  event.waitUntil((async () => {
    const pages = await caches.open(CACHE);
    for (const name of (await caches.keys()).filter((one) => one.startsWith(OURS) && one !== CACHE)) {
      const old = await caches.open(name);
      for (const request of await old.keys()) {
        if (isWalk(new URL(request.url)) && !(await pages.match(request))) {
          await pages.put(request, await old.match(request));
        }
      }
      await caches.delete(name);
    }
    await self.clients.claim();
  })());
});

async function firstFromArchive(request) {
  const cache = await caches.open(CACHE);
  try {
    const reply = await fetch(request);
    if (reply.ok && !reply.redirected) {
      await cache.put(request.url, reply.clone());
    }
    return reply;
  } catch (unreached) {
    const kept = await cache.match(request.url);
    if (kept) return kept;
    throw unreached;
  }
}

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method === 'GET' && url.origin === self.location.origin && (isWalk(url) || isShell(url))) {
    event.respondWith(firstFromArchive(event.request));
  }
});
