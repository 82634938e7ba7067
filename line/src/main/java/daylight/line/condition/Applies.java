package daylight.line.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Which findings of its kind a row is for.
 *
 * @param word the particular it asks for by the catalogue's name; null for none
 * @param is the texts of that particular it is for, in lower case; empty where none is asked for
 * @param without a particular by which it is for no finding that has it, such as what holds water
 *     up; null for none
 * @param bores the inside diameters it is for; null for all
 */
public record Applies(
    @Nullable String word, List<String> is, @Nullable String without, @Nullable Bores bores) {
  /** To every finding of the kind. */
  public static final Applies ALWAYS = new Applies(null, List.of(), null, null);

  /** Two bores nearer to each other than this, in metres, are one. */
  private static final double SAME_BORE = 1e-6;

  public Applies {
    is = List.copyOf(is);
    if ((word == null) != is.isEmpty()) {
      throw new IllegalArgumentException("a word needs texts, and texts need a word");
    }
  }

  /**
   * A range of inside diameters.
   *
   * @param from the smallest, metres
   * @param to the largest, metres; infinite for any
   * @param closed whether {@code to} itself belongs to it
   */
  public record Bores(double from, double to, boolean closed) {
    public Bores {
      if (!(from >= 0) || !(to >= from)) {
        throw new IllegalArgumentException("bores must rise from 0, were " + from + ", " + to);
      }
    }

    boolean holds(double bore) {
      return bore >= from - SAME_BORE && (closed ? bore <= to + SAME_BORE : bore < to - SAME_BORE);
    }

    /** Whether more than one end is shared; of a shared end the earlier row holds. */
    boolean overlaps(Bores other) {
      return from < other.to - SAME_BORE && other.from < to - SAME_BORE;
    }
  }

  /** Whether what is known of a finding shows that the row is not for it. */
  boolean excludes(Seen seen) {
    String asked = word;
    String text = asked == null ? null : seen.words().get(asked);
    boolean otherWord = text != null && !is.contains(plain(text));
    Bores range = bores;
    Double bore = seen.bore();
    return otherWord || barred(seen) || (range != null && bore != null && !range.holds(bore));
  }

  /** Whether a finding has the particular that it must not have. */
  boolean barred(Seen seen) {
    String not = without;
    return not != null && seen.words().containsKey(not);
  }

  /** What must be known of a finding before the row can be said to be for it. */
  List<Lack> lacks(Seen seen) {
    List<Lack> lacks = new ArrayList<>();
    String asked = word;
    if (asked != null && !seen.words().containsKey(asked)) {
      lacks.add(new Lack(Lack.Why.WORD, asked, is));
    }
    if (bores != null && seen.bore() == null) {
      lacks.add(Lack.BORE);
    }
    return lacks;
  }

  /** Whether some finding could be meant by both. */
  public boolean overlaps(Applies other) {
    boolean apart =
        word != null && word.equals(other.word) && is.stream().noneMatch(other.is::contains);
    boolean boresApart = bores != null && other.bores != null && !bores.overlaps(other.bores);
    return !apart && !boresApart;
  }

  private static String plain(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
