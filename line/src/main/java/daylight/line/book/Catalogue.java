package daylight.line.book;

import daylight.line.measure.Dimension;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The kinds of finding, in plain trade words: data, not code. A new kind is one row and its words.
 */
public final class Catalogue {
  private final Map<String, Kind> kinds;

  /** Refuses two kinds of one id. */
  public Catalogue(List<Kind> kinds) {
    Map<String, Kind> byId = new LinkedHashMap<>();
    for (Kind kind : kinds) {
      if (byId.put(kind.id(), kind) != null) {
        throw new IllegalArgumentException("two kinds of finding with the id " + kind.id());
      }
    }
    this.kinds = Collections.unmodifiableMap(byId);
  }

  /** The kind of that id; empty where the catalogue does not know it. */
  public Optional<Kind> find(String id) {
    return Optional.ofNullable(kinds.get(id));
  }

  /** Every kind, in the catalogue's order. */
  public Collection<Kind> kinds() {
    return kinds.values();
  }

  /** What a finding bears on. */
  public enum Bears {
    /** The pipe's own strength and tightness. */
    STRUCTURE,
    /** What is in its way. */
    OPERATION,
    /** Neither: a fact of the pipe. */
    FEATURE
  }

  /** Who may be hurt, worst first. */
  public enum Hazard {
    /** Stop, do not cut or jet, no flame, get out, call the utility. */
    STOP,
    /** Sewage, gas or collapse: take care. */
    CARE,
    NONE
  }

  /**
   * One kind of finding.
   *
   * @param id its id for good
   * @param bears what it bears on
   * @param hazard who may be hurt
   * @param stretch whether it can run from one place to another
   * @param quantities its sizes by name, with what each is a size of
   * @param words its other particulars by name
   * @param says what a particular may say, where that is not free
   * @param symbol the id of its symbol on drawings
   * @param letters EN 13508-2 letters, unchecked against a bought copy and off by default; null for
   *     none
   */
  public record Kind(
      String id,
      Bears bears,
      Hazard hazard,
      boolean stretch,
      Map<String, Dimension> quantities,
      List<String> words,
      Map<String, List<String>> says,
      String symbol,
      @Nullable String letters) {
    public Kind {
      quantities = Collections.unmodifiableMap(new LinkedHashMap<>(quantities));
      words = List.copyOf(words);
      says = Map.copyOf(says);
    }

    /** One whose particulars may say anything. */
    public Kind(
        String id,
        Bears bears,
        Hazard hazard,
        boolean stretch,
        Map<String, Dimension> quantities,
        List<String> words,
        String symbol,
        @Nullable String letters) {
      this(id, bears, hazard, stretch, quantities, words, Map.of(), symbol, letters);
    }
  }
}
