// Says how far the looking at footage is, and loads the page again when it is over. Without this
// module the page says so as of when it was loaded, and nothing can be stopped.

const pause = 500;

async function tell(line) {
  try {
    const reply = await fetch(line.dataset.reading, { cache: 'no-store' });
    if (reply.status === 200) return location.reload();
    if (reply.status !== 202) return;
    const now = await reply.json();
    if (line.textContent !== now.says) line.textContent = now.says;
    const share = line.nextElementSibling;
    share.querySelector('progress').value = now.percent;
    share.querySelector('span').textContent = now.share;
    setTimeout(() => tell(line), pause);
  } catch {
    setTimeout(() => tell(line), 10 * pause);
  }
}

for (const line of document.querySelectorAll('[data-reading]')) tell(line);

for (const button of document.querySelectorAll('button[data-order]')) {
  button.hidden = false;
  button.addEventListener('click', async () => {
    button.disabled = true;
    const reply = await fetch(button.dataset.order, { method: 'POST' }).catch(() => null);
    if (!reply?.ok) button.disabled = false;
    // What is being read tells by itself when it is over.
    else if (!document.querySelector('[data-reading]')) location.reload();
  });
}
