// The phone's own store, in IndexedDB: journals, pictures, settings.
//
// A journal is only ever added to: lines go in with add(), which refuses the same line twice, and no function here
// changes or removes one. (Removing the demo firm removes whole visits that were marked as demo.)
// A write is over when the transaction has reached the disk (durability: strict); only then does the promise
// resolve, and only then may a screen say "saved". A picture is written in a first transaction, the entry that
// names it in a second, so that no entry ever points at a picture that is not there.

let opened, listener, gone = false;

// Other tabs of the same phone hear of every write, and read it in.
const channel = new BroadcastChannel('emberwright');
channel.onmessage = event => listener?.invokeMethodAsync('Written', event.data);

/** Tells .NET of what other tabs write. */
export function follow(book) { listener = book; }

function database() {
    if (gone) return Promise.reject(new Error('The store is gone: the browser has cleared it.'));
    opened ??= new Promise((resolve, reject) => {
        const request = indexedDB.open('emberwright', 1);
        request.onupgradeneeded = () => {
            const db = request.result;
            db.createObjectStore('visits', { keyPath: 'visit' });
            const lines = db.createObjectStore('lines', { keyPath: 'order', autoIncrement: true });
            lines.createIndex('visit', 'visit');
            lines.createIndex('line', ['visit', 'hash'], { unique: true });
            db.createObjectStore('pictures', { keyPath: 'hash' });
            db.createObjectStore('settings', { keyPath: 'name' });
        };
        request.onblocked = () => reject(new Error('Emberwright is open in another tab with an older version: close that tab.'));
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
            request.result.onversionchange = () => { request.result.close(); opened = undefined; };
            // Closed from outside: the browser has cleared its stores. Opening it anew would give an empty one that looks whole.
            request.result.onclose = () => { gone = true; };
            resolve(request.result);
        };
    });
    return opened;
}

async function write(stores, work) {
    const db = await database();
    return new Promise((resolve, reject) => {
        const transaction = db.transaction(stores, 'readwrite', { durability: 'strict' });
        transaction.oncomplete = () => resolve();
        transaction.onerror = () => reject(transaction.error);
        transaction.onabort = () => reject(transaction.error ?? new Error('The phone refused to write. Free some space and try again.'));
        work(transaction);
    });
}

async function read(store, ask) {
    const db = await database();
    return new Promise((resolve, reject) => {
        const request = ask(db.transaction(store).objectStore(store));
        request.onerror = () => reject(request.error);
        request.onsuccess = () => resolve(request.result);
    });
}

/** Every visit on this phone, as { visit, header, demo, lines }, in the order the lines were written. */
export async function visits() {
    const [all, lines] = await Promise.all([read('visits', s => s.getAll()), read('lines', s => s.getAll())]);
    const byVisit = new Map(all.map(v => [v.visit, { ...v, lines: [] }]));
    for (const line of lines) byVisit.get(line.visit)?.lines.push(line.line);
    return JSON.stringify([...byVisit.values()]);
}

/** Adds a visit with the lines it has so far; whole or not at all. */
export function begin(visit, header, hashes, lines, demo) {
    return write(['visits', 'lines'], transaction => {
        transaction.objectStore('visits').add({ visit, header, demo });
        const store = transaction.objectStore('lines');
        hashes.forEach((hash, n) => store.add({ visit, hash, line: lines[n] }));
    }).then(() => channel.postMessage(visit));
}

/**
 * Adds lines to a journal of which `known` lines were read; all of them or none. False, and nothing added, when another
 * tab has written meanwhile: the caller reads those lines in and tries again.
 */
export async function append(visit, hashes, lines, known) {
    let stale = false;
    try {
        await write(['lines'], transaction => {
            const store = transaction.objectStore('lines');
            store.index('visit').count(visit).onsuccess = event => {
                if (event.target.result !== known) { stale = true; transaction.abort(); return; }
                hashes.forEach((hash, n) => store.add({ visit, hash, line: lines[n] }));
            };
        });
    } catch (reason) {
        if (stale) return false;
        throw reason;
    }
    channel.postMessage(visit);
    return true;
}

/** One visit as it lies in the store, or null. */
export async function visit(id) {
    const kept = await read('visits', s => s.get(id));
    if (!kept) return null;
    const lines = await read('lines', s => s.index('visit').getAll(id));
    return JSON.stringify({ ...kept, lines: lines.map(line => line.line) });
}

/** Removes the visits that came with the app. A visit begun by a person is never marked as demo. */
export async function removeDemo() {
    const demo = (await read('visits', s => s.getAll())).filter(v => v.demo).map(v => v.visit);
    await write(['visits', 'lines'], transaction => {
        for (const visit of demo) {
            transaction.objectStore('visits').delete(visit);
            transaction.objectStore('lines').index('visit').openCursor(IDBKeyRange.only(visit)).onsuccess = event => {
                const cursor = event.target.result;
                if (cursor) { cursor.delete(); cursor.continue(); }
            };
        }
    });
}

/** First phase of a photo: the picture itself, under the hash of its bytes. */
export async function keepPicture(bytes, type) {
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
    const hash = [...digest].map(b => b.toString(16).padStart(2, '0')).join('');
    await write(['pictures'], transaction => transaction.objectStore('pictures').put({ hash, type, bytes: new Blob([bytes], { type }) }));
    return hash;
}

/** A kept picture's bytes, or null. */
export async function picture(hash) {
    const kept = await read('pictures', s => s.get(hash));
    return kept ? new Uint8Array(await kept.bytes.arrayBuffer()) : null;
}

/** The address by which an <img> shows a kept picture, or null. */
export async function pictureAddress(hash) {
    const kept = await read('pictures', s => s.get(hash));
    return kept ? URL.createObjectURL(kept.bytes) : null;
}

/**
 * True when this phone held visits once and holds none now: the browser, or somebody, has cleared the store.
 * The mark lies outside the store, so that it outlives it.
 */
export async function wasCleared() {
    const held = (await read('visits', s => s.count())) > 0;
    let before = false;
    try {
        before = localStorage.getItem('held') !== null;
        if (held) localStorage.setItem('held', 'yes');
    } catch { }
    return before && !held;
}

export async function setting(name) {
    return (await read('settings', s => s.get(name)))?.value ?? null;
}

export function keepSetting(name, value) {
    return write(['settings'], transaction => transaction.objectStore('settings').put({ name, value }));
}

/** Asks the browser to keep this store even when space runs short, and says what it has: { persisted, usage, quota } in bytes. */
export async function space() {
    if (!navigator.storage?.estimate) return JSON.stringify({ persisted: false, usage: 0, quota: 0 });
    const persisted = await navigator.storage.persisted() || await navigator.storage.persist();
    const { usage = 0, quota = 0 } = await navigator.storage.estimate();
    return JSON.stringify({ persisted, usage, quota });
}
