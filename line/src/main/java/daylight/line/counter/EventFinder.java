package daylight.line.counter;

import daylight.line.book.Finding.Moving;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds the events of one track. */
final class EventFinder {
  /** Nobody pushes or pulls faster, metres a second; common practice, no source. */
  private static final double FASTEST = 2.5;

  /** So many steps may a reading leap by reading it late and by flicker. */
  private static final double FLICKER = 2.5;

  /** One step, as it is told from two. */
  private static final double ONE_STEP = 1.25;

  /** Going back less than so many steps is flicker, a step to either side. */
  private static final double BACK_STEPS = 2.25;

  /** Going back less than this is the cable easing, metres; common practice, no source. */
  private static final double BACK = 0.02;

  /** Who looks at something rests at least so long, seconds; common practice, no source. */
  private static final double SHORTEST_REST = 1;

  /** Slower than this is resting, metres a second; common practice, no source. */
  private static final double SLOWEST = 0.02;

  /** A coarse counter rests when it stays so many times as long as it usually does. */
  private static final double LONG_STAY = 4;

  /** So much of the time a resting counter shows one reading. */
  private static final double STILL = 0.75;

  /** A counter that rests between two digits shows either; that takes so many times as long. */
  private static final double FLICKERING = 2.5;

  /** Readings this near to each other are one, metres. */
  private static final double SAME = 0.005;

  private final List<Track.Sample> samples;
  private final double step;
  private final List<Events.Stretch> stretches = new ArrayList<>();
  private final List<Events.Reversal> reversals = new ArrayList<>();

  EventFinder(List<Track.Sample> samples, double step) {
    this.samples = samples;
    this.step = step;
  }

  /**
   * Samples of one reading.
   *
   * @param broken whether nothing is known just before it
   */
  private record Stay(double from, double to, double counter, boolean broken) {}

  /** A rest from one stay to another, both counted. */
  private record Rest(int first, int last, Events.Rested told) {}

  Events found() {
    List<Stay> stays = stays();
    double rest = shortestRest(stays);
    List<Stay> part = new ArrayList<>();
    for (Stay stay : stays) {
      if (!part.isEmpty()) {
        Stay before = part.getLast();
        double most = FASTEST * (stay.from() - before.to()) + FLICKER * step + SAME;
        if (Math.abs(stay.counter() - before.counter()) > most) {
          tell(part, rest);
          part.clear();
          stretches.add(
              new Events.SetAnew(before.to(), stay.from(), before.counter(), stay.counter()));
        } else if (stay.broken()) {
          stretches.add(new Events.Gap(before.to(), stay.from(), before.counter(), stay.counter()));
        }
      }
      part.add(stay);
    }
    tell(part, rest);
    edges(stays);
    stretches.sort(Comparator.comparingDouble(Events.Stretch::from));
    return new Events(stretches, reversals);
  }

  private List<Stay> stays() {
    List<Stay> stays = new ArrayList<>();
    boolean broken = false;
    for (Track.Sample sample : samples) {
      if (sample.state() == Track.State.UNKNOWN) {
        broken = true;
        continue;
      }
      Stay last = stays.isEmpty() ? null : stays.getLast();
      if (last != null && !broken && Math.abs(last.counter() - sample.counter()) < tiny()) {
        stays.removeLast();
        stays.add(new Stay(last.from(), sample.seconds(), last.counter(), last.broken()));
      } else {
        stays.add(new Stay(sample.seconds(), sample.seconds(), sample.counter(), broken));
      }
      broken = false;
    }
    return stays;
  }

  private double tiny() {
    return step > 0 ? Math.min(SAME, step / 4) : SAME;
  }

  /** What is not known before the first reading and after the last. */
  private void edges(List<Stay> stays) {
    if (samples.isEmpty()) {
      return;
    }
    double first = samples.getFirst().seconds();
    double last = samples.getLast().seconds();
    if (stays.isEmpty()) {
      stretches.add(new Events.Gap(first, last, null, null));
      return;
    }
    Stay begin = stays.getFirst();
    Stay end = stays.getLast();
    if (begin.from() > first) {
      stretches.add(new Events.Gap(first, begin.from(), null, begin.counter()));
    }
    if (end.to() < last) {
      stretches.add(new Events.Gap(end.to(), last, end.counter(), null));
    }
  }

  private double shortestRest(List<Stay> stays) {
    if (step == 0) {
      return SHORTEST_REST;
    }
    List<Double> lasting = lasting(stays);
    if (lasting.isEmpty()) {
      return SHORTEST_REST;
    }
    lasting.sort(Comparator.naturalOrder());
    double usual = lasting.get(lasting.size() / 2);
    return Math.max(SHORTEST_REST, Math.min(step / SLOWEST, LONG_STAY * usual));
  }

  /** How long a step lasted, each time that two were gone: flicker goes only one. */
  private List<Double> lasting(List<Stay> stays) {
    List<Double> lasting = new ArrayList<>();
    Stay from = stays.isEmpty() ? null : stays.getFirst();
    for (Stay stay : stays) {
      double gone = from == null ? 0 : Math.abs(stay.counter() - from.counter()) / step;
      if (from == null || stay.broken()) {
        from = stay;
      } else if (gone > ONE_STEP) {
        lasting.add((stay.from() - from.from()) / gone);
        from = stay;
      }
    }
    return lasting;
  }

