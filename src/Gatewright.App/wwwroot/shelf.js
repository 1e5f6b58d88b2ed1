// The device's shelf in IndexedDB. Each function is one transaction, flushed to disk before it answers; what it answers
// with is one string or one run of bytes, since every value that crosses into the program costs time.

const stores = {
  front: null,
  settings: null,
  clubs: 'club',
  counters: null,
  own: ['club', 'place'],
  blocks: ['club', 'last'],
  snapshots: 'club',
  photos: ['club', 'sha256'],
};
let opened;

function database() {
  if (opened) {
    return opened;
  }

  const opening = new Promise((resolve, reject) => {
    const request = indexedDB.open('gatewright', 1);
    request.onupgradeneeded = () => {
      for (const [name, keyPath] of Object.entries(stores)) {
        request.result.createObjectStore(name, keyPath ? { keyPath } : {});
      }
    };
    request.onsuccess = () => {
      const shelf = request.result;
      // A browser that runs short closes it by itself.
      shelf.onclose = () => forget(opening);
      // A newer program in another page may need another shape: it is let through. Opened again, it says which shape it has.
      shelf.onversionchange = () => {
        forget(opening);
        shelf.close();
      };
      resolve(shelf);
    };
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new DOMException('another page holds it', 'AbortError'));
  });
  opened = opening;
  opening.catch(() => forget(opening));
  return opening;
}

// What is closed, or could not be opened, is opened anew by whoever asks next.
function forget(closed) {
  if (opened === closed) {
    opened = undefined;
  }
}

async function begun(names, mode) {
  const opening = database();
  const begin = database => database.transaction(names, mode, { durability: 'strict' });
  try {
    return begin(await opening);
  } catch (fault) {
    if (fault?.name !== 'InvalidStateError') {
      throw fault;
    }

    // It was closed, and nobody was told yet: nothing was begun, so it is begun once more.
    forget(opening);
    return begin(await database());
  }
}

// Runs work in one transaction and answers once that is on disk. Work may await requests of the transaction alone.
async function transact(mode, names, work) {
  try {
    const transaction = await begun(names, mode);
    const ended = new Promise((resolve, reject) => {
      transaction.oncomplete = resolve;
      transaction.onabort = () => reject(transaction.error ?? new DOMException('it was broken off', 'AbortError'));
    });
    let answer;
    try {
      answer = await work(name => transaction.objectStore(name));
      // Nothing more comes: it ends sooner for being told so.
      try { transaction.commit(); } catch { /* it ends by itself */ }
    } catch (fault) {
      ended.catch(() => { });
      try { transaction.abort(); } catch { /* it has ended already */ }
      throw fault;
    }

    await ended;
    return answer;
  } catch (fault) {
    // The name alone tells the program what to do; it is put where the program finds it.
    throw new Error(`[${fault?.name ?? 'Error'}] ${fault?.message ?? fault}`);
  }
}

const asked = request => new Promise((resolve, reject) => {
  request.onsuccess = () => resolve(request.result);
  request.onerror = () => reject(request.error);
});
const ofClub = club => IDBKeyRange.bound([club], [club, []]);
const after = (club, key) => IDBKeyRange.bound([club, key], [club, []], true);

// Makes the database ready while the runtime is still on its way.
export function prepare() {
  database().catch(() => { });
}

export async function open(newDevice) {
  // Only the very first start writes, and waits for the disk.
  return await front('readonly', null) ?? await front('readwrite', newDevice);
}

function front(mode, newDevice) {
  return transact(mode, ['front', 'clubs', 'settings'], async store => {
    let device = await asked(store('front').get('device'));
    if (!device && !newDevice) {
      return null;
    }

    if (!device) {
      device = newDevice;
      store('front').put(device, 'device');
    }

    const names = await asked(store('settings').getAllKeys());
    const values = await asked(store('settings').getAll());
    return JSON.stringify({
      device,
      clubs: await asked(store('clubs').getAll()),
      settings: Object.fromEntries(names.map((name, i) => [name, values[i]])),
    });
  });
}

export function set(name, value) {
  return transact('readwrite', ['settings'], store => {
    value === null ? store('settings').delete(name) : store('settings').put(value, name);
  });
}

export function hold(text) {
  return transact('readwrite', ['clubs'], async store => {
    const club = JSON.parse(text);
    const held = await asked(store('clubs').get(club.club));
    store('clubs').put({ ...club, pulled: held?.pulled ?? 0 });
  });
}

