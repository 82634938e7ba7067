package daylight.line.book;

import daylight.line.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What a bare number means in this book, for each quantity; null where the book does not say, and
 * then a bare number of that quantity is a complaint.
 */
public record Units(
    @Nullable Unit distance, @Nullable Unit depth, @Nullable Unit bore, @Nullable Unit level) {
  /** A book that says nothing: every length carries its unit. */
  public static final Units UNSTATED = new Units(null, null, null, null);
}
