// What is written waits here, on the disk of this browser, until the archive has answered that it is
// kept. Order is kept; each entry has its identity and the number it was written upon, so that what
// is sent twice is written once. What clashes or is refused stays until a person has chosen.

import { asked, opened } from './disk.js';
import { enter, entries, isKept } from './enter.js';
import { named } from './walk-names.js';

const MOST = 50;

const STORES = { queue: { keyPath: 'entry' }, known: { keyPath: 'book' } };

/** Keys in one order, for a comparison. */
const plain = (keys) =>
  JSON.stringify(keys, (_, value) =>
    value && typeof value === 'object' && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );

export class Queue {
  #db;
  #book;
  #running = null;
  #again = false;

  constructor(db, book) {
    this.#db = db;
    this.#book = book;
    /** Waiting or to be decided upon, in order. */
    this.items = [];
    /** Entries of the book as the archive last told them. */
    this.rows = [];
    this.answer = null;
    /** Whether something was written after what the answer is of. */
    this.answerIsOld = true;
    /** Counts what is seen to wait, for an answer that was asked for before it. */
    this.writes = 0;
    /** Whether the last attempt reached the archive; null before the first. */
    this.reach = null;
    this.refused = '';
    this.onchange = () => {};
  }

  static async open(book) {
    const queue = new Queue(await opened('daylight-walk', STORES), book);
    const known = await asked(queue.#store('known', 'readonly').get(book));
    queue.rows = known?.rows ?? [];
    queue.answer = known?.answer ?? null;
    await queue.load();
    return queue;
  }

  #store(name, mode) {
    return this.#db.transaction(name, mode, { durability: 'strict' }).objectStore(name);
  }

