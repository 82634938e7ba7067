package daylight.app.door;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A QR code ({@code qr-code}) of a text, as one path of unit squares.
 *
 * @param side of the whole with its quiet margin, in squares
 * @param path of the dark squares, as SVG writes it
 */
public record Square(int side, String path) {
  /** The margin that readers want, squares. */
  private static final int QUIET = 4;

  /** The code of an address of a page. */
  public static Square of(String text) {
    try {
      ByteMatrix dark = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
      StringBuilder path = new StringBuilder();
      for (int y = 0; y < dark.getHeight(); y++) {
        for (int x = 0; x < dark.getWidth(); x++) {
          int from = x;
          while (x < dark.getWidth() && dark.get(x, y) == 1) {
            x++;
          }
          if (x > from) {
            int wide = x - from;
            path.append('M').append(from + QUIET).append(' ').append(y + QUIET);
            path.append('h').append(wide).append("v1h-").append(wide).append('z');
          }
        }
      }
      return new Square(dark.getWidth() + 2 * QUIET, path.toString());
    } catch (WriterException e) {
      throw new IllegalArgumentException("longer than such a code can be: " + text.length(), e);
    }
  }
}
