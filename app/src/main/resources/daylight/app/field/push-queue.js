// What was touched and is not yet on the disk of the archive. It lies in this browser's own store
// before the page says anything, keeps its order, and is sent by its identity, so that whatever is
// sent twice is one entry.

import { asked, opened } from './disk.js';
import { book, enter, isKept, NotSent } from './enter.js';
import { upload } from './push-media.js';

const PATIENCE = 4000;
const MOST = 50;

const STORES = {
  queue: { keyPath: 'n', autoIncrement: true },
  undo: { keyPath: 'n', autoIncrement: true },
  state: undefined,
};

/** Does something in one store, and is over when it is on the disk of this browser. */
async function within(db, name, mode, what) {
  const transaction = db.transaction(name, mode, { durability: 'strict' });
  const over = new Promise((resolve, reject) => {
    transaction.oncomplete = resolve;
    transaction.onabort = () => reject(transaction.error);
    transaction.onerror = () => reject(transaction.error);
  });
  const result = await asked(what(transaction.objectStore(name)));
  await over;
  return result;
}

/** Opens the queue; `changed` is called whenever something of it is. */
export async function openQueue(changed) {
  const db = await opened('daylight-push', STORES);
  const write = (name, what) => within(db, name, 'readwrite', what);
  const read = (name, what) => within(db, name, 'readonly', what);
  const all = await read('queue', (s) => s.getAll());
  const numbers = new Map();
  for (const [key, value] of (await read('state', (s) => s.get('numbers'))) ?? []) {
    numbers.set(key, value);
  }
  const mine = () => all.filter((item) => item.book === book());
  let why = '';
  let running = null;
  let timer = 0;
  let chain = Promise.resolve();

  const save = (item) => write('queue', (s) => s.put(item));
  const saveNumbers = () => write('state', (s) => s.put([...numbers].slice(-2000), 'numbers'));
  async function add(item) {
    item.n = await write('queue', (s) => s.add(item));
    all.push(item);
  }
  async function remove(item) {
    await write('queue', (s) => s.delete(item.n));
    all.splice(all.indexOf(item), 1);
  }

  /** Steps on the queue follow each other: none sees half of another. */
  function step(what) {
    const next = chain.then(what);
    chain = next.catch(() => {});
    return next;
  }

  async function take(change) {
    const before = mine().filter((item) => item.entry === change.entry);
    const last = before.at(-1);
    if (last === undefined || last.tried) {
      const base = last === undefined ? numbers.get(change.entry) ?? 0 : null;
      await add({ ...change, book: book(), state: 'waiting', tried: false, base });
    } else if (change.keys === null && last.base === 0) {
      await remove(last);
    } else {
      Object.assign(last, { keys: change.keys, state: last.state === 'clash' ? 'clash' : 'waiting' });
      await save(last);
    }
  }

  function batch() {
    const seen = new Set();
    const chosen = [];
    for (const item of mine()) {
      if (item.blob !== undefined) {
        if (item.state !== 'waiting') {
          continue;
        }
        if (chosen.length > 0) {
          break;
        }
        return [item];
      }
      if (item.state === 'waiting' && !seen.has(item.entry)) {
        chosen.push(item);
      } else if (item.state === 'waiting') {
        break;
      }
      seen.add(item.entry);
      if (chosen.length >= MOST) {
        break;
      }
    }
    return chosen;
  }

  async function outcome(item, told) {
    if (isKept(told)) {
      numbers.set(item.entry, told.number);
      await saveNumbers();
      await remove(item);
    } else if (told.state === 'not-written') {
      throw new NotSent((told.complaints ?? []).join(' '), true);
    } else {
      Object.assign(item, {
        state: told.state,
        tried: false,
        complaints: told.complaints ?? [],
        at: told.at ?? [],
        now: told.now ?? null,
        number: told.number,
      });
      await save(item);
    }
  }

  async function sendMedia(item) {
    let told;
    try {
      told = await upload(book(), item);
    } catch (failed) {
      if (failed.again || failed.atDoor) {
        throw failed;
      }
      told = failed.message;
    }
    if (told === 'busy') {
      throw new NotSent(told, true);
    }
    await step(async () => {
      if (told === 'whole') {
        await remove(item);
      } else {
        // What the archive will not take stays here and holds nothing else up.
        Object.assign(item, { state: 'wrong', complaints: [`${item.name}: ${told}`] });
        await save(item);
      }
    });
    return true;
  }

  async function sendSome() {
    const chosen = await step(async () => {
      const some = batch();
      for (const item of some) {
        item.tried = true;
        item.base ??= numbers.get(item.entry) ?? 0;
        await save(item);
      }
      return some;
    });
    if (chosen.length === 0) {
      return false;
    }
    if (chosen[0].blob !== undefined) {
      return sendMedia(chosen[0]);
    }
    const sent = chosen.map(({ entry, parent, section, base, keys }) => ({ entry, parent, section, base, keys }));
    const outcomes = await enter(book(), sent);
    await step(async () => {
      for (const [i, told] of outcomes.entries()) {
        await outcome(chosen[i], told);
      }
    });
    return true;
  }

  async function sendAll() {
    try {
      let more = true;
      while (more) {
        more = await sendSome();
        why = '';
        changed();
      }
    } catch (failed) {
      why = failed.message;
      changed();
    }
    clearTimeout(timer);
    if (mine().some((item) => item.state === 'waiting')) {
      timer = setTimeout(send, PATIENCE);
    }
  }

  function send() {
    running ??= sendAll().finally(() => {
      running = null;
    });
    return running;
  }

  addEventListener('online', send);

  return {
    items: mine,
    why: () => why,
    send,
    /** Knows what the archive has, where nothing of ours waits upon an older number. */
    learn(row) {
      if (!mine().some((item) => item.entry === row.entry)) {
        numbers.set(row.entry, row.number);
      }
    },
    /** Takes changes; they are on this browser's disk when it returns. */
    async put(changes) {
      await step(async () => {
        for (const change of changes) {
          await take(change);
        }
      });
      changed();
      const sending = running;
      (sending ?? Promise.resolve()).then(send);
    },
    /** A recording or a picture, to be sent before the entries that name it. */
    async putMedia(name, blob, sha) {
      await step(() => add({ book: book(), entry: name, name, blob, sha, state: 'waiting', tried: false }));
    },
    /** What clashed: ours is written upon theirs, or dropped. */
    async settle(entry, ours) {
      await step(async () => {
        for (const item of mine().filter((one) => one.entry === entry && one.state === 'clash')) {
          numbers.set(entry, item.number);
          if (ours) {
            Object.assign(item, { state: 'waiting', tried: false, base: item.number });
            await save(item);
          } else {
            await remove(item);
          }
        }
        await saveNumbers();
      });
      changed();
      send();
    },
    /** Gives up what was refused. */
    async drop(entry) {
      await step(async () => {
        for (const item of mine().filter((one) => one.entry === entry && one.state === 'wrong')) {
          await remove(item);
        }
      });
      changed();
    },
    remember: (what) => write('undo', (s) => s.add(what)),
    async lastOf(pass) {
      const past = await read('undo', (s) => s.getAll());
      const last = past.filter((one) => one.pass === pass).at(-1);
      if (last !== undefined) {
        await write('undo', (s) => s.delete(last.n));
      }
      return last;
    },
    state: (key) => read('state', (s) => s.get(key)),
    setState: (key, value) => write('state', (s) => s.put(value, key)),
  };
}
