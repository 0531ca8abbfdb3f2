// Keeps the whole app on the phone, so that it opens in a cellar with no network.
// The build writes the list of files (service-worker-assets.js) and a version line into this file:
// a new version is fetched whole, checked against its hashes, and takes over at the next start.
self.importScripts('./service-worker-assets.js');

const cacheName = `emberwright-${self.assetsManifest.version}`;
const wanted = [/\.dll$/, /\.pdb$/, /\.wasm$/, /\.html$/, /\.js$/, /\.mjs$/, /\.json$/, /\.jsonl$/, /\.css$/, /\.woff2$/, /\.svg$/, /\.png$/, /\.ico$/, /\.dat$/, /\.blat$/, /\.webmanifest$/, /\.txt$/];
const page = new URL('index.html', self.registration.scope).href;

self.addEventListener('install', event => event.waitUntil(install()));
self.addEventListener('activate', event => event.waitUntil(activate()));
self.addEventListener('fetch', event => {
    const request = event.request;
    if (request.method === 'GET' && new URL(request.url).origin === self.location.origin) {
        event.respondWith(answer(request));
    }
});

async function install() {
    const requests = self.assetsManifest.assets
        .filter(asset => wanted.some(pattern => pattern.test(asset.url)) && asset.url !== 'service-worker.js')
        .map(asset => new Request(new URL(asset.url, self.registration.scope), { integrity: asset.hash, cache: 'no-cache' }));
    const cache = await caches.open(cacheName);
    await cache.addAll(requests);
    await self.skipWaiting();
}

async function activate() {
    const names = await caches.keys();
    await Promise.all(names.filter(name => name.startsWith('emberwright-') && name !== cacheName).map(name => caches.delete(name)));
    await self.clients.claim();
}

async function answer(request) {
    const cache = await caches.open(cacheName);
    if (request.mode === 'navigate') {
        const kept = await cache.match(page);
        return kept ? based(await kept.text()) : fetch(request);
    }
    return await cache.match(request, { ignoreSearch: true }) ?? fetch(request);
}

// Every address inside the app is the same page; its files lie in the folder this worker answers for.
function based(html) {
    const folder = new URL(self.registration.scope).pathname;
    return new Response(html.replace('<base href="./">', `<base href="${folder}">`), { headers: { 'Content-Type': 'text/html; charset=utf-8' } });
}