  /** Tells of stays between which the counter was not set. */
  private void tell(List<Stay> part, double shortest) {
    if (part.isEmpty()) {
      return;
    }
    List<Rest> rests = rests(part, shortest);
    rests.forEach(rest -> stretches.add(rest.told()));
    List<Integer> turns = new ArrayList<>();
    int way = turns(part, turns);
    for (int i = 0; i < turns.size(); i++) {
      reversals.add(reversal(part, turns.get(i), rests, way * (i % 2 == 0 ? -1 : 1)));
    }
    int at = 0;
    Rest behind = null;
    for (Rest rest : rests) {
      runs(part, at, rest.first(), behind, rest, turns, way);
      at = rest.last();
      behind = rest;
    }
    runs(part, at, part.size() - 1, behind, null, turns, way);
  }

  private Events.Reversal reversal(List<Stay> part, int turn, List<Rest> rests, int way) {
    Moving then = way > 0 ? Moving.PUSHING : Moving.PULLING;
    Stay stay = part.get(turn);
    for (Rest rest : rests) {
      if (rest.first() <= turn && turn <= rest.last()) {
        double middle = (rest.told().from() + rest.told().to()) / 2;
        return new Events.Reversal(middle, rest.told().counter(), then);
      }
    }
    return new Events.Reversal((stay.from() + stay.to()) / 2, stay.counter(), then);
  }

  private double back() {
    return Math.max(BACK, BACK_STEPS * step);
  }

  /**
   * The stays at which the counter turned; gives the way it first went: 1, −1, or 0 for neither.
   */
  private int turns(List<Stay> part, List<Integer> turns) {
    int first = 0;
    int way = 0;
    int low = 0;
    int high = 0;
    for (int i = 1; i < part.size(); i++) {
      double here = part.get(i).counter();
      low = here < part.get(low).counter() ? i : low;
      high = here > part.get(high).counter() ? i : high;
      boolean up = here - part.get(low).counter() > back();
      boolean down = part.get(high).counter() - here > back();
      int now = up && way <= 0 ? 1 : down && way >= 0 ? -1 : 0;
      if (now != 0) {
        if (way == 0) {
          first = now;
        } else {
          turns.add(now > 0 ? low : high);
        }
        way = now;
        low = i;
        high = i;
      }
    }
    return first;
  }

  private List<Rest> rests(List<Stay> part, double shortest) {
    List<Rest> rests = new ArrayList<>();
    int i = 0;
    while (i < part.size()) {
      Rest rest = rest(part, i, shortest);
      if (rest == null) {
        i++;
      } else {
        rests.add(rest);
        i = rest.last() + 1;
      }
    }
    return rests;
  }

  /** The rest whose first stay this is; null for none. */
  private @Nullable Rest rest(List<Stay> part, int first, double shortest) {
    double counter = part.get(first).counter();
    int last = first;
    double at = 0;
    for (int i = first; i < part.size() && (i == first || !part.get(i).broken()); i++) {
      Stay stay = part.get(i);
      if (Math.abs(stay.counter() - counter) < tiny()) {
        last = i;
      } else if (Math.abs(stay.counter() - counter) > ONE_STEP * step
          || stay.to() - stay.from() >= shortest) {
        break;
      }
    }
    for (int i = first; i <= last; i++) {
      Stay stay = part.get(i);
      boolean here = Math.abs(stay.counter() - counter) < tiny();
      at += here ? (i < last ? part.get(i + 1).from() : stay.to()) - stay.from() : 0;
    }
    double from = part.get(first).from();
    double to = part.get(last).to();
    boolean still = at >= STILL * (to - from) || to - from >= FLICKERING * shortest;
    return to - from >= shortest && still
        ? new Rest(first, last, new Events.Rested(from, to, counter))
        : null;
  }

  /** Tells how the camera ran from one stay to another, neither of them within a rest but at it. */
  private void runs(
      List<Stay> part,
      int first,
      int last,
      @Nullable Rest behind,
      @Nullable Rest ahead,
      List<Integer> turns,
      int firstWay) {
    int at = first;
    for (int i = first + 1; i <= last; i++) {
      boolean cut = turns.contains(i) && i < last;
      boolean gap = part.get(i).broken();
      if (gap) {
        run(part, at, i - 1, at == first ? behind : null, null, turns, firstWay);
        at = i;
      } else if (cut) {
        run(part, at, i, at == first ? behind : null, null, turns, firstWay);
        at = i;
      }
    }
    run(part, at, last, at == first ? behind : null, ahead, turns, firstWay);
  }

  private void run(
      List<Stay> part,
      int first,
      int last,
      @Nullable Rest behind,
      @Nullable Rest ahead,
      List<Integer> turns,
      int firstWay) {
    double before = part.get(first).counter();
    double after = part.get(last).counter();
    int way = firstWay * (turns.stream().filter(turn -> turn <= first).count() % 2 == 0 ? 1 : -1);
    if (Math.abs(after - before) < tiny() || (after - before) * way <= 0) {
      // No more than flicker or easing, of which nobody can say that the camera ran.
      return;
    }
    double from = behind == null ? part.get(first).from() : behind.told().to();
    double to = ahead != null ? ahead.told().from() : part.get(last).to();
    if (ahead == null && last < part.size() - 1 && !part.get(last + 1).broken()) {
      to = part.get(last).from();
    }
    stretches.add(
        new Events.Ran(from, to, way > 0 ? Moving.PUSHING : Moving.PULLING, before, after));
  }
}
