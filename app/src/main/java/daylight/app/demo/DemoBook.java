package daylight.app.demo;

import daylight.archive.FieldBookReader;
import daylight.line.book.FieldBook;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The field books of the invented properties. Some readings in them are for the films alone, which
 * could not be made without: they are not handed out, so that the answer leans on the footage.
 */
public final class DemoBook {
  private static final String FOR_THE_FILM = "# film";

  private DemoBook() {}

  /** The book as its crew would have written it, of one of the invented properties. */
  public static byte[] handedOut(String property) throws IOException {
    return new String(whole(property), StandardCharsets.UTF_8)
        .lines()
        .filter(line -> !line.endsWith(FOR_THE_FILM))
        .map(line -> line + "\n")
        .collect(Collectors.joining())
        .getBytes(StandardCharsets.UTF_8);
  }

  /** The book with all that its films are made from. */
  public static FieldBook filmed(String property) throws IOException {
    return Objects.requireNonNull(
        FieldBookReader.read(property + ".yaml", whole(property), null).book(), property);
  }

  private static byte[] whole(String property) throws IOException {
    try (InputStream in = DemoBook.class.getResourceAsStream(property + ".yaml")) {
      return Objects.requireNonNull(in, property).readAllBytes();
    }
  }
}
