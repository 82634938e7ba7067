package daylight.app.field;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** A signature as a browser sends it: a small PNG in the form of a {@code data:} address. */
final class Signature {
  /** How the names of their files begin. */
  static final String NAME = "signature-";

  private static final String HEAD = "data:image/png;base64,";
  private static final int LARGEST = 300_000;
  private static final int WIDEST = 2000;

  /** How a PNG begins (ISO/IEC 15948, 5.2). */
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

  private Signature() {}

  /** The picture; empty where it is none, or one that nobody draws with a finger. */
  static Optional<byte[]> read(String sent) {
    if (!sent.startsWith(HEAD)) {
      return Optional.empty();
    }
    try {
      byte[] picture = Base64.getDecoder().decode(sent.substring(HEAD.length()));
      boolean png =
          picture.length <= LARGEST
              && picture.length > PNG.length
              && Arrays.equals(Arrays.copyOf(picture, PNG.length), PNG);
      return png && isSmall(picture) ? Optional.of(picture) : Optional.empty();
    } catch (IllegalArgumentException | IOException e) {
      return Optional.empty();
    }
  }

  /** By its head alone, so that a picture that swells when it is opened is never opened. */
  private static boolean isSmall(byte[] picture) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(picture))) {
      Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName("png");
      ImageReader reader = readers.next();
      try {
        reader.setInput(in);
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        return width > 0 && height > 0 && width <= WIDEST && height <= WIDEST;
      } finally {
        reader.dispose();
      }
    }
  }
}
