package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import daylight.line.measure.Complaint;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are no books, or mean harm: a complaint each, soon, and no exception. */
class HostileFilesTest {
  private static final Duration SOON = Duration.ofSeconds(20);
  private static final String BOOK = "daylight-book: 1\n";

  @TempDir private Path folder = Path.of("");

  private static List<String> codes(ReadBook read) {
    return read.complaints().stream().map(c -> c.code().key()).distinct().toList();
  }

  private static ReadBook soon(Supplier<ReadBook> reading) {
    return assertTimeoutPreemptively(SOON, reading::get);
  }

  private static ReadBook read(byte[] bytes) {
    return soon(() -> FieldBookReader.read("hostile.yaml", bytes, null));
  }

  private static ReadBook read(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static void refused(ReadBook read, String code) {
    assertThat(codes(read)).containsExactly(code);
    assertThat(read.book()).isNull();
    assertThat(read.sound()).isFalse();
  }

  @Test
  void aMissingFile() {
    refused(FieldBookReader.read(folder.resolve("none.yaml")), "form.file-missing");
  }

  @Test
  void aFolder() {
    refused(FieldBookReader.read(folder), "form.not-a-file");
  }

  @Test
  void anEmptyFileAndOneOfBlanks() {
    refused(read(""), "form.empty");
    refused(read(" \n\n \t "), "form.empty");
    refused(read("# nothing but words\n"), "form.empty");
  }

  @Test
  void fiftyMegabytesOfZerosAreRefusedBeforeTheyAreRead() throws IOException {
    Path zeros = folder.resolve("zeros.yaml");
    try (RandomAccessFile file = new RandomAccessFile(zeros.toFile(), "rw")) {
      file.setLength(50L << 20);
    }
    refused(soon(() -> FieldBookReader.read(zeros)), "form.too-large");
    refused(read(new byte[50 << 20]), "form.too-large");
  }

  @Test
  void zerosAndOtherControlCharactersAreToldByLineAndColumn() {
    ReadBook read = read(BOOK + "site: {name: a\u0000b}\n");
    refused(read, "form.control-character");
    Complaint complaint = read.complaints().getFirst();
    assertThat(complaint.place().line()).isEqualTo(2);
    assertThat(complaint.place().column()).isEqualTo(15);
    refused(read(new byte[1 << 20]), "form.control-character");
  }

  @Test
  void whatIsNotUtf8IsToldByLineAndColumn() {
    ReadBook read = read((BOOK + "site: {name: caf\u00e9}").getBytes(StandardCharsets.ISO_8859_1));
    refused(read, "form.not-utf8");
    assertThat(read.complaints().getFirst().place().line()).isEqualTo(2);
    assertThat(read.complaints().getFirst().place().column()).isEqualTo(17);
    refused(read(BOOK.getBytes(StandardCharsets.UTF_16)), "form.not-utf8");
  }

  @Test
  void aByteOrderMarkIsNoHarm() {
    assertThat(read("\uFEFF" + BOOK).complaints()).isEmpty();
  }

  @Test
  void aBillionLaughs() {
    StringBuilder text = new StringBuilder(BOOK + "a0: &a0 [lol, lol, lol, lol, lol, lol, lol]\n");
    for (int i = 1; i < 30; i++) {
      text.append("a%d: &a%d [%s]\n".formatted(i, i, ("*a" + (i - 1) + ", ").repeat(9)));
    }
    refused(read(text.toString()), "form.alias");
  }

  @Test
  void deepNesting() {
    for (String opening : List.of("[", "{a: ", "- ", "? ")) {
      ReadBook read = read(BOOK + "site: \n  " + opening.repeat(100_000));
      assertThat(read.book()).isNull();
      assertThat(codes(read)).containsAnyOf("form.too-deep", "form.not-yaml");
    }
    refused(read(BOOK + "site: " + "[".repeat(51) + "]".repeat(51)), "form.too-deep");
  }

  @Test
  void hugeTexts() {
    refused(read(BOOK + "label: " + "x".repeat(7 << 20)), "form.text-too-long");
    refused(read(BOOK + "label: \"" + "x\n ".repeat(1 << 20) + "\""), "form.text-too-long");
  }

  @Test
  void complaintsAreNotListedWithoutEnd() {
    StringBuilder text = new StringBuilder(BOOK);
    for (int i = 0; i < 200_000; i++) {
      text.append("sitte").append(i).append(": x\n");
    }
    ReadBook read = read(text.toString());
    assertThat(read.complaints()).hasSize(1001);
    assertThat(codes(read)).containsExactly("form.unknown-key", "form.too-many");
  }

  @Test
  void manyGoodRows() {
    StringBuilder text = new StringBuilder(BOOK + "visit:\n  locates:\n");
    for (int i = 0; i < 20_000; i++) {
      text.append("  - {cable: 1 m, along: 1 m, out: 2 m, depth: 3 ft}\n");
    }
    ReadBook read = read(text.toString());
    assertThat(read.complaints()).isEmpty();
  }

  @Test
  void keysThatAreNoTexts() {
    refused(read(BOOK + "? [a, b]\n: c\n"), "form.key-not-text");
  }

  @Test
  void aBookCutOffAnywhereIsABookOrAComplaint() throws IOException {
    byte[] full = Files.readAllBytes(ExamplesTest.FOLDER.resolve("full.yaml"));
    for (int length = 0; length < full.length; length += 37) {
      byte[] cut = Arrays.copyOf(full, length);
      ReadBook read = read(cut);
      assertThat(read.book() != null || !read.complaints().isEmpty()).isTrue();
    }
  }

  @Test
  void aBookWithBytesChangedNeverMakesAnException() throws IOException {
    byte[] full = Files.readAllBytes(ExamplesTest.FOLDER.resolve("full.yaml"));
    Dice dice = new Dice(20260418);
    for (int i = 0; i < 300; i++) {
      byte[] changed = full.clone();
      for (int change = 0; change < 5; change++) {
        changed[dice.below(changed.length)] = (byte) (' ' + dice.below(95));
      }
      ReadBook read = read(changed);
      assertThat(read.book() != null || !read.complaints().isEmpty()).isTrue();
    }
  }

  @Test
  void aLinkThatLeadsOutOfTheFolder() throws IOException {
    Path outside = Files.writeString(folder.resolve("secret.txt"), "secret");
    Path inside = Files.createDirectory(folder.resolve("book"));
    Files.createSymbolicLink(inside.resolve("clip.mp4"), outside);
    Path book = inside.resolve("field-book.yaml");
    Files.writeString(book, BOOK + "visit: {media: [{file: clip.mp4}]}\n");
    ReadBook read = FieldBookReader.read(book);
    assertThat(codes(read)).containsExactly("book-file.file-outside");
    assertThat(read.book()).isNotNull();
  }
}