export function letGo(club) {
  return transact('readwrite', ['clubs', 'own', 'blocks', 'snapshots', 'photos', 'counters'], store => remove(store, club));
}

export async function read(club, number, place, withSnapshot) {
  const { held, snapshot, blocks, own } = await transact('readonly', ['clubs', 'own', 'blocks', 'snapshots'], async store => {
    const held = await asked(store('clubs').get(club));
    const snapshot = withSnapshot ? await asked(store('snapshots').get(club)) : undefined;
    const blocks = await asked(store('blocks').getAll(after(club, Math.max(number, snapshot?.number ?? 0))));
    const own = await asked(store('own').getAll(after(club, Math.max(place, snapshot?.place ?? 0))));
    return { held, snapshot, blocks, own };
  });
  // The browser's own hash takes a hundredth of the time that the program's would.
  const vouched = !!snapshot?.sha256 && snapshot.sha256 === await sha256(snapshot.bytes);
  return packed(
    {
      held: held ?? null,
      snapshot: snapshot ? { number: snapshot.number, place: snapshot.place, length: snapshot.bytes.length, vouched } : null,
      blocks: blocks.map(b => b.lines.length),
      own: own.map(o => ({ place: o.place, text: o.text })),
    },
    [...(snapshot ? [snapshot.bytes] : []), ...blocks.map(b => b.lines)]);
}

// In hexadecimal; null where the browser has none, as on a page that came without encryption.
async function sha256(bytes) {
  return globalThis.crypto?.subtle
    ? [...new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))].map(b => b.toString(16).padStart(2, '0')).join('')
    : null;
}

// The length of what describes it in four bytes, the description, and all bytes it describes.
function packed(description, parts) {
  const head = new TextEncoder().encode(JSON.stringify(description));
  const whole = new Uint8Array(4 + head.length + parts.reduce((sum, p) => sum + p.length, 0));
  new DataView(whole.buffer).setUint32(0, head.length, true);
  whole.set(head, 4);
  let at = 4 + head.length;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }

  return whole;
}

let isWriterBegun = false;
let writer = null;

// A disk that is waited for takes a second on a slow phone; a thread that says nothing for longer than this is gone.
const longestSilence = 5000;

// What is recorded is written on a thread of its own, once there is one: the program works out the verdict meanwhile.
export function addOwn(club, texts) {
  return writer ? writer(club, texts) : addOwnHere(club, texts);
}

export function addOwnHere(club, texts) {
  return transact('readwrite', ['clubs', 'own', 'counters'], store => add(store, club, texts));
}

// What the thread was given and never told of: it may have reached the disk all the same, and is not written twice.
function addOwnOnce(club, texts) {
  return transact('readwrite', ['clubs', 'own', 'counters'], async store => {
    const kept = await asked(store('own').getAll(ofClub(club)));
    const first = kept.findIndex(record => record.text === texts[0]);
    return first < 0 ? add(store, club, texts) : kept.slice(first, first + texts.length).map(record => record.place);
  });
}

// Called where somebody is about to record one thing after the other. Where the thread fails or falls silent, everything is
// written here.
export function beginWriter() {
  if (isWriterBegun) {
    return;
  }

  isWriterBegun = true;
  const waiting = new Map();
  let number = 0;
  let thread;
  try {
    thread = new Worker(new URL('shelf-writer.js', import.meta.url), { type: 'module' });
  } catch {
    return;
  }

  // What it was given is written here, in the order in which it was recorded.
  const isSilent = () => {
    thread.terminate();
    writer = null;
    waiting.forEach(({ club, texts, resolve, reject, silence }) => {
      clearTimeout(silence);
      addOwnOnce(club, texts).then(resolve, reject);
    });
    waiting.clear();
  };
  thread.onmessage = ({ data }) => {
    if (data.isReady) {
      writer = (club, texts) => new Promise((resolve, reject) => {
        waiting.set(++number, { club, texts, resolve, reject, silence: setTimeout(isSilent, longestSilence) });
        thread.postMessage({ number, club, texts });
      });
      return;
    }

    const { resolve, reject, silence } = waiting.get(data.number);
    clearTimeout(silence);
    waiting.delete(data.number);
    data.fault === undefined ? resolve(data.places) : reject(new Error(data.fault));
  };
  thread.onerror = event => {
    event.preventDefault();
    writer = null;
    waiting.forEach(({ reject, silence }) => {
      clearTimeout(silence);
      reject(new Error(`[AbortError] ${event.message}`));
    });
    waiting.clear();
  };
}

