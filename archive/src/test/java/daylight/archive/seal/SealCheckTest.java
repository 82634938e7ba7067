package daylight.archive.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.archive.Sha256;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Beside: the zip reader of the Java platform, which opens what is written here and makes what is
 * tampered with.
 */
class SealCheckTest {
  private static final int TAMPERS = 1000;
  private static final long LARGE = (1L << 32) + 12_345;

  @TempDir private Path folder = Path.of("");

  private Path bundle() {
    return folder.resolve("sealed.zip");
  }

  private static SortedMap<String, Content> contents() {
    SortedMap<String, Content> contents = new TreeMap<>();
    byte[] film = new byte[20_000];
    new Random(7).nextBytes(film);
    contents.put("book/field-book.yaml", text("daylight-book: 1\nsite: {name: A yard}\n"));
    contents.put("book/footage/p1.mp4", Content.of(film));
    contents.put("results/report.html", text("<p>Dränage, é, 漢</p>\n"));
    contents.put("results/empty.csv", text(""));
    return contents;
  }

  private static Content text(String text) {
    return Content.of(text.getBytes(StandardCharsets.UTF_8));
  }

  private Sha256 seal() {
    return seal(contents());
  }

  private Sha256 seal(SortedMap<String, Content> contents) {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("program", "1.0");
    facts.put("visit", "=V 2, “wet”");
    return Bundle.write(bundle(), facts, contents) instanceof Bundle.Outcome.Sealed(Sha256 seal)
        ? seal
        : new Sha256("0".repeat(64));
  }

  private List<String> found() {
    return SealCheck.of(bundle(), null).differences().stream().map(SealCheckTest::told).toList();
  }

  private static String told(Statement one) {
    String about =
        one.arguments().stream().findFirst().map(a -> ((Argument.Text) a).text()).orElse("");
    return (one.key().key() + " " + about).strip();
  }

  @Test
  void whatWasSealedIsUnchangedAndAnyZipReaderOpensIt() throws IOException {
    Sha256 seal = seal();
    SealCheck.Checked checked = SealCheck.of(bundle(), seal);
    assertThat(checked.isUnchanged()).isTrue();
    assertThat(checked.seal()).isEqualTo(seal);
    assertThat(checked.facts()).containsEntry("visit", "=V 2, “wet”");

    try (ZipFile zip = new ZipFile(bundle().toFile())) {
      assertThat(zip.stream().map(ZipEntry::getName))
          .containsExactly(
              "seal.txt",
              "book/field-book.yaml",
              "book/footage/p1.mp4",
              "results/empty.csv",
              "results/report.html");
      for (Map.Entry<String, Content> one : contents().entrySet()) {
        try (InputStream in = zip.getInputStream(zip.getEntry(one.getKey()));
            InputStream due = one.getValue().open()) {
          assertThat(in.readAllBytes()).as(one.getKey()).isEqualTo(due.readAllBytes());
        }
      }
    }
  }