  /** Changes one item in a transaction of its own; done when it is on the disk. */
  #change(entry, how) {
    return new Promise((resolve, reject) => {
      const store = this.#store('queue', 'readwrite');
      store.transaction.oncomplete = () => resolve();
      store.transaction.onabort = () => reject(store.transaction.error);
      const all = store.getAll();
      all.onsuccess = () => {
        const now = all.result.find((one) => one.entry === entry);
        const next = how(now, Math.max(0, ...all.result.map((one) => one.seq)) + 1);
        if (next === null) {
          store.delete(entry);
        } else if (next !== undefined) {
          store.put(next);
        }
      };
    });
  }

  async load() {
    const all = await asked(this.#store('queue', 'readonly').getAll());
    this.items = all.filter((one) => one.book === this.#book).sort((a, b) => a.seq - b.seq);
    if (this.items.length > 0) {
      this.writes += 1;
      this.answerIsOld = true;
    }
    this.onchange();
  }

  async #remember() {
    const store = this.#store('known', 'readwrite');
    await asked(store.put({ book: this.#book, rows: this.rows, answer: this.answer }));
  }

  /** Writes an entry; open means that somebody is still at it, so that it need not go yet. */
  async put({ entry, parent, section, base, keys, open = false, note = '' }) {
    await this.#change(entry, (now, seq) => ({
      ...(now ?? { entry, book: this.#book, seq, version: 0, sent: [], base }),
      parent,
      section,
      keys,
      open,
      note: note || now?.note || '',
      version: (now?.version ?? 0) + 1,
      state: 'waiting',
    }));
    await this.load();
  }

  async drop(entry) {
    await this.#change(entry, () => null);
    await this.load();
  }

  /** What a person chose where two wrote: mine, written upon the other. */
  async mine(entry) {
    await this.#change(entry, (now) =>
      now && { ...now, base: now.number, state: 'waiting', version: now.version + 1 },
    );
    await this.load();
  }

  /** Whoever was at work when the page was closed is at work no more. */
  async closeAll() {
    for (const item of this.items.filter((one) => one.open)) {
      await this.#change(item.entry, (now) => now && { ...now, open: false });
    }
    await this.load();
  }

  /** An entry as this phone has it: what waits, before what the archive told. */
  find(entry) {
    return (
      this.items.find((one) => one.entry === entry) ??
      this.rows.find((one) => one.entry === entry)
    );
  }

  /** All entries of a section as this phone has them. */
  all(section) {
    const waiting = new Map(this.items.map((one) => [one.entry, one]));
    const kept = this.rows.filter((one) => one.section === section);
    const fresh = this.items.filter(
      (one) => one.section === section && !kept.some((row) => row.entry === one.entry),
    );
    return [...kept.map((row) => waiting.get(row.entry) ?? row), ...fresh].filter(
      (one) => one.keys !== null,
    );
  }

  /**
   * What goes next: landmarks before everything, whenever they were named, since others name them.
   * What names a landmark that is not decided upon waits with it.
   */
  #next() {
    const ready = (one) => one.state === 'waiting' && !(one.open && (one.base > 0 || one.sent.length > 0));
    const marks = this.items.filter((one) => one.section === 'landmarks');
    const first = marks.filter(ready);
    if (first.length > 0) return first.slice(0, MOST);
    const undecided = new Set(marks.filter((one) => one.base === 0).map((one) => one.keys?.label));
    return this.items
      .filter((one) => one.section !== 'landmarks' && ready(one))
      .filter((one) => !named(one.keys).some((label) => undecided.has(label)))
      .slice(0, MOST);
  }

  /** Sends what waits; one at a time, however often it is asked. */
  send() {
    if (this.#running) {
      this.#again = true;
      return this.#running;
    }
    this.#running = this.#alone().finally(() => {
      this.#running = null;
      if (this.#again) {
        this.#again = false;
        this.send();
      }
    });
    return this.#running;
  }

  /** Two windows of one browser do not send at once, where the browser lets them know. */
  #alone() {
    return navigator.locks
      ? navigator.locks.request(`daylight-walk-${this.#book}`, () => this.#all())
      : this.#all();
  }

  async #all() {
    await this.load();
    try {
      for (let next = this.#next(); next.length > 0; next = this.#next()) {
        for (const item of next) {
          await this.#change(item.entry, (now) =>
            now && { ...now, sent: [...now.sent, now.keys].slice(-5) },
          );
        }
        const outcomes = await enter(this.#book, next.map(
          ({ entry, parent, section, base, keys }) => ({ entry, parent, section, base, keys })));
        for (let i = 0; i < next.length; i++) {
          await this.#settle(next[i], outcomes[i]);
        }
        await this.load();
        if (outcomes.some((one) => one.state === 'not-written')) {
          throw new Error(outcomes.find((one) => one.state === 'not-written').complaints[0]);
        }
      }
      this.rows = await entries(this.#book);
      this.reach = true;
      this.refused = '';
      await this.#remember();
    } catch (unsent) {
      this.reach = unsent.name === 'NotSent' && unsent.again ? false : this.reach ?? false;
      this.refused = unsent.name === 'NotSent' && unsent.again ? '' : unsent.message;
    }
    await this.load();
  }

  async #settle(was, outcome) {
    if (isKept(outcome)) {
      const row = { entry: was.entry, parent: was.parent, section: was.section, number: outcome.number, keys: was.keys };
      this.rows = [...this.rows.filter((one) => one.entry !== was.entry), row];
    }
    await this.#change(was.entry, (now) => {
      if (!now) {
        return undefined;
      }
      if (isKept(outcome)) {
        return now.version === was.version && !now.open
          ? null
          : { ...now, base: outcome.number, state: 'waiting', fresh: now.version === was.version };
      }
      if (outcome.state === 'clash') {
        // What this phone sent itself, and whose answer was lost on the way, is nobody else's.
        const own = outcome.now !== null && now.sent.slice(0, -1).some((keys) => plain(keys) === plain(outcome.now));
        return own
          ? { ...now, base: outcome.number }
          : { ...now, state: 'clash', number: outcome.number, now: outcome.now };
      }
      return outcome.state === 'wrong'
        ? { ...now, state: 'wrong', complaints: outcome.complaints, at: outcome.at }
        : now;
    });
  }

  /** Takes the answer of the whole book; `asked` is what `writes` was when it was asked for. */
  async answered(answer, asked) {
    this.answer = answer;
    this.answerIsOld = this.items.length > 0 || asked !== this.writes;
    await this.#remember();
    this.onchange();
  }
}
