package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.FieldBookReader;
import daylight.archive.ReadBook;
import daylight.line.measure.Complaint;
import daylight.line.measure.Gravity;
import daylight.line.measure.Shown;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Books of the corpus with bytes changed, lines moved and numbers made absurd: never an exception,
 * never long, and every complaint says where.
 */
class CorpusFuzzTest {
  private static final Duration LONGEST = Duration.ofSeconds(5);

  /** Complaints of the file as a whole have no line. */
  private static final Set<String> OF_THE_FILE = Set.of("form.empty");

  private static final List<String> ODD =
      List.of(
          "-1",
          "0",
          "1e300",
          "-0.0",
          "NaN",
          "99999999999999999999",
          "1e-300",
          "180°",
          "O1",
          "L1",
          "A",
          "~",
          "{}",
          "[]",
          "''",
          "\"",
          "'",
          "#",
          "&a",
          "*a",
          "!!int",
          "---",
          "\t",
          "\u00e9",
          "\u2028",
          "pumped",
          "backward",
          "3' 4 1/2\"",
          "10000 m",
          "0.0001 mm",
          "2026-02-30");

  private final List<byte[]> books =
      CorpusBook.all().stream().map(b -> b.text().getBytes(StandardCharsets.UTF_8)).toList();

  @TempDir private Path folder = Path.of("");

  @Test
  @Timeout(value = 10, unit = TimeUnit.MINUTES)
  void twoThousandChangedBooks() throws IOException {
    mutate(2_000, 41);
  }

  @Test
  @Tag("long")
  void aHundredThousandChangedBooks() throws IOException {
    mutate(100_000, 42);
  }

  private void mutate(int times, long seed) throws IOException {
    SplittableRandom dice = new SplittableRandom(seed);
    int answered = 0;
    for (int i = 0; i < times; i++) {
      byte[] book = changed(books.get(dice.nextInt(books.size())), dice);
      long begun = System.nanoTime();
      try {
        answered += survives(book) ? 1 : 0;
      } catch (RuntimeException | StackOverflowError e) {
        throw new AssertionError(described(i, book), e);
      }
      assertThat(Duration.ofNanos(System.nanoTime() - begun))
          .as(() -> described(-1, book))
          .isLessThan(LONGEST);
    }
    assertThat(answered).as("enough of them still reach the estimate").isGreaterThan(times / 20);
  }

  /** Whether the book was answered. */
  private boolean survives(byte[] book) throws IOException {
    ReadBook read = FieldBookReader.read("fuzz.yaml", book, null);
    assertThat(read.complaints()).allSatisfy(CorpusFuzzTest::saysWhere);
    Path file = Files.write(folder.resolve("fuzz.yaml"), book);
    return switch (Job.answer(file, Job.Settings.USUAL)) {
      case Job.Outcome.Refused(List<Complaint> complaints, Shown _) -> {
        assertThat(complaints).anyMatch(c -> c.code().gravity() == Gravity.STOPS);
        assertThat(complaints).allSatisfy(CorpusFuzzTest::saysWhere);
        yield false;
      }
      case Job.Outcome.Answered answered -> {
        // Setting a report takes longer than answering; one in four goes all the way.
        if (book.length % 4 == 0) {
          assertThat(answered.files().keySet()).contains("report.pdf", "strip.svg");
        }
        yield true;
      }
    };
  }

  private static void saysWhere(Complaint complaint) {
    if (!OF_THE_FILE.contains(complaint.code().key())) {
      assertThat(complaint.place().line()).as(complaint.toString()).isPositive();
      assertThat(complaint.place().column()).as(complaint.toString()).isPositive();
    }
  }

  private static byte[] changed(byte[] book, SplittableRandom dice) {
    byte[] now = book;
    for (int changes = dice.nextInt(1, 4); changes > 0; changes--) {
      now =
          switch (dice.nextInt(6)) {
            case 0 -> flipped(now, dice);
            case 1 -> shortened(now, dice);
            case 2 -> repeated(now, dice);
            case 3, 4 -> numberReplaced(now, dice);
            default -> wordReplaced(now, dice);
          };
    }
    return now;
  }

  private static byte[] flipped(byte[] book, SplittableRandom dice) {
    byte[] now = book.clone();
    if (now.length > 0) {
      now[dice.nextInt(now.length)] = (byte) dice.nextInt(256);
    }
    return now;
  }

  /** Cuts a short stretch out. */
  private static byte[] shortened(byte[] book, SplittableRandom dice) {
    int from = dice.nextInt(book.length + 1);
    int to = Math.min(book.length, from + dice.nextInt(1, 12));
    return spliced(book, from, to, "");
  }

  private static byte[] spliced(byte[] book, int from, int to, String instead) {
    byte[] middle = instead.getBytes(StandardCharsets.UTF_8);
    byte[] now = new byte[book.length - (to - from) + middle.length];
    System.arraycopy(book, 0, now, 0, from);
    System.arraycopy(middle, 0, now, from, middle.length);
    System.arraycopy(book, to, now, from + middle.length, book.length - to);
    return now;
  }

  /** Takes a line and puts it before another. */
  private static byte[] repeated(byte[] book, SplittableRandom dice) {
    String[] lines = new String(book, StandardCharsets.UTF_8).split("\n", -1);
    String line = lines[dice.nextInt(lines.length)];
    int at = dice.nextInt(lines.length);
    lines[at] = line + "\n" + lines[at];
    return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] numberReplaced(byte[] book, SplittableRandom dice) {
    String instead =
        dice.nextBoolean()
            ? Integer.toString(dice.nextInt(-100, 1000))
            : ODD.get(dice.nextInt(ODD.size()));
    return replaced(book, dice, instead, true);
  }

  private static byte[] wordReplaced(byte[] book, SplittableRandom dice) {
    return replaced(book, dice, ODD.get(dice.nextInt(ODD.size())), false);
  }

  private static byte[] replaced(
      byte[] book, SplittableRandom dice, String instead, boolean digits) {
    int from = dice.nextInt(book.length + 1);
    while (from < book.length && digits != Character.isDigit(book[from])) {
      from++;
    }
    int to = from;
    while (to < book.length && part(book[to], digits)) {
      to++;
    }
    return spliced(book, from, to, instead);
  }

  private static boolean part(byte character, boolean digits) {
    return digits
        ? Character.isDigit(character) || character == '.'
        : Character.isLetter(character) || character == '-';
  }

  private static String described(int number, byte[] book) {
    return "mutation " + number + ":\n" + new String(book, StandardCharsets.UTF_8);
  }
}
