// The recordings on the page: they follow the cursor while they rest, and lead it while they play
// or while somebody moves in them.

const SAME = 0.06; // seconds

export class Film {
  /** What a recording shows is told: shows(row, bridged), row −1 where its counter is not known. */
  constructor(table, shows) {
    this.table = table;
    this.shows = shows;
    this.reels = table.rides
      .map((ride) => ({ ride, video: document.querySelector(`video[data-media="${ride.media}"]`) }))
      .filter(({ video }) => video !== null);
    for (const reel of this.reels) this.listen(reel);
  }

  get playing() {
    return this.reels.some(({ video }) => !video.paused && !video.ended);
  }

  listen(reel) {
    const { video } = reel;
    const tell = (seconds) => {
      const { row, bridged } = this.table.shown(reel.ride, seconds);
      this.last = reel;
      this.shows(row, bridged);
    };
    const each = (_, frame) => {
      if (!video.paused) tell(frame.mediaTime);
      if (!video.paused && !video.ended) video.requestVideoFrameCallback(each);
    };
    video.addEventListener('play', () => {
      for (const other of this.reels) if (other !== reel) other.video.pause();
      if (video.requestVideoFrameCallback) video.requestVideoFrameCallback(each);
    });
    video.addEventListener('timeupdate', () => {
      if (!video.paused && !video.requestVideoFrameCallback) tell(video.currentTime);
    });
    video.addEventListener('seeked', () => {
      const own = reel.asked !== undefined && Math.abs(video.currentTime - reel.asked) < SAME;
      if (reel.next !== undefined) this.seek(reel, reel.next);
      else if (!own) tell(video.currentTime);
    });
  }

  /** Takes the recording to a place; says whether there is one that shows it. */
  follow(row) {
    const known = this.reels
      .map((reel) => ({ reel, moment: this.table.moment(reel.ride, row) }))
      .filter(({ moment }) => moment !== null);
    const best = known.find(({ reel }) => reel === this.last) ?? known[0];
    if (best === undefined) return null;
    this.last = best.reel;
    this.seek(best.reel, best.moment.seconds);
    return best.moment;
  }

  /** Somebody else takes a recording to a moment, of which the cursor knows the place already. */
  expect(media, seconds) {
    const reel = this.reels.find(({ ride }) => ride.media === media);
    if (reel === undefined) return;
    reel.asked = seconds;
    delete reel.next;
    this.last = reel;
  }

  /** One search at a time: of those asked for meanwhile, the last one follows. */
  seek(reel, seconds) {
    const { video } = reel;
    delete reel.next;
    if (video.readyState < HTMLMediaElement.HAVE_METADATA) {
      const first = reel.waits === undefined;
      reel.waits = seconds;
      if (first) {
        video.addEventListener('loadedmetadata', () => this.seek(reel, reel.waits), { once: true });
      }
    } else if (video.seeking) {
      reel.next = seconds;
    } else {
      reel.asked = seconds;
      video.currentTime = seconds;
    }
  }
}
