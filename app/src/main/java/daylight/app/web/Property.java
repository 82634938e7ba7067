package daylight.app.web;

import daylight.app.Job;
import daylight.app.Progress;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/** One book, answered anew whenever its files are no longer what they were. */
final class Property {
  private final String name;
  private final Opened opened;
  private final Answerer job;
  private final @Nullable Proxies proxies;
  private final Semaphore turns;
  private final @Nullable Home home;
  private final Map<VisitChoice, Property> judging = new ConcurrentHashMap<>();
  private @Nullable Answering current;

  /** Answers a book. */
  interface Answerer {
    /** What comes of it; told is how the looking at footage goes. */
    Job.Outcome answer(Path book, Job.Settings settings, Progress progress);
  }

  Property(String name, Opened opened, Answerer job) {
    this(name, opened, job, null, new Semaphore(1));
  }

  /**
   * The same.
   *
   * @param proxies makes copies of what browsers cannot play; null for none
   * @param turns of those who look at footage
   */
  Property(String name, Opened opened, Answerer job, @Nullable Proxies proxies, Semaphore turns) {
    this(name, opened, job, proxies, turns, null);
  }

  /**
   * The same.
   *
   * @param home where it is opened from; null for a book that was named
   */
  Property(
      String name,
      Opened opened,
      Answerer job,
      @Nullable Proxies proxies,
      Semaphore turns,
      @Nullable Home home) {
    this.home = home;
    this.proxies = proxies;
    this.turns = turns;
    this.name = name;
    this.opened = opened;
    this.job = job;
  }

  /**
   * A word for an address: from the book's file, or from its folder where the file says nothing.
   */
  static String nameOf(Path file) {
    String own = withoutEnding(file);
    Path folder = file.getParent();
    String called = own.equals("field-book") && folder != null ? lastOf(folder) : own;
    return word(called);
  }

  /** A word for an address, of letters, digits and single hyphens. */
  static String word(String called) {
    String plain =
        Normalizer.normalize(called, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    return plain.isEmpty() ? "book" : plain;
  }

  private static String withoutEnding(Path file) {
    String own = lastOf(file);
    int dot = own.lastIndexOf('.');
    return dot > 0 ? own.substring(0, dot) : own;
  }

  private static String lastOf(Path path) {
    Path last = path.getFileName();
    return last == null ? "" : last.toString();
  }

  /** Its word in addresses. */
  String name() {
    return name;
  }

  /** The address of one of its files, or of its page where the file has no name. */
  String address(String file) {
    return "/property/" + name + "/" + file;
  }

  /** Whether it answers this book in this way. */
  boolean isOf(Opened other) {
    return opened.equals(other);
  }

  /**
   * The same book with another of its visits judged, which has addresses of its own; empty where
   * nothing is called so.
   *
   * @param named the address word of the visit
   */
  Optional<Property> judging(String named, Reading.Answered answered) {
    return VisitChoice.of(answered.handout().book()).stream()
        .filter(one -> one.word().equals(named))
        .findFirst()
        .map(
            one ->
                judging.computeIfAbsent(
                    one,
                    visit ->
                        new Property(
                            name + VisitChoice.APART + visit.word(),
                            new Opened(opened.book(), opened.settings().of(visit.label())),
                            job,
                            proxies,
                            turns,
                            home)));
  }

  /** The page it is opened from; null where it is not opened from one. */
  @Nullable Home home() {
    return home;
  }

  /** The word that names of files begin with that are taken home. */
  String fileWord() {
    int apart = name.lastIndexOf(VisitChoice.APART);
    String visit = apart < 0 ? "" : name.substring(apart);
    return home == null ? name : word(home.name()) + visit;
  }

  /** What it is called where what its book says is not known. */
  String title() {
    return home == null ? name : home.name();
  }

  /** As what it is opened. */
  Job.Settings settings() {
    return opened.settings();
  }

  /** The file of its book. */
  Path file() {
    return opened.file();
  }

  /** The copy for the browser of a recording that it cannot play; empty where none is made. */
  Optional<Proxies.State> proxy(Recording recording) {
    return proxies == null || recording.playable()
        ? Optional.empty()
        : Optional.of(proxies.of(file(), recording));
  }

  /** What the book says now, as soon as it is known. */
  Reading read() {
    return answering().reading();
  }

  /** The same; null while footage is looked at that takes its time. */
  @Nullable Reading soon() {
    return answering().soon();
  }

  /** What is being done of it now; null where nothing is. */
  Answering.@Nullable Doing doing() {
    return answering().doing();
  }

  /** Whether it was answered without the counters that nobody waited for. */
  synchronized boolean isCut() {
    return current != null && current.isStopped();
  }

  /** Has counters no longer read. */
  void stop() {
    answering().stop();
  }

  /** Answers the book anew, whether its files changed or not. */
  synchronized void again() {
    if (current != null && current.isOver()) {
      current = null;
    }
  }

  private synchronized Answering answering() {
    Answering known = current;
    if (known != null && (!known.isOver() || known.isAsOf(opened))) {
      return known;
    }
    Answering fresh = Answering.begin(job, opened, turns);
    current = fresh;
    return fresh;
  }

  /** Has what is being done of it end as soon as it can. */
  void end() {
    judging.values().forEach(Property::end);
    synchronized (this) {
      if (current != null) {
        current.end();
      }
    }
  }

  /** Ends what is being done of it, and waits until nothing of it is left. */
  void close() {
    judging.values().forEach(Property::close);
    Answering known;
    synchronized (this) {
      known = current;
    }
    if (known != null) {
      known.close();
    }
  }
}
