// A picture leads to its moment in the recording on the same page. Without this module the link
// opens the recording itself at that moment.

const calm = matchMedia('(prefers-reduced-motion: reduce)');

const playerOf = (link) =>
  [...document.querySelectorAll('video[data-media]')].find(
    (video) => video.dataset.media === link.dataset.media,
  );

function seek(video, seconds) {
  video.pause();
  if (video.readyState >= HTMLMediaElement.HAVE_METADATA) {
    video.currentTime = seconds;
  } else {
    video.addEventListener('loadedmetadata', () => (video.currentTime = seconds), { once: true });
    video.load();
  }
}

document.addEventListener('click', (event) => {
  const link = event.target.closest('a[data-media]');
  const video = link && playerOf(link);
  if (!video || event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return;
  event.preventDefault();
  seek(video, Number(link.dataset.seconds));
  const figure = video.closest('figure');
  figure.querySelector('.now').textContent = link.dataset.now;
  const back = figure.querySelector('.back');
  back.href = '#' + link.closest('[id]').id;
  back.hidden = false;
  video.focus({ preventScroll: true });
  video.scrollIntoView({ block: 'nearest', behavior: calm.matches ? 'auto' : 'smooth' });
});

for (const video of document.querySelectorAll('video[data-media]')) {
  // The attribute alone does not hold in every browser.
  video.muted = true;
  const cannot = () => {
    video.hidden = true;
    video.closest('figure').querySelector('.cannot').hidden = false;
  };
  video.addEventListener('error', cannot);
  if (video.error) cannot();
}
