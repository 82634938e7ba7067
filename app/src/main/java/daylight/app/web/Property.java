package daylight.app.web;

import daylight.app.Job;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/** One book, answered anew whenever its files are no longer what they were. */
final class Property {
  private final String name;
  private final Opened opened;
  private final BiFunction<Path, Job.Settings, Job.Outcome> job;
  private final @Nullable Proxies proxies;
  private @Nullable Reading last;
  private @Nullable Stamp stamp;

  Property(String name, Opened opened, BiFunction<Path, Job.Settings, Job.Outcome> job) {
    this(name, opened, job, null);
  }

  /**
   * The same.
   *
   * @param proxies makes copies of what browsers cannot play; null for none
   */
  Property(
      String name,
      Opened opened,
      BiFunction<Path, Job.Settings, Job.Outcome> job,
      @Nullable Proxies proxies) {
    this.proxies = proxies;
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

  /** What the book says now. */
  synchronized Reading read() {
    Stamp now = Stamp.of(opened, last);
    Reading known = last;
    if (known != null && now.equals(stamp)) {
      return known;
    }
    Reading fresh = answered();
    last = fresh;
    // A book newly read may name files that the stamp before did not look at.
    stamp = Stamp.of(opened, fresh);
    return fresh;
  }

  @SuppressWarnings("IllegalCatch")
  private Reading answered() {
    try {
      return switch (job.apply(opened.file(), opened.settings())) {
        case Job.Outcome.Answered answered -> new Reading.Answered(answered);
        case Job.Outcome.Refused refused -> new Reading.Refused(refused);
      };
    } catch (RuntimeException fault) {
      // A fault with one book must not take the others along.
      return new Reading.Failed(fault);
    }
  }
}
