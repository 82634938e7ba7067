package daylight.archive.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.archive.Sha256;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MediaFolderTest {
  /** The digest of "abc" (FIPS 180-4's first example, from memory; also what sha256sum says). */
  private static final String ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  private static final int LENGTH = 300_000;

  @TempDir private Path folder = Path.of("");

  private static byte[] recording() {
    byte[] bytes = new byte[LENGTH];
    new Random(5).nextBytes(bytes);
    return bytes;
  }

  private Sha256 digest(byte[] bytes) throws IOException {
    return Sha256.of(Files.write(folder.resolve("given"), bytes));
  }

  private static InputStream piece(byte[] bytes, int from, int to) {
    return new ByteArrayInputStream(Arrays.copyOfRange(bytes, from, to));
  }

  /** A line that is cut after so many bytes. */
  private static InputStream cut(byte[] bytes, int from, int after) {
    return new InputStream() {
      private int next = from;

      @Override
      public int read() throws IOException {
        if (next == from + after) {
          throw new IOException("cut");
        }
        return bytes[next++] & 255;
      }

      @Override
      public int read(byte[] into, int at, int most) throws IOException {
        int one = read();
        into[at] = (byte) one;
        return 1;
      }
    };
  }

  private long files() throws IOException {
    try (Stream<Path> all = Files.walk(folder.resolve("media"))) {
      return all.filter(Files::isRegularFile).count();
    }
  }

  @Test
  void aContentIsThereOnceUnderItsDigest() throws IOException {
    MediaFolder media = new MediaFolder(folder);
    Path one = Files.write(folder.resolve("one"), "abc".getBytes(StandardCharsets.UTF_8));
    Path two = Files.copy(one, folder.resolve("two"));

    assertThat(media.take(one)).isEqualTo(new Sha256(ABC));
    assertThat(media.take(two)).isEqualTo(new Sha256(ABC));

    assertThat(media.file(new Sha256(ABC)).orElseThrow()).hasContent("abc");
    assertThat(files()).isEqualTo(1);
    assertThat(one).exists();
  }

  @Test
  void whatWasCutOffGoesOnWhereItStoppedAlsoAfterARestart() throws IOException {
    byte[] bytes = recording();
    Sha256 content = digest(bytes);
    MediaFolder media = new MediaFolder(folder);

    assertThat(media.receive(content, LENGTH, 0, cut(bytes, 0, 100_000)))
        .isInstanceOf(Arrival.Partly.class);
    long there = new MediaFolder(folder).arrived(content);
    assertThat(there).isBetween(1L, 100_000L);
    assertThat(media.file(content)).isEmpty();

    MediaFolder again = new MediaFolder(folder);
    assertThat(again.receive(content, LENGTH, there, piece(bytes, (int) there, 200_000)))
        .isEqualTo(new Arrival.Partly(200_000));
    // A piece that was sent already and is sent again is not there twice.
    assertThat(again.receive(content, LENGTH, 150_000, piece(bytes, 150_000, LENGTH)))
        .isEqualTo(new Arrival.Whole());

    assertThat(again.file(content).orElseThrow()).hasBinaryContent(bytes);
    assertThat(again.arrived(content)).isEqualTo(LENGTH);
    assertThat(again.receive(content, LENGTH, 0, piece(bytes, 0, 10)))
        .isEqualTo(new Arrival.Whole());
    assertThat(files()).isEqualTo(1);
  }

  @Test
  void aGapIsNotTakenAndWhatIsOtherIsThrownAway() throws IOException {
    byte[] bytes = recording();
    Sha256 content = digest(bytes);
    MediaFolder media = new MediaFolder(folder);

    assertThat(media.receive(content, LENGTH, 500, piece(bytes, 500, LENGTH)))
        .isEqualTo(new Arrival.Partly(0));
    byte[] altered = bytes.clone();
    altered[77]++;
    assertThat(media.receive(content, LENGTH, 0, piece(altered, 0, LENGTH)))
        .isEqualTo(new Arrival.Other());
    assertThat(media.arrived(content)).isZero();
    // More than was announced is another content, however much more it is.
    assertThat(media.receive(content, LENGTH - 1, 0, piece(bytes, 0, LENGTH)))
        .isEqualTo(new Arrival.Other());
    assertThat(files()).isZero();
  }

  @Test
  void twoThatSendTheSameDoNotMix() throws IOException {
    byte[] bytes = recording();
    Sha256 content = digest(bytes);
    MediaFolder media = new MediaFolder(folder);
    Arrival[] second = {new Arrival.Whole()};
    InputStream first =
        new InputStream() {
          private int next;

          @Override
          public int read() throws IOException {
            if (next == 1000) {
              second[0] = media.receive(content, LENGTH, 0, piece(bytes, 0, LENGTH));
            }
            return next < LENGTH ? bytes[next++] & 255 : -1;
          }

          @Override
          public int read(byte[] into, int at, int most) throws IOException {
            int one = read();
            into[at] = (byte) one;
            return one < 0 ? -1 : 1;
          }
        };

    assertThat(media.receive(content, LENGTH, 0, first)).isEqualTo(new Arrival.Whole());
    assertThat(second[0]).isEqualTo(new Arrival.Busy());
  }

  @Test
  void noNameLeadsOutOfTheFolder() {
    for (String name :
        new String[] {"", "../../etc/passwd", ABC.toUpperCase(Locale.ROOT), ABC + "0"}) {
      assertThatThrownBy(() -> new Sha256(name)).isInstanceOf(IllegalArgumentException.class);
    }
  }
}