  /** The seal is the SHA-256 of the lines before it, as any program for that tells. */
  @Test
  void theSealIsTheDigestOfAllLinesBeforeIt() throws IOException {
    Sha256 seal = seal();
    try (ZipFile zip = new ZipFile(bundle().toFile());
        InputStream in = zip.getInputStream(zip.getEntry("seal.txt"))) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      int last = text.lastIndexOf("seal ");

      assertThat(Sha256.of(text.substring(0, last))).isEqualTo(seal);
      assertThat(text.substring(last)).isEqualTo("seal " + seal.hex() + "\n");
    }
  }

  @Test
  void theSameContentsGiveTheSameBytes() throws IOException {
    seal();
    byte[] first = Files.readAllBytes(bundle());
    Files.delete(bundle());
    seal();

    assertThat(Files.readAllBytes(bundle())).isEqualTo(first);
  }

  /** Wherever it is, between the files and around them too. */
  @Test
  void everyByteThatIsFlippedMissingOrAddedIsFound() throws IOException {
    seal();
    byte[] sealed = Files.readAllBytes(bundle());
    Random random = new Random(20261127);
    for (int i = 0; i < TAMPERS; i++) {
      byte[] tampered = tampered(sealed, random);
      Files.write(bundle(), tampered);
      assertThat(SealCheck.of(bundle(), null).isUnchanged())
          .as("tamper %d", i)
          .isEqualTo(Arrays.equals(tampered, sealed));
    }
    // And each single byte of what is no content: the list, the heads, the end.
    for (int at = 0; at < sealed.length; at++) {
      if (at < 1500 || at > sealed.length - 900) {
        byte[] flipped = sealed.clone();
        flipped[at] ^= (byte) (1 << random.nextInt(8));
        Files.write(bundle(), flipped);
        assertThat(SealCheck.of(bundle(), null).isUnchanged()).as("byte %d", at).isFalse();
      }
    }
  }

  private static byte[] tampered(byte[] sealed, Random random) {
    int at = random.nextInt(sealed.length);
    int run = 1 + random.nextInt(40);
    byte[] some = new byte[run];
    random.nextBytes(some);
    byte[] before = Arrays.copyOf(sealed, at);
    byte[] after = Arrays.copyOfRange(sealed, at, sealed.length);
    return switch (random.nextInt(6)) {
      case 0 -> {
        byte[] flipped = sealed.clone();
        flipped[at] ^= (byte) (1 << random.nextInt(8));
        yield flipped;
      }
      case 1 ->
          joined(before, Arrays.copyOfRange(after, Math.min(run, after.length), after.length));
      case 2 -> joined(before, some, after);
      case 3 -> before;
      case 4 -> joined(sealed, some);
      default -> {
        byte[] over = sealed.clone();
        System.arraycopy(some, 0, over, at, Math.min(run, over.length - at));
        yield over;
      }
    };
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      all.writeBytes(part);
    }
    return all.toByteArray();
  }

  /** The bundle packed anew by somebody, with other contents. */
  private void repacked(Consumer<Map<String, byte[]>> change) throws IOException {
    Map<String, byte[]> all = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(bundle().toFile())) {
      for (ZipEntry entry : zip.stream().toList()) {
        all.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
      }
    }
    change.accept(all);
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(bundle()))) {
      for (Map.Entry<String, byte[]> one : all.entrySet()) {
        out.putNextEntry(new ZipEntry(one.getKey()));
        out.write(one.getValue());
        out.closeEntry();
      }
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void whatDiffersIsNamed() throws IOException {
    seal();
    repacked(all -> all.put("book/field-book.yaml", bytes("daylight-book: 1\n")));
    assertThat(found()).containsExactly("seal.changed book/field-book.yaml");
    repacked(all -> all.remove("results/report.html"));
    assertThat(found())
        .containsExactly("seal.changed book/field-book.yaml", "seal.missing results/report.html");
    repacked(all -> all.put("results/other.html", bytes("")));
    assertThat(found()).hasSize(3).contains("seal.added results/other.html");
  }

  @Test
  void packedAnewWithNothingElseChangedOnlyTheWrappingDiffers() throws IOException {
    seal();
    repacked(all -> {});

    assertThat(found()).containsExactly("seal.wrapping " + bundle());
  }

  @Test
  void aLineOfTheListThatIsGoneIsFound() throws IOException {
    seal();
    repacked(
        all ->
            all.compute(
                "seal.txt",
                (name, text) ->
                    bytes(
                        new String(text, StandardCharsets.UTF_8)
                            .replaceFirst("file [0-9a-f]{64} \\d+ results/empty.csv\n", ""))));

    assertThat(found()).contains("seal.list_changed", "seal.added results/empty.csv");
    repacked(all -> all.remove("seal.txt"));
    assertThat(found()).containsExactly("seal.no_seal " + bundle());
  }

  /** Which is all that it can prove. */
  @Test
  void aBundleMadeAnewIsToldFromTheFirstOnlyByTheSealThatWasNoted() throws IOException {
    Sha256 noted = seal();
    Files.delete(bundle());
    SortedMap<String, Content> other = contents();
    other.put("results/report.html", text("<p>All is well.</p>"));
    seal(other);

    assertThat(SealCheck.of(bundle(), null).isUnchanged()).isTrue();
    assertThat(SealCheck.of(bundle(), noted).differences())
        .hasSize(1)
        .allMatch(one -> one.key() == SealTrouble.OTHER_SEAL);
  }

  @Test
  void whatIsNoBundleIsSaidToBeNone() throws IOException {
    Files.writeString(bundle(), "A letter to whom it may concern. ".repeat(40));
    assertThat(found()).hasSize(1).allMatch(one -> one.startsWith("seal.unreadable"));
    Files.delete(bundle());
    assertThat(found()).hasSize(1).allMatch(one -> one.startsWith("seal.unreadable"));
  }

  @Test
  void nothingIsHalfWrittenOrWrittenOver() throws IOException {
    Files.writeString(bundle(), "mine");
    assertThat(Bundle.write(bundle(), Map.of(), contents()))
        .isInstanceOf(Bundle.Outcome.Refused.class);
    assertThat(bundle()).hasContent("mine");
    Files.delete(bundle());

    AtomicInteger opened = new AtomicInteger();
    SortedMap<String, Content> moving = contents();
    moving.put(
        "book/z.log", () -> new ByteArrayInputStream(new byte[] {(byte) opened.incrementAndGet()}));
    assertThat(Bundle.write(bundle(), Map.of(), moving))
        .isEqualTo(
            new Bundle.Outcome.Refused(
                Statement.of(SealTrouble.MOVING, new Argument.Text("book/z.log"))));
    assertThat(folder).isEmptyDirectory();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"../a", "/a", "a/../b", "a//b", "a\\b", "c:/a", "a/./b", "", "a/", "x\ny", ".."})
  void namesThatLeadElsewhereAreRefused(String name) {
    assertThat(Bundle.isName(name)).isFalse();
    SortedMap<String, Content> contents = new TreeMap<>(Map.of(name, text("")));
    assertThatThrownBy(() -> Bundle.write(bundle(), Map.of(), contents))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(folder).isEmptyDirectory();
  }

  /** More than four gigabytes, where a zip file tells its lengths in another way. */
  @Test
  @Tag("long")
  void aLongRecordingIsSealed() throws IOException {
    SortedMap<String, Content> contents = contents();
    contents.put("book/footage/long.mp4", () -> new Zeros(LARGE));
    Sha256 seal = seal(contents);

    assertThat(SealCheck.of(bundle(), seal).isUnchanged()).isTrue();
    try (ZipFile zip = new ZipFile(bundle().toFile())) {
      assertThat(zip.getEntry("book/footage/long.mp4").getSize()).isEqualTo(LARGE);
      try (InputStream in = zip.getInputStream(zip.getEntry("results/report.html"))) {
        assertThat(in.readAllBytes()).isEqualTo(bytes("<p>Dränage, é, 漢</p>\n"));
      }
    }
  }

  /** So many bytes of nothing. */
  private static final class Zeros extends InputStream {
    private long left;

    Zeros(long left) {
      this.left = left;
    }

    @Override
    public int read() {
      return left-- > 0 ? 0 : -1;
    }

    @Override
    public int read(byte[] into, int from, int most) {
      int some = (int) Math.min(most, left);
      if (some <= 0) {
        return -1;
      }
      Arrays.fill(into, from, from + some, (byte) 0);
      left -= some;
      return some;
    }
  }
}
