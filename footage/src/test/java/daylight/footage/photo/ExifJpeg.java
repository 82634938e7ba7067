package daylight.footage.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * An invented photograph of 64 × 32 pixels whose upper left corner is bright, with what a camera
 * writes beside it (CIPA DC-008, Exif): how it lies, when it was taken, its maker, and a place.
 */
public final class ExifJpeg {
  /** What no hand-over may hold: the maker's name of the file. */
  public static final String MAKER = "Invented Camera";

  private static final int SHORT = 3;
  private static final int ASCII = 2;
  private static final int LONG = 4;

  private ExifJpeg() {}

  /** Writes it; {@code taken} as {@code 2026:04:18 10:02:37}. */
  public static Path write(Path file, int turn, String taken) throws IOException {
    BufferedImage image = new BufferedImage(64, 32, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 16; y++) {
      for (int x = 0; x < 32; x++) {
        image.setRGB(x, y, 0xFFFFFF);
      }
    }
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    ImageIO.write(image, "jpg", plain);
    byte[] jpeg = plain.toByteArray();
    byte[] exif = exif(turn, taken);
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    whole.write(jpeg, 0, 2);
    whole.write(new byte[] {(byte) 0xFF, (byte) 0xE1});
    whole.write(ByteBuffer.allocate(2).putShort((short) (exif.length + 2)).array());
    whole.write(exif);
    whole.write(jpeg, 2, jpeg.length - 2);
    return Files.write(file, whole.toByteArray());
  }

  private static byte[] exif(int turn, String taken) {
    byte[] maker = text(MAKER);
    byte[] time = text(taken);
    ByteBuffer out = ByteBuffer.allocate(400);
    out.put("Exif\0\0MM\0*".getBytes(StandardCharsets.ISO_8859_1)).putInt(8);
    // At 8: four entries; at 62 the maker; at 100 the second list; at 160 the place.
    out.putShort((short) 4);
    entry(out, 0x010F, ASCII, maker.length, 62);
    out.putShort((short) 0x0112).putShort((short) SHORT).putInt(1).putShort((short) turn);
    out.putShort((short) 0);
    entry(out, 0x8769, LONG, 1, 100);
    entry(out, 0x8825, LONG, 1, 160);
    out.putInt(0);
    at(out, 62).put(maker);
    at(out, 100).putShort((short) 1);
    entry(out, 0x9003, ASCII, time.length, 120);
    out.putInt(0);
    at(out, 120).put(time);
    at(out, 160).putShort((short) 2);
    out.putShort((short) 1).putShort((short) ASCII).putInt(2).put(text("N")).putShort((short) 0);
    entry(out, 2, 5, 3, 200);
    out.putInt(0);
    at(out, 200);
    for (int part : new int[] {59, 1, 20, 1, 0, 1}) {
      out.putInt(part);
    }
    byte[] bytes = new byte[out.position()];
    out.get(0, bytes);
    return bytes;
  }

  private static ByteBuffer at(ByteBuffer out, int offset) {
    return out.position(offset + 6);
  }

  private static void entry(ByteBuffer out, int tag, int type, int count, int value) {
    out.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
  }

  private static byte[] text(String text) {
    return (text + "\0").getBytes(StandardCharsets.US_ASCII);
  }
}
