// What a page cannot do from .NET: theme, scrolling to a step, handing a file over, taking a picture in.

/** Follows the system when theme is empty. */
export function setTheme(theme) {
    if (theme) document.documentElement.dataset.theme = theme; else delete document.documentElement.dataset.theme;
    try { if (theme) localStorage.setItem('theme', theme); else localStorage.removeItem('theme'); } catch { }
}

export function theme() {
    return document.documentElement.dataset.theme ?? '';
}

/** Keeps the words that stand before the app does; null keeps none and leaves the page's own. */
export function keepShell(words) {
    try { if (words) localStorage.setItem('shell', words); else localStorage.removeItem('shell'); } catch { }
}

/** Hands a file to the person: the share sheet where a phone has one for files, a download elsewhere. */
export async function handOver(name, type, bytes) {
    const file = new File([bytes], name, { type });
    if (matchMedia('(pointer: coarse)').matches && navigator.canShare?.({ files: [file] })) {
        try { await navigator.share({ files: [file], title: name }); return; } catch (reason) { if (reason.name === 'AbortError') return; }
    }
    const link = document.createElement('a');
    link.href = URL.createObjectURL(file);
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Moves to a step of the visit and puts the reader there. */
export function goTo(id) {
    const step = document.getElementById(id);
    if (!step) return;
    for (let around = step; around; around = around.parentElement) if (around.tagName === 'DETAILS') around.open = true;
    step.scrollIntoView({ block: 'start' });
    const heading = step.querySelector('h2') ?? step;
    heading.tabIndex = -1;
    heading.focus({ preventScroll: true });
}

/**
 * A photo made small enough to keep: turned upright, the longer side at most 1600 px, as JPEG. Drawing it anew leaves
 * everything else behind that the camera wrote, the place above all; that is handed back beside it only where wanted.
 */
export async function takeIn(input, withPlace) {
    const file = input.files[0];
    if (!file) return null;
    try {
        const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
        const scale = Math.min(1, 1600 / Math.max(picture.width, picture.height));
        const canvas = new OffscreenCanvas(Math.round(picture.width * scale), Math.round(picture.height * scale));
        canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
        picture.close();
        const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.82 })).arrayBuffer());
        return { bytes, place: withPlace ? (await import('./place.js')).placeOf(await file.arrayBuffer()) : null };
    } finally {
        input.value = '';
    }
}

/**
 * A logo of whatever kind the browser draws (PNG, JPEG, SVG, WebP) as PNG, at most 900 by 300 px: papers hold pixels.
 * Empty when it cannot be drawn.
 */
export async function logoIn(input) {
    const file = input.files[0];
    if (!file) return null;
    const url = URL.createObjectURL(file);
    try {
        const picture = new Image();
        picture.src = url;
        await picture.decode();
        const [width, height] = [picture.naturalWidth || 300, picture.naturalHeight || 300];
        // A drawing has no pixels of its own, so it is drawn as large as it may be.
        const most = Math.min(900 / width, 300 / height), scale = file.type === 'image/svg+xml' ? most : Math.min(1, most);
        const canvas = new OffscreenCanvas(Math.max(1, Math.round(width * scale)), Math.max(1, Math.round(height * scale)));
        canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
        return new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
    } catch {
        return new Uint8Array();
    } finally {
        URL.revokeObjectURL(url);
        input.value = '';
    }
}

/** Tells .NET which step of the visit lies at the top of the screen. */
export function watchSteps(ids, listener) {
    const visible = new Map();
    const observer = new IntersectionObserver(entries => {
        for (const entry of entries) visible.set(entry.target.id, entry.isIntersecting);
        const first = ids.find(id => visible.get(id));
        if (first) listener.invokeMethodAsync('StepInView', first);
    }, { rootMargin: '-80px 0px -55% 0px' });
    for (const id of ids) { const step = document.getElementById(id); if (step) observer.observe(step); }
    return { stop: () => observer.disconnect() };
}

/** Makes the marked places of a picture answer to touch and to the keyboard; the chosen one is pressed. */
export function taps(figure, listener, chosen) {
    figure.querySelector('svg')?.setAttribute('role', 'group');
    for (const place of figure.querySelectorAll('[data-tap]')) {
        place.setAttribute('role', 'button');
        place.setAttribute('tabindex', '0');
        place.setAttribute('aria-pressed', place.dataset.tap === chosen ? 'true' : 'false');
    }
    if (figure.answers) return;
    figure.answers = true;
    const tell = event => {
        const place = event.target.closest('[data-tap]');
        if (!place || event.type === 'keydown' && event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        listener.invokeMethodAsync('Tapped', place.dataset.tap);
    };
    figure.addEventListener('click', tell);
    figure.addEventListener('keydown', tell);
}

/** Puts the reader into a part of the page: its field where it has one, else its heading. */
export function into(id) {
    const part = document.getElementById(id);
    const to = part?.querySelector('input') ?? part?.querySelector('h3');
    to?.focus({ preventScroll: true });
    part?.scrollIntoView({ block: 'nearest' });
}

/** Keeps the first screen as it stands, for the next start: with its links, without what only the running app can do. */
export function keepFirst() {
    const main = document.querySelector('main.today')?.cloneNode(true);
    if (!main) return;
    main.dataset.kept = 'yes';
    for (const part of main.querySelectorAll('[data-live]')) part.remove();
    for (const part of main.querySelectorAll('[data-kept-only]')) part.hidden = false;
    for (const field of main.querySelectorAll('input, button')) field.disabled = true;
    try { localStorage.setItem('first-screen', main.outerHTML); } catch { }
}

/** Forgets it: somebody was erased, or the demo firm went. */
export function forgetFirst() {
    try { localStorage.removeItem('first-screen'); } catch { }
}
