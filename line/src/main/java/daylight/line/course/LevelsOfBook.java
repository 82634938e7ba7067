package daylight.line.course;

import daylight.line.book.Level;
import daylight.line.survey.BookLevels;

/** What the marks of a field book are called in its level network. */
final class LevelsOfBook {
  private LevelsOfBook() {}

  /** The name of a mark in the network. */
  static String name(String point, Level.Part part) {
    return BookLevels.name(point, part);
  }
}
