package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.Sha256;
import daylight.archive.store.By;
import daylight.archive.store.Entered;
import daylight.archive.store.Entering;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Recordings of two gigabytes, and lines that are cut: by sockets of our own, byte by byte. */
class LargeMediaTest {
  private static final long TWO_GIGABYTES = 2L << 30;
  private static final int PIECE = 512 * 1024;
  private static final By BY = new By("Kim", "laptop", Instant.parse("2026-11-27T10:00:00Z"));

  @TempDir private Path folder = Path.of("");
  private Served served;
  private UUID book = new UUID(0, 0);

  @BeforeEach
  void open() throws IOException {
    served = new Served(folder.resolve("archive"));
    book = served.site("3 Long Reach (invented)", "It backs up.");
  }

  @AfterEach
  void close() {
    served.close();
  }

  /**
   * A recording of two gigabytes beside the book, of which the disk holds next to nothing: marks at
   * its beginning, behind its middle and at its end.
   */
  private String recording() throws IOException {
    Sha256 content = Sha256.of("its name only: nobody reads two gigabytes for this");
    Path place =
        served
            .archive()
            .folder()
            .resolve("media")
            .resolve(content.hex().substring(0, 2))
            .resolve(content.hex());
    Files.createDirectories(place.resolveSibling("."));
    try (RandomAccessFile file = new RandomAccessFile(place.toFile(), "rw")) {
      file.setLength(TWO_GIGABYTES);
      for (long at : new long[] {0, 1_500_000_000L, TWO_GIGABYTES - 8}) {
        file.seek(at);
        file.write("DAYLIGHT".getBytes(StandardCharsets.US_ASCII));
      }
    }
    served.archive().nameMedia(book, "long.mp4", content, BY);
    UUID media = UUID.randomUUID();
    BookNow now = BookNow.of(served.archive(), book).orElseThrow();
    String keys = "{id: %s, label: M1, kind: footage, file: long.mp4}".formatted(media);
    UUID visit = now.visits().getFirst().entry();
    assertThat(
            served.archive().enter(book, List.of(new Entered(media, visit, "media", 0, keys)), BY))
        .containsExactly(new Entering.Kept(1));
    return "/site/" + book + "/film/" + media;
  }

  private Socket socket() throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), served.address().getPort());
    socket.setSoTimeout(20_000);
    return socket;
  }

  private String head(String method, String path, String... lines) {
    return method
        + " "
        + path
        + " HTTP/1.1\r\nHost: "
        + served.address().getAuthority()
        + "\r\n"
        + String.join("", List.of(lines).stream().map(line -> line + "\r\n").toList())
        + "\r\n";
  }

  /** Everything that a request brings until the other side closes, head and all. */
  private byte[] all(String path, String range) throws IOException {
    try (Socket socket = socket()) {
      socket
          .getOutputStream()
          .write(
              head("GET", path, "Range: " + range, "Connection: close")
                  .getBytes(StandardCharsets.US_ASCII));
      return socket.getInputStream().readAllBytes();
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1_500_000_000L, TWO_GIGABYTES - 8})
  void aRecordingOfTwoGigabytesSendsThePartThatIsAskedForAndNoMore(long at) throws IOException {
    byte[] came = all(recording(), "bytes=" + at + "-" + (at + 7));
    String text = new String(came, StandardCharsets.US_ASCII);

    assertThat(text).startsWith("HTTP/1.1 206").endsWith("\r\n\r\nDAYLIGHT");
    assertThat(text)
        .contains("Content-Range: bytes " + at + "-" + (at + 7) + "/" + TWO_GIGABYTES)
        .contains("Content-Type: video/mp4");
    assertThat(came.length).isLessThan(2000);
  }

  /** A player asks for all from somewhere on, and hangs up when it has seen enough. */
  @Test
  void whoHangsUpIsSentNoMoreAndTheNextIsServedAtOnce() throws IOException {
    String path = recording();
    for (int seek = 0; seek < 20; seek++) {
      long at = seek * 100_000_000L;
      try (Socket socket = socket()) {
        socket
            .getOutputStream()
            .write(
                head("GET", path, "Range: bytes=" + at + "-").getBytes(StandardCharsets.US_ASCII));
        byte[] some = socket.getInputStream().readNBytes(200_000);
        assertThat(some).hasSize(200_000);
        assertThat(new String(some, 0, 12, StandardCharsets.US_ASCII)).isEqualTo("HTTP/1.1 206");
      }
    }
    assertThat(all(path, "bytes=-8")).endsWith("DAYLIGHT".getBytes(StandardCharsets.US_ASCII));
    assertThat(new String(all(path, "bytes=" + TWO_GIGABYTES + "-"), StandardCharsets.US_ASCII))
        .startsWith("HTTP/1.1 416")
        .contains("bytes */" + TWO_GIGABYTES);
  }

  @Test
  void anUploadWhoseLineIsCutInAPieceGoesOnBehindTheLastWholeOne() throws IOException {
    byte[] picture = new byte[3 * PIECE + 1000];
    new Random(3).nextBytes(picture);
    picture[0] = (byte) 0xff;
    picture[1] = (byte) 0xd8;
    picture[2] = (byte) 0xff;
    Path file = Files.write(folder.resolve("picture.jpg"), picture);
    Sha256 content = Sha256.of(file);
    String path =
        "/site/"
            + book
            + "/media/"
            + content.hex()
            + "?name=photo-"
            + UUID.randomUUID()
            + ".jpg&length="
            + picture.length
            + "&from=";
    String token = served.token();
    String cookies = served.cookies();
    assertThat(sent(path + 0, picture, 0, PIECE, PIECE, token, cookies))
        .contains("\"bytes\":" + PIECE);
    // The second piece breaks off in its middle, as where somebody walks out of reach.
    sent(path + PIECE, picture, PIECE, PIECE, PIECE / 2, token, cookies);
    String there = sent(path + 0, picture, 0, 0, 0, token, cookies);
    assertThat(there).contains("partly");
    int from = Integer.parseInt(there.replaceFirst("(?s).*\"bytes\":(\\d+).*", "$1"));
    assertThat(from).isBetween(PIECE, PIECE + PIECE / 2);

    String last = "";
    while (from < picture.length) {
      int length = Math.min(PIECE, picture.length - from);
      last = sent(path + from, picture, from, length, length, token, cookies);
      from += length;
    }
    assertThat(last).contains("whole");
    assertThat(served.archive().media().file(content).orElseThrow()).hasBinaryContent(picture);
  }

  /**
   * Sends a piece by a socket of its own and returns what was answered.
   *
   * @param really so many bytes of it before the line is cut
   */
  private String sent(
      String path, byte[] of, int from, int length, int really, String token, String cookies)
      throws IOException {
    try (Socket socket = socket()) {
      OutputStream out = socket.getOutputStream();
      out.write(
          head(
                  "POST",
                  path,
                  "Origin: " + served.origin(),
                  "Daylight-Token: " + token,
                  "Cookie: " + cookies,
                  "Content-Type: application/octet-stream",
                  "Content-Length: " + length,
                  "Connection: close")
              .getBytes(StandardCharsets.US_ASCII));
      out.write(of, from, really);
      out.flush();
      if (really < length) {
        // No farewell: the other side sees the line break.
        socket.setSoLinger(true, 0);
        return "";
      }
      InputStream in = socket.getInputStream();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
