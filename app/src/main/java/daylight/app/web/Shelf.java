package daylight.app.web;

import daylight.app.Job;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/** The books that can be looked at; more may be put there while they are being looked at. */
public final class Shelf {
  private final List<Property> properties;
  private final @Nullable Proxies proxies;
  private final Semaphore turns;

  Shelf(List<Property> properties, @Nullable Proxies proxies, Semaphore turns) {
    this.properties = new CopyOnWriteArrayList<>(properties);
    this.proxies = proxies;
    this.turns = turns;
  }

  List<Property> all() {
    return properties;
  }

  int size() {
    return properties.size();
  }

  /** As what the books are opened: all that were named are opened alike. */
  Job.Settings settings() {
    return properties.isEmpty() ? Job.Settings.USUAL : properties.getFirst().settings();
  }

  /** A book by its word in addresses, with the visit judged that the word names, too. */
  Optional<Property> find(String name) {
    int apart = name.lastIndexOf(VisitChoice.APART);
    return apart < 0
        ? named(name)
        : named(name.substring(0, apart))
            .flatMap(book -> judging(book, name.substring(apart + VisitChoice.APART.length())));
  }

  private Optional<Property> named(String name) {
    return properties.stream().filter(one -> one.name().equals(name)).findFirst();
  }

  /** Until the visits of a book are known, or while it must be mended, the book stands for them. */
  private static Optional<Property> judging(Property book, String visit) {
    return book.soon() instanceof Reading.Answered answered
        ? book.judging(visit, answered)
        : Optional.of(book);
  }

  /** Whether there is a book on it that was named, beside those that an archive put there. */
  public boolean hasNamed() {
    return properties.stream().anyMatch(one -> one.home() == null);
  }

  /**
   * The address of the page that answers a book; the book is put on the shelf where it is not there
   * yet.
   *
   * @param name its word in addresses; letters, digits and hyphens
   * @param visit label of the visit to judge; null takes the last
   * @param home where its page leads back to
   */
  public synchronized String address(String name, Path book, @Nullable String visit, Home home) {
    Opened opened = new Opened(book, Job.Settings.USUAL.of(visit));
    Optional<Property> known = named(name);
    if (known.isEmpty() || !known.get().isOf(opened) || !home.equals(known.get().home())) {
      known.ifPresent(Property::end);
      known.ifPresent(properties::remove);
      properties.add(new Property(name, opened, Job::answer, proxies, turns, home));
    }
    return named(name).orElseThrow().address("");
  }
}
