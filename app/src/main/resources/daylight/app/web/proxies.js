// Says how far the copies are that are being made for the browser. Without this module the page
// says so as of when it was loaded.

const pause = 1000;

async function tell(line) {
  const last = line.textContent;
  try {
    const reply = await fetch(line.dataset.proxy, { cache: 'no-store' });
    if (!reply.ok) return;
    const text = await reply.text();
    if (text !== last) line.textContent = text;
    // Accepted, not done; what is ready or failed stays so.
    if (reply.status === 202) setTimeout(() => tell(line), pause);
  } catch {
    setTimeout(() => tell(line), 5 * pause);
  }
}

for (const line of document.querySelectorAll('[data-proxy]')) tell(line);
