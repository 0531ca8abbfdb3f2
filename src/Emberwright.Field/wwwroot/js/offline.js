// Registers the service worker. Where there is none (plain HTTP on another host), the app still works while the network does.
if ('serviceWorker' in navigator) {
    navigator.serviceWorker
        .register(new URL('service-worker.js', document.baseURI), { updateViaCache: 'none' })
        .catch(reason => console.info('The app is not kept for use without a network:', reason.message));
}
