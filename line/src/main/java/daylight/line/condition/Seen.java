package daylight.line.condition;

import daylight.line.book.Finding;
import daylight.line.book.Priors;
import daylight.line.measure.Reading;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What a finding is graded by.
 *
 * @param kind id of its kind
 * @param sizes its quantities by the catalogue's names, SI units, with their doubt where one is
 *     known
 * @param words its other particulars by the catalogue's names
 * @param bore inside diameter of the pipe in metres; null when not known
 */
public record Seen(
    String kind,
    SortedMap<String, Reading> sizes,
    SortedMap<String, String> words,
    @Nullable Double bore) {
  private static final String DEPTH = "depth";

  public Seen {
    sizes = Collections.unmodifiableSortedMap(new TreeMap<>(sizes));
    words = Collections.unmodifiableSortedMap(new TreeMap<>(words));
    if (bore != null && !(bore > 0)) {
      throw new IllegalArgumentException("bore must be above 0, was " + bore);
    }
  }

  /** The same where a depth of water of unsaid doubt is as good as depths usually are. */
  public Seen withUsualDoubt(Priors priors) {
    Reading depth = sizes.get(DEPTH);
    if (depth == null || depth.sd() != null) {
      return this;
    }
    SortedMap<String, Reading> all = new TreeMap<>(sizes);
    all.put(DEPTH, depth.withSd(priors.sd(Priors.Kind.WATER_DEPTH, depth.value())));
    return new Seen(kind, all, words, bore);
  }

  /** A finding by its kind, sizes and particulars, in a pipe of that bore. */
  public static Seen of(
      String kind, Map<String, Reading> sizes, Map<String, String> words, @Nullable Double bore) {
    return new Seen(kind, new TreeMap<>(sizes), new TreeMap<>(words), bore);
  }

  /** A finding of a book in a pipe of that bore. */
  public static Seen of(Finding finding, @Nullable Double bore) {
    return new Seen(finding.kind(), finding.quantities(), finding.words(), bore);
  }
}
