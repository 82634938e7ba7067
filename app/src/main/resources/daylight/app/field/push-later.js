// The book has no finding without a place. One whose distance is still to come stands, with the time
// of the clock, as a line of the remark of its pass, from which this page reads it again.

const LINE = /^no distance yet, (\d\d:\d\d:\d\d): (.+) \(([0-9a-f-]{36})\)$/;
const clean = (text) => text.replace(/[;\n()]/g, ',').trim();

/** The time of this device's clock. */
export const clock = () => new Date().toTimeString().slice(0, 8);

export function line(entry, time, keys) {
  const told = Object.entries(keys)
    .filter(([, value]) => typeof value === 'string')
    .map(([key, value]) => `${key} ${clean(value)}`);
  return `no distance yet, ${time}: ${told.join('; ')} (${entry})`;
}

/** What a remark holds of them: [{entry, time, keys}]. */
export function drafts(remark) {
  return (remark ?? '').split('\n').flatMap((one) => {
    const found = LINE.exec(one);
    if (found === null) {
      return [];
    }
    const keys = Object.fromEntries(
      found[2].split('; ').map((part) => [part.slice(0, part.indexOf(' ')), part.slice(part.indexOf(' ') + 1)]),
    );
    return [{ entry: found[3], time: found[1], keys }];
  });
}

/** A remark with the line of that finding put in its place, added, or (null) taken out. */
export function remarkWith(remark, entry, text) {
  const lines = (remark ?? '').split('\n').filter((one) => one !== '');
  const at = lines.findIndex((one) => one.endsWith(`(${entry})`));
  if (at < 0 && text !== null) {
    lines.push(text);
  } else if (at >= 0) {
    lines.splice(at, 1, ...(text === null ? [] : [text]));
  }
  return lines.length === 0 ? undefined : lines.join('\n');
}
