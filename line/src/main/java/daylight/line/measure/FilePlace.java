package daylight.line.measure;

import org.jspecify.annotations.Nullable;

/**
 * Where in a field book a complaint points.
 *
 * @param file the file as the person named it, or null where the book did not come from a file
 * @param line the line, counted from 1; 0 when unknown
 * @param column the column, counted from 1; 0 when unknown
 * @param path where in the book, such as {@code visits[0].locates[3].depth}, or an entry's label
 */
public record FilePlace(@Nullable String file, int line, int column, String path) {
  public FilePlace {
    if (line < 0) {
      throw new IllegalArgumentException("line must not be negative, was " + line);
    }
    if (column < 0) {
      throw new IllegalArgumentException("column must not be negative, was " + column);
    }
  }

  /** A place in the book whose position in a file is not known. */
  public static FilePlace at(String path) {
    return new FilePlace(null, 0, 0, path);
  }

  /** The same place with its position in a file. */
  public FilePlace withPosition(@Nullable String inFile, int atLine, int atColumn) {
    return new FilePlace(inFile, atLine, atColumn, path);
  }
}
