// The phone's own store, in IndexedDB: journals, the firm's book, pictures, settings; and what is derived from them so
// that no list has to read a journal: a line for each visit ("index") and for each stove ("stoves"). A derived line is
// dropped in the same transaction that adds to its journal, so that a line that is there is never out of date.
//
// A journal is only ever added to: lines go in with add(), which refuses the same line twice, and no function here
// changes or removes one, but for redact(): on a person's request it takes words out of a line, which then states the
// hash of what it was. (Removing the demo firm removes whole visits that were marked as demo.)
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
        const request = indexedDB.open('emberwright', 2);
        request.onupgradeneeded = event => {
            const db = request.result;
            const index = db.createObjectStore('index', { keyPath: 'visit' });
            index.createIndex('stove', 'stove');
            index.createIndex('day', 'day');
            index.createIndex('open', 'open');
            const stoves = db.createObjectStore('stoves', { keyPath: 'stove' });
            stoves.createIndex('due', 'due');
            stoves.createIndex('day', 'day');
            const book = db.createObjectStore('book', { keyPath: 'order', autoIncrement: true });
            book.createIndex('hash', 'hash', { unique: true });
            if (event.oldVersion >= 1) return;
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

async function whole(visits) {
    const db = await database();
    return new Promise((resolve, reject) => {
        const transaction = db.transaction(['visits', 'lines']);
        const found = [];
        for (const visit of visits) {
            const head = transaction.objectStore('visits').get(visit);
            const lines = transaction.objectStore('lines').index('visit').getAll(visit);
            lines.onsuccess = () => { if (head.result) found.push({ ...head.result, lines: lines.result.map(l => l.line) }); };
        }
        transaction.oncomplete = () => resolve(found);
        transaction.onerror = () => reject(transaction.error);
    });
}

/**
 * What a start needs: the visits that are open, each with its journal, or every visit where there are no more than so
 * many; how many there are; and those whose line is missing: { visits: [{ visit, header, demo, lines }], count, missing: [visit] }.
 */
export async function start(few) {
    const [count, indexed, open] = await Promise.all([
        read('visits', s => s.count()), read('index', s => s.count()), read('index', s => s.index('open').getAllKeys())]);
    const all = count <= few || indexed < count ? await visitIds() : [];
    const lines = indexed < count ? new Set(await read('index', s => s.getAllKeys())) : null;
    return JSON.stringify({ visits: await whole(count <= few ? all : open), count, missing: lines ? all.filter(visit => !lines.has(visit)) : [] });
}

/** The visits made last, with their journals. */
export async function latestVisits(limit) {
    return JSON.stringify(await whole((await rows('index', 'day', null, 'prev', limit)).map(row => row.visit)));
}

/** Journals by visit id, in the same form. */
export async function journals(visits) {
    return JSON.stringify(await whole(visits));
}

/** Ids of every visit. */
export async function visitIds() {
    return read('visits', s => s.getAllKeys());
}

async function rows(store, index, range, direction, limit) {
    const db = await database();
    return new Promise((resolve, reject) => {
        const found = [];
        const request = db.transaction(store).objectStore(store).index(index).openCursor(range, direction);
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
            const cursor = request.result;
            if (cursor && found.length < limit) { found.push(cursor.value); cursor.continue(); } else resolve(found);
        };
    });
}

const listed = found => `[${found.map(row => row.json).join(',')}]`;

/** The lines of a stove's visits, as a JSON list. */
export async function visitsOf(stoves) {
    const found = await Promise.all(stoves.map(stove => read('index', s => s.index('stove').getAll(stove))));
    return listed(found.flat());
}

/** The lines of every visit, as a JSON list. */
export async function everyVisit() {
    return listed(await read('index', s => s.getAll()));
}

/** A stove's line as JSON, or null. */
export async function stove(key) {
    return (await read('stoves', s => s.get(key)))?.json ?? null;
}

/** The stoves visited last, as a JSON list. */
export async function latestStoves(limit) {
    return listed(await rows('stoves', 'day', null, 'prev', limit));
}

/** The stoves due by a day, soonest first, as a JSON list. */
export async function dueBy(day, limit) {
    return listed(await rows('stoves', 'due', IDBKeyRange.bound('0', day), 'next', limit));
}

export async function stoveCount() {
    return read('stoves', s => s.count());
}

/** Keys of stoves without a forecast, at most so many. */
export async function unforetold(limit) {
    return (await read('stoves', s => s.getAll())).filter(row => !row.foretold).slice(0, limit).map(row => row.stove);
}

// What search looks through, once it was needed: each stove's line with its folded text, visited last first.
let words;

function warmed() {
    words ??= read('stoves', s => s.getAll()).then(rows => rows.sort(byDay));
    return words;
}

const byDay = (a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0);

/** Reads what search looks through, before somebody types. */
export async function warm() {
    await warmed();
}

/** The stoves in which every group of words has one that occurs, visited last first, as a JSON list. */
export async function find(groups, limit) {
    const found = [];
    let count = 0;
    for (const row of await warmed()) {
        if (groups.every(group => group.some(word => row.text.includes(word))) && ++count <= limit) found.push(row);
    }
    return JSON.stringify({ count, stoves: listed(found) });
}

