package daylight.footage.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhotoTest {
  @TempDir private Path folder = Path.of("");

  /**
   * Exif (CIPA DC-008), tag 274: where the first row and the first column of the file lie. The
   * bright corner of the file is its upper left.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 64, 32, left top",
    "2, 64, 32, right top",
    "3, 64, 32, right bottom",
    "4, 64, 32, left bottom",
    "5, 32, 64, left top",
    "6, 32, 64, right top",
    "7, 32, 64, right bottom",
    "8, 32, 64, left bottom"
  })
  void aPictureIsStoodUprightAsItsCameraSays(int turn, int width, int height, String corner)
      throws IOException {
    Path file = ExifJpeg.write(folder.resolve("photo.jpg"), turn, "2026:04:18 10:02:37");

    Photo photo = Photo.read(file).orElseThrow();

    assertThat(photo.picture().width()).isEqualTo(width);
    assertThat(photo.picture().height()).isEqualTo(height);
    assertThat(photo.taken()).isEqualTo(LocalDateTime.of(2026, 4, 18, 10, 2, 37));
    int x = corner.contains("left") ? 4 : width - 5;
    int y = corner.contains("top") ? 4 : height - 5;
    assertThat(photo.picture().pixels()[y * width + x] & 0xFF).isGreaterThan(200);
    assertThat(photo.picture().pixels()[(height - 1 - y) * width + (width - 1 - x)] & 0xFF)
        .isLessThan(60);
  }

  @Test
  void aTimeThatIsNoneIsNone() throws IOException {
    Path file = ExifJpeg.write(folder.resolve("photo.jpg"), 1, "0000:00:00 00:00:00");

    assertThat(Photo.read(file).orElseThrow().taken()).isNull();
  }

  /** A hundred megabytes of nothing pack into a tenth of one, ISO/IEC 15948, 11.3.4.3. */
  @Test
  void whatAPngSaysPackedIsNotUnpacked() throws IOException {
    ByteArrayOutputStream small = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB), "png", small);
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    text.write("zTXtswells\0\0".getBytes(StandardCharsets.US_ASCII));
    try (DeflaterOutputStream out = new DeflaterOutputStream(text)) {
      byte[] nothing = new byte[1 << 20];
      for (int i = 0; i < 2048; i++) {
        out.write(nothing);
      }
    }
    byte[] chunk = text.toByteArray();
    CRC32 sum = new CRC32();
    sum.update(chunk);
    ByteArrayOutputStream bomb = new ByteArrayOutputStream();
    int head = 8 + 25;
    bomb.write(small.toByteArray(), 0, head);
    bomb.write(ByteBuffer.allocate(4).putInt(chunk.length - 4).array());
    bomb.write(chunk);
    bomb.write(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    bomb.write(small.toByteArray(), head, small.size() - head);
    Path file = Files.write(folder.resolve("bomb.png"), bomb.toByteArray());

    assertThat(Photo.read(file).orElseThrow().picture().width()).isEqualTo(2);
  }

  /** The width of a PNG stands at byte 16 (ISO/IEC 15948, 11.2.2), the height behind it. */
  @Test
  void aPictureThatWouldFillAllMemoryIsRefused() throws IOException {
    ByteArrayOutputStream small = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB), "png", small);
    ByteBuffer png = ByteBuffer.wrap(small.toByteArray());
    png.putInt(16, 60_000).putInt(20, 60_000);
    CRC32 sum = new CRC32();
    sum.update(png.array(), 12, 17);
    png.putInt(29, (int) sum.getValue());

    assertThat(Photo.read(Files.write(folder.resolve("wide.png"), png.array()))).isEmpty();
  }

  @Test
  void whatIsNoPictureIsRefused() throws IOException {
    byte[] whole = Files.readAllBytes(ExifJpeg.write(folder.resolve("photo.jpg"), 1, "x"));
    Path text = Files.writeString(folder.resolve("notes.jpg"), "only words");
    Path empty = Files.write(folder.resolve("empty.jpg"), new byte[0]);

    assertThat(Photo.read(text)).isEmpty();
    assertThat(Photo.read(empty)).isEmpty();
    for (int length = 2; length < whole.length; length += 37) {
      // Cut anywhere, it is either refused or shows what is there; nothing is thrown.
      Photo.read(Files.write(folder.resolve("cut.jpg"), Arrays.copyOf(whole, length)));
    }
  }
}
