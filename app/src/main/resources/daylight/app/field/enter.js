// Sends entries to the archive and says what became of them. What a page calls "kept" was answered
// by the archive, and is on its disk.

const meta = (name) => document.querySelector(`meta[name="${name}"]`)?.content ?? '';

/** The book that the page is about. */
export const book = () => meta('daylight-book');

/** An identity for a new entry. Pages at a plain http address have no crypto.randomUUID. */
export function uuid() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

/**
 * What was not sent, and whether trying again later can help. At the door means that this device is
 * refused, whatever it sends.
 */
export class NotSent extends Error {
  constructor(why, again, atDoor = false) {
    super(why);
    this.name = 'NotSent';
    this.again = again;
    this.atDoor = atDoor;
  }
}

/** Headers of every order: the token that only pages of ours can read. */
export const headers = (more = {}) => ({ 'Daylight-Token': meta('daylight-token'), ...more });

/** Sends anything by POST; throws NotSent where the archive cannot be reached or refuses. */
export async function post(path, body, type) {
  let reply;
  try {
    reply = await fetch(path, { method: 'POST', headers: headers({ 'Content-Type': type }), body });
  } catch (unreached) {
    throw new NotSent(String(unreached.message ?? unreached), true);
  }
  if (reply.ok || reply.status === 507) {
    return isJson(reply) ? reply.json() : null;
  }
  throw await refusal(reply);
}

const isJson = (reply) => (reply.headers.get('Content-Type') ?? '').includes('json');

/** Why the archive refused. */
async function refusal(reply) {
  const text = await reply.text().catch(() => '');
  let said = text.trim().slice(0, 300);
  try {
    said = isJson(reply) ? JSON.parse(text).error ?? said : said;
  } catch {
    // Cut off on the way.
  }
  return new NotSent(said || String(reply.status), reply.status >= 500, reply.status === 403);
}

/**
 * Enters entries: {entry, parent, section, base, keys}. Returns an outcome for each, in order:
 * {entry, state: kept | same | clash | wrong | not-written, number, now, complaints, at}. An outcome
 * "not-written" is to be sent again.
 */
export async function enter(to, entries) {
  const body = JSON.stringify({ entries });
  return (await post(`/site/${to}/enter`, body, 'application/json')).entries;
}

/** The entries of a book as they are now, or those of one section. */
export async function entries(of, section) {
  const which = section === undefined ? '' : `?section=${encodeURIComponent(section)}`;
  const reply = await fetch(`/site/${of}/entries${which}`);
  if (!reply.ok) {
    throw await refusal(reply);
  }
  return (await reply.json()).entries;
}

/** Whether an outcome means that the entry is on the disk as it was sent. */
export const isKept = (outcome) => outcome.state === 'kept' || outcome.state === 'same';

/** The line that says what became of what was written; words come with the page. */
export function status(line = document.querySelector('.sending')) {
  const show = (state, more = '') => {
    if (line) {
      line.className = `sending ${state}`;
      line.textContent = (line.dataset[state] ?? '').replace('{0}', more);
    }
  };
  return {
    sending: () => show('sending'),
    kept: () => show('kept'),
    unsent: (why) => show('unsent', why),
    /** Says what is worst of several outcomes; returns whether all are kept. */
    of(outcomes) {
      const bad = outcomes.filter((one) => !isKept(one));
      const first = bad.find((one) => one.state !== 'clash') ?? bad[0];
      if (first === undefined) {
        show('kept');
      } else if (first.state === 'clash') {
        show('clash');
      } else {
        show(first.state === 'wrong' ? 'wrong' : 'unsent', (first.complaints ?? []).join(' '));
      }
      return first === undefined;
    },
  };
}

/** Enters, and says on the way what becomes of it; returns the outcomes, or null where not sent. */
export async function enterAndTell(to, all, line = status()) {
  line.sending();
  try {
    const outcomes = await enter(to, all);
    line.of(outcomes);
    return outcomes;
  } catch (refused) {
    line.unsent(refused.message);
    return null;
  }
}