export function changeOwn(club, places, texts, removed) {
  return transact('readwrite', ['own'], async store => {
    for (let i = 0; i < places.length; i++) {
      if (await asked(store('own').getKey([club, places[i]])) !== undefined) {
        store('own').put({ club, place: places[i], text: texts[i] });
      }
    }

    removed.forEach(place => store('own').delete([club, place]));
  });
}

export function append(club, from, last, lines, removed) {
  return transact('readwrite', ['clubs', 'own', 'blocks'], async store => {
    const held = await heldClub(store, club);
    if (held.pulled !== from) {
      return false;
    }

    store('blocks').put({ club, after: from, last, lines });
    store('clubs').put({ ...held, pulled: last });
    removed.forEach(place => store('own').delete([club, place]));
    return true;
  });
}

export function startOver(club, texts) {
  return transact('readwrite', ['clubs', 'own', 'blocks', 'snapshots', 'counters', 'photos'], async store => {
    store('blocks').delete(ofClub(club));
    store('snapshots').delete(club);
    store('clubs').put({ ...await heldClub(store, club), pulled: 0 });
    await add(store, club, texts);
    for (const photo of await asked(store('photos').getAll(ofClub(club)))) {
      store('photos').put({ ...photo, unsent: true });
    }
  });
}

export function move(from, to, texts) {
  return transact('readwrite', ['clubs', 'own', 'blocks', 'snapshots', 'photos', 'counters'], async store => {
    for (const photo of await asked(store('photos').getAll(ofClub(from)))) {
      if (await asked(store('photos').getKey([to, photo.sha256])) === undefined) {
        store('photos').put({ ...photo, club: to, unsent: true });
      }
    }

    await add(store, to, texts);
    remove(store, from);
  });
}

export async function putSnapshot(club, number, place, bytes) {
  const hash = await sha256(bytes);
  await transact('readwrite', ['snapshots'], store => {
    store('snapshots').put({ club, number, place, bytes, sha256: hash });
  });
}

export function putPhoto(club, sha256, mediaType, bytes, unsent) {
  return transact('readwrite', ['photos'], async store => {
    if (await asked(store('photos').getKey([club, sha256])) === undefined) {
      store('photos').put({ club, sha256, mediaType, bytes, unsent });
    }
  });
}

export function photo(club, sha256) {
  return transact('readonly', ['photos'], async store => {
    const found = await asked(store('photos').get([club, sha256]));
    return found ? packed({ mediaType: found.mediaType, unsent: found.unsent }, [found.bytes]) : new Uint8Array();
  });
}

export function photos(club) {
  return transact('readonly', ['photos'], async store => {
    const found = {};
    await new Promise((resolve, reject) => {
      const request = store('photos').openCursor(ofClub(club));
      request.onerror = () => reject(request.error);
      request.onsuccess = () => {
        if (!request.result) {
          resolve();
          return;
        }

        const { sha256, unsent, bytes } = request.result.value;
        found[sha256] = { isUnsent: unsent, bytes: bytes.length };
        request.result.continue();
      };
    });
    return JSON.stringify(found);
  });
}

export function photoSent(club, sha256) {
  return transact('readwrite', ['photos'], async store => {
    const found = await asked(store('photos').get([club, sha256]));
    if (found) {
      store('photos').put({ ...found, unsent: false });
    }
  });
}

export function removePhotos(club, all) {
  return transact('readwrite', ['photos'], store => all.forEach(sha256 => store('photos').delete([club, sha256])));
}

async function heldClub(store, club) {
  const held = await asked(store('clubs').get(club));
  if (!held) {
    throw new DOMException(`This device does not hold the club ${club}.`, 'NotFoundError');
  }

  return held;
}

async function add(store, club, texts) {
  const [, last = 0] = await Promise.all([heldClub(store, club), asked(store('counters').get(club))]);
  const places = texts.map((_, i) => last + 1 + i);
  texts.forEach((text, i) => store('own').put({ club, place: places[i], text }));
  store('counters').put(last + texts.length, club);
  return places;
}

function remove(store, club) {
  ['own', 'blocks', 'photos'].forEach(name => store(name).delete(ofClub(club)));
  ['clubs', 'snapshots'].forEach(name => store(name).delete(club));
}
