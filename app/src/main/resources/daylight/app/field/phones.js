// Keeps the page of the phones true while it stands open: a code that was used or ran out goes, a
// phone that joined comes. Nothing is replaced while somebody is at it.

const EVERY = 3000;
const LIVE = ['door', 'code', 'joined'];
const text = (one) => one?.outerHTML ?? '';

async function look() {
  try {
    const reply = await fetch('/phones', { headers: { Accept: 'text/html' } });
    if (!reply.ok) return;
    const fresh = new DOMParser().parseFromString(await reply.text(), 'text/html');
    for (const id of LIVE) {
      const now = document.getElementById(id);
      const then = fresh.getElementById(id);
      if (now && then && text(now) !== text(then) && !now.contains(document.activeElement)) {
        now.replaceWith(document.adoptNode(then));
      } else if (!now !== !then) {
        location.reload();
      }
    }
  } catch {
    // The program has ended; the page stays as it was.
  }
}

setInterval(() => document.visibilityState === 'visible' && look(), EVERY);
