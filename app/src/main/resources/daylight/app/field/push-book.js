// What the push has in it now: what the archive answered, and over it what still waits here.

import { book, entries, uuid } from './enter.js';
import { openQueue } from './push-queue.js';
import { drafts, line, remarkWith } from './push-later.js';

/** Opens the book of a push; `changed` is called whenever something of it is. */
export async function openPush(about, changed) {
  const queue = await openQueue(changed);
  const kept = new Map();
  // What was touched a moment ago and is being written to this browser's disk.
  const fresh = new Map();
  let busy = 0;
  let chain = Promise.resolve();
  for (const row of await entries(book())) {
    kept.set(row.entry, row);
    queue.learn(row);
  }

  /** An entry as it would be; undefined where it is withdrawn or was never there. */
  function row(entry) {
    const touched = fresh.get(entry);
    if (touched !== undefined) {
      return touched.keys === null ? undefined : { ...touched, state: 'waiting' };
    }
    const waiting = queue.items().filter((item) => item.entry === entry && item.blob === undefined);
    const last = waiting.at(-1);
    const base = kept.get(entry);
    if (last === undefined) {
      return base && { ...base, state: 'kept' };
    }
    const { keys, state, complaints, now, parent, section, n } = last;
    return keys === null && state === 'waiting'
      ? undefined
      : { entry, parent, section, keys: keys ?? base?.keys ?? {}, state, complaints, now, n };
  }

  const all = () =>
    [...new Set([...kept.keys(), ...queue.items().filter((one) => one.blob === undefined).map((one) => one.entry), ...fresh.keys()])]
      .map(row)
      .filter((one) => one !== undefined);
  const pass = () => row(about.pass);

  /** The next free label of a letter in sections that share their labels. */
  function label(letter, sections, beyond = 0) {
    // What is left for later has its label already.
    const taken = [...all().filter((one) => sections.includes(one.section)), ...(sections.includes('findings') ? later() : [])]
      .map((one) => new RegExp(`^${letter}(\\d{1,6})$`).exec(one.keys.label ?? '')?.[1] ?? 0);
    return letter + (Math.max(0, ...taken) + 1 + beyond);
  }

  /** Writes entries, each {entry, parent, section, keys}; keys null: withdrawn. One touch, one undo. */
  function change(changes, remember = true) {
    const before = changes.map(({ entry, parent, section }) => ({
      entry,
      parent,
      section,
      keys: row(entry)?.keys ?? null,
    }));
    changes.forEach((one) => fresh.set(one.entry, one));
    busy += 1;
    changed();
    chain = chain.then(() => written(changes, remember ? before : null));
    return chain;
  }

  async function written(changes, before) {
    try {
      if (before !== null) {
        await queue.remember({ pass: about.pass, changes: before });
      }
      await queue.put(changes);
      for (const one of changes) {
        kept.set(one.entry, one);
        if (one.keys === null) {
          kept.delete(one.entry);
        }
        if (fresh.get(one.entry) === one) {
          fresh.delete(one.entry);
        }
      }
    } finally {
      busy -= 1;
      changed();
    }
  }

  const passChange = (more) => {
    const { entry, parent, section, keys } = pass();
    const now = { ...keys, ...more };
    Object.keys(now).forEach((key) => now[key] === undefined && delete now[key]);
    return { entry, parent, section, keys: now };
  };

  const later = () =>
    drafts(pass().keys.remark).map((one) => ({ ...one, section: 'later', parent: about.pass, state: pass().state }));

  return {
    queue,
    busy: () => busy,
    all,
    row: (entry) => row(entry) ?? later().find((one) => one.entry === entry),
    pass,
    label,
    change,
    passChange,
    /** Everything of this push, the last first. */
    rows: () =>
      [...all().filter((one) => one.parent === about.pass && ['findings', 'bends'].includes(one.section)), ...later()].reverse(),
    found(keys, section = 'findings') {
      return { entry: uuid(), parent: about.pass, section, keys };
    },
    /** What was left for later as a finding, under another label where somebody took its own. */
    fromLater(row, keys) {
      const taken = all().some((one) => one.section === 'findings' && one.entry !== row.entry && one.keys.label === keys.label);
      const own = taken ? { ...keys, label: label('F', ['findings']) } : keys;
      return { entry: row.entry, parent: about.pass, section: 'findings', keys: own };
    },
    /** The change that notes a finding without a distance, or (time null) takes it out again. */
    noteLater: (entry, time, keys) =>
      passChange({ remark: remarkWith(pass().keys.remark, entry, time === null ? null : line(entry, time, keys)) }),
    /** Takes back the last touch, also after the page was loaded again. */
    async undo() {
      const last = await queue.lastOf(about.pass);
      if (last === undefined) {
        return false;
      }
      await change([...last.changes].reverse(), false);
      return true;
    },
    /** What clashed and is left as somebody else wrote it. */
    async theirs(entry) {
      const { now, parent, section } = row(entry);
      if (now === null) {
        kept.delete(entry);
      } else {
        kept.set(entry, { entry, parent, section, keys: now });
      }
      await queue.settle(entry, false);
    },
  };
}
