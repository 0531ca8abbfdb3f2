// The words that stand before the app does, in the language chosen on this phone; without one the page's own English stays.
try {
    const said = JSON.parse(localStorage.getItem('shell') ?? 'null');
    if (said) {
        document.documentElement.lang = said.language;
        for (const place of document.querySelectorAll('[data-say]')) place.textContent = said[place.dataset.say] ?? place.textContent;
    }
} catch { }

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
