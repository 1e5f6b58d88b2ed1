// Keeps the whole program on the device, one version at a time: it starts the same with and without a network.
// What people record is not here but in the database of the page, which no new version touches.
self.importScripts('./service-worker-assets.js');

const prefix = 'gatewright-program-';
const cacheName = prefix + self.assetsManifest.version;
const start = new URL('index.html', self.location).href;

// The list names files from the root of the site.
const site = new URL('../', self.location);
const kept = [/\.html$/, /\.js$/, /\.css$/, /\.wasm$/, /\.dat$/, /\.svg$/, /\.png$/, /\.woff2$/, /\.json$/, /\.webmanifest$/];
// The icons' pictures are fetched by whoever installs the program, once; no page shows them.
const left = [/service-worker/, /icons\/.*\.png$/, /\.map$/, /icudt_/];

// A file whose name tells its content never changes: where the page has just fetched it, nobody asks for it again.
const lasting = /\.[a-z0-9]{10}\.(wasm|dat|js)$/;
const files = self.assetsManifest.assets.filter(a => kept.some(k => k.test(a.url)) && !left.some(l => l.test(a.url)));
// The address that people start from, and where the program's parts lie.
const home = new URL('./', self.location).pathname;
const programs = [home + '_framework/*', home + '*.js', home + '*.css'];
const addresses = new Set(files.map(a => new URL(a.url, site).href));

self.addEventListener('install', event => {
  event.waitUntil(install());

  // Where the browser can, it takes the program from what is kept without waking this worker first.
  if (event.addRoutes && self.URLPattern) {
    event.waitUntil(event.addRoutes([home, ...programs].map(pathname => ({
      condition: { urlPattern: new URLPattern({ pathname, search: '', baseURL: self.location.origin }), requestMethod: 'GET' },
      source: { cacheName },
    }))));
  }
});
self.addEventListener('activate', event => event.waitUntil(activate()));
self.addEventListener('fetch', event => {
  if (event.request.method !== 'GET') {
    return;
  }

  if (event.request.mode === 'navigate') {
    if (event.request.url.startsWith(new URL('./', self.location).href)) {
      event.respondWith(fromDevice(start, event.request));
    }
  } else if (addresses.has(event.request.url)) {
    event.respondWith(fromDevice(event.request.url, event.request));
  }
});

// A page says when a new version may take over: never while somebody is in the middle of a round.
self.addEventListener('message', event => {
  if (event.data === 'take over') {
    // It is kept awake until it has taken over: on a busy phone it might be put to sleep before.
    event.waitUntil(self.skipWaiting());
  }
});

async function install() {
  const cache = await caches.open(cacheName);
  await cache.addAll(files.map(a => new Request(new URL(a.url, site), { integrity: a.hash, cache: lasting.test(a.url) ? 'default' : 'no-cache' })));
  await cache.put(home, await cache.match(start));
}

async function activate() {
  for (const name of await caches.keys()) {
    if (name.startsWith(prefix) && name !== cacheName) {
      await caches.delete(name);
    }
  }

  // The page that installed it is looked after from now on, not only after the next visit.
  await self.clients.claim();
}

async function fromDevice(address, request) {
  const cache = await caches.open(cacheName);
  return await cache.match(address) ?? fetch(request);
}