function rewarm(changed) {
    if (!words || changed.length === 0) return;
    const keys = new Set(changed.map(row => row.stove));
    words = words.then(rows => [...rows.filter(row => !keys.has(row.stove)), ...changed.filter(row => row.json !== null)].sort(byDay));
}

/** Keeps derived lines. A stove's line whose json is null is dropped. */
export async function keepLines(visits, stoves) {
    await write(['index', 'stoves'], transaction => {
        for (const row of visits) transaction.objectStore('index').put(row);
        for (const row of stoves) {
            if (row.json === null) transaction.objectStore('stoves').delete(row.stove);
            else transaction.objectStore('stoves').put(row);
        }
    });
    rewarm(stoves);
}

/** Drops every derived line; they are made anew at the next start. */
export async function dropLines() {
    words = undefined;
    await write(['index', 'stoves'], transaction => { transaction.objectStore('index').clear(); transaction.objectStore('stoves').clear(); });
}

/** The firm's book as { header, lines }; header null when nothing was written yet. */
export async function book() {
    const [header, lines] = await Promise.all([setting('firm-header'), read('book', s => s.getAll())]);
    return JSON.stringify({ header, lines: lines.map(l => l.line) });
}

/** Adds lines to the firm's book, all or none; its header with the first. */
export function appendBook(header, hashes, lines, demo) {
    return write(['book', 'settings'], transaction => {
        transaction.objectStore('settings').put({ name: 'firm-header', value: header });
        const store = transaction.objectStore('book');
        hashes.forEach((hash, n) => store.add({ hash, line: lines[n], ...(demo ? { demo: true } : {}) }));
    });
}

/** Words kept as bytes, as { hash: text }; those that are gone are left out. */
export async function texts(hashes) {
    const db = await database(), found = {};
    const kept = await new Promise((resolve, reject) => {
        const transaction = db.transaction('pictures'), store = transaction.objectStore('pictures'), rows = [];
        for (const hash of hashes) store.get(hash).onsuccess = event => { if (event.target.result) rows.push(event.target.result); };
        transaction.oncomplete = () => resolve(rows);
        transaction.onerror = () => reject(transaction.error);
    });
    await Promise.all(kept.map(async row => { found[row.hash] = await row.bytes.text(); }));
    return JSON.stringify(found);
}

/** Erases bytes for good, on a person's request. The entries that name them stay. */
export function erase(hashes) {
    return write(['pictures'], transaction => { for (const hash of hashes) transaction.objectStore('pictures').delete(hash); });
}

function instead(transaction, name, keyOf, hashes, lines) {
    const store = transaction.objectStore(name);
    hashes.forEach((hash, n) => {
        keyOf(store, hash).onsuccess = event => {
            const cursor = event.target.result;
            if (cursor) cursor.update({ ...cursor.value, line: lines[n] });
        };
    });
}

/** Puts lines without a person's words in the place of those whose hash as first written they state. */
export function redact(visit, hashes, lines) {
    return write(['lines', 'index'], transaction => {
        transaction.objectStore('index').delete(visit);
        instead(transaction, 'lines', (store, hash) => store.index('line').openCursor(IDBKeyRange.only([visit, hash])), hashes, lines);
    }).then(() => channel.postMessage(visit));
}

/** The same in the firm's book. */
export function redactBook(hashes, lines) {
    return write(['book'], transaction => instead(transaction, 'book', (store, hash) => store.index('hash').openCursor(IDBKeyRange.only(hash)), hashes, lines));
}

/** Hashes of everything kept beside the journals. */
export async function blobs() {
    return read('pictures', s => s.getAllKeys());
}

/** Adds a visit with the lines it has so far; whole or not at all. */
export function begin(visit, header, hashes, lines, demo) {
    return write(['visits', 'lines', 'index'], transaction => {
        transaction.objectStore('index').delete(visit);
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
        await write(['lines', 'index'], transaction => {
            const store = transaction.objectStore('lines');
            store.index('visit').count(visit).onsuccess = event => {
                if (event.target.result !== known) { stale = true; transaction.abort(); return; }
                transaction.objectStore('index').delete(visit);
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

/** Removes the visits that came with the app, and the demo firm's entries in the book. A visit begun by a person is never marked as demo. */
export async function removeDemo() {
    const demo = (await read('visits', s => s.getAll())).filter(v => v.demo).map(v => v.visit);
    words = undefined;
    // A store that was emptied on purpose is not one that the browser has cleared.
    if (demo.length === await read('visits', s => s.count())) try { localStorage.removeItem('held'); } catch { }
    await write(['visits', 'lines', 'index', 'stoves', 'book'], transaction => {
        transaction.objectStore('stoves').clear();
        transaction.objectStore('index').clear();
        for (const visit of demo) {
            transaction.objectStore('visits').delete(visit);
            transaction.objectStore('lines').index('visit').openCursor(IDBKeyRange.only(visit)).onsuccess = event => {
                const cursor = event.target.result;
                if (cursor) { cursor.delete(); cursor.continue(); }
            };
        }
        transaction.objectStore('book').openCursor().onsuccess = event => {
            const cursor = event.target.result;
            if (!cursor) return;
            if (cursor.value.demo) cursor.delete();
            cursor.continue();
        };
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

/** Every setting as { name: value }. */
export async function settings() {
    return JSON.stringify(Object.fromEntries((await read('settings', s => s.getAll())).filter(row => typeof row.value === 'string').map(row => [row.name, row.value])));
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
