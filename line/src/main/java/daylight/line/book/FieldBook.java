package daylight.line.book;

import java.util.List;

/**
 * What was measured at one site: plain values, never altered by computing, with all its visits.
 *
 * @param id the identity of the book
 * @param units what bare numbers meant where it was written; every value here is already SI
 * @param site the ground and the pipes as people know them
 * @param visits in the order in which they happened
 */
public record FieldBook(Id id, Units units, Site site, List<Visit> visits) implements Entry {
  public FieldBook {
    visits = List.copyOf(visits);
  }
}
