package daylight.archive;

import daylight.line.measure.ComplaintCode;
import daylight.line.measure.Gravity;
import java.util.Locale;

/** What can be wrong with a field book as a file, beyond its form. */
public enum FileTrouble implements ComplaintCode {
  /** The first key is not the book's version: the versions known. */
  VERSION_NOT_FIRST,
  /** A version that is not known: the text, the versions known. */
  VERSION_UNKNOWN,
  /** Not a time zone: the text. */
  NOT_A_ZONE,
  /** Not a moment as in 10:42, 2026-04-18 10:42 or with an offset: the text. */
  NOT_A_TIME,
  /** A time of day in a visit without a date: the text. */
  TIME_WITHOUT_DATE,
  /** A local time in a book that names no zone; taken as UTC: the text. */
  TIME_WITHOUT_ZONE(Gravity.DOUBT),
  /** A local time that the clocks showed twice: the text, both readings with their offsets. */
  TIME_TWICE,
  /** A local time that the clocks skipped: the text. */
  TIME_SKIPPED,
  /** A name that leads out of the book's folder: the name. */
  FILE_OUTSIDE,
  /** A file that is not there: the name. */
  FILE_MISSING(Gravity.DOUBT),
  /** A file whose digest is not the one recorded: the name, the digest found. */
  FILE_CHANGED,
  /** Not four whole pixels, left, top, width and height: the text. */
  NOT_A_REGION,
  /** Not a SHA-256 digest: the text. */
  NOT_A_DIGEST,
  /** Both {@code visit} and {@code visits}. */
  VISIT_TWICE,
  /** Something of a single pass stands in the visit although it has several: the key. */
  WHICH_PASS,
  /** What was met on a push but no pass, in a book with its own pipes. */
  PASS_NEEDED,
  /** Not two landmarks of the book, as in A-B: the text. */
  NOT_A_WALL,
  /** A measurement in plan that is none of those known. */
  WHICH_TIE,
  /** A measurement of height that is none of those known. */
  WHICH_LEVEL,
  /** A finding with no place or more than one. */
  WHICH_PLACE,
  /** Two keys that exclude each other, or of which one is needed: the keys. */
  ONE_OF,
  /** A year has twelve months: how many were found. */
  TWELVE_MONTHS;

  private final Gravity gravity;

  FileTrouble() {
    this(Gravity.STOPS);
  }

  FileTrouble(Gravity gravity) {
    this.gravity = gravity;
  }

  @Override
  public String key() {
    return "book-file." + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Gravity gravity() {
    return gravity;
  }
}
