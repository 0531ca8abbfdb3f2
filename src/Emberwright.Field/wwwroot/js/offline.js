// Registers the service worker. Where there is none (plain HTTP on another host), the app still works while the network does.
if ('serviceWorker' in navigator) {
    navigator.serviceWorker
        .register(new URL('service-worker.js', document.baseURI), { updateViaCache: 'none' })
        .catch(reason => console.info('The app is not kept for use without a network:', reason.message));
}

// A newer version takes over for the next start. What is on the screen goes on as it is: all of it is loaded already.
if (navigator.serviceWorker?.controller) {
    navigator.serviceWorker.addEventListener('controllerchange', () => { document.getElementById('newer').hidden = false; }, { once: true });
}
