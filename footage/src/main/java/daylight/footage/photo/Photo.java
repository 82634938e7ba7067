package daylight.footage.photo;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import daylight.footage.Raster;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Arrays;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.jspecify.annotations.Nullable;

/**
 * A photograph.
 *
 * @param picture upright, with nothing of the file but its pixels
 * @param taken when, by the camera's own clock, of which no zone is known; null where it says none
 */
public record Photo(Raster picture, @Nullable LocalDateTime taken) {
  private static final int LARGEST_SIDE = 16_384;
  private static final long MOST_PIXELS = 120_000_000;
  private static final int UPRIGHT = 1;

  /** How a PNG begins (ISO/IEC 15948, 5.2). */
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss").withResolverStyle(ResolverStyle.STRICT);

  /** The photograph in a file; empty where the file is no picture that can be read. */
  public static Optional<Photo> read(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    BufferedImage image = pixels(bytes);
    if (image == null) {
      return Optional.empty();
    }
    Metadata said = said(bytes);
    ExifIFD0Directory first =
        said == null ? null : said.getFirstDirectoryOfType(ExifIFD0Directory.class);
    Integer turn = first == null ? null : first.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
    return Optional.of(
        new Photo(
            upright(image, turn == null ? UPRIGHT : turn), said == null ? null : taken(said)));
  }

  private static @Nullable BufferedImage pixels(byte[] bytes) throws IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        return null;
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        long width = reader.getWidth(0);
        long height = reader.getHeight(0);
        boolean reasonable =
            Math.max(width, height) <= LARGEST_SIDE && width * height <= MOST_PIXELS;
        return reasonable ? reader.read(0) : null;
      } catch (IOException | RuntimeException damaged) {
        // What a damaged file makes the library throw is of every kind.
        return null;
      } finally {
        reader.dispose();
      }
    }
  }

  /**
   * What the camera wrote beside the picture. A PNG is not asked: its texts are packed, and may
   * swell beyond any memory when they are unpacked.
   */
  private static @Nullable Metadata said(byte[] bytes) {
    if (isPng(bytes)) {
      return null;
    }
    try {
      return ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes));
    } catch (ImageProcessingException | IOException damaged) {
      return null;
    }
  }

  private static boolean isPng(byte[] bytes) {
    return bytes.length > PNG.length && Arrays.equals(bytes, 0, PNG.length, PNG, 0, PNG.length);
  }

  private static @Nullable LocalDateTime taken(Metadata said) {
    ExifSubIFDDirectory exif = said.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
    String time = exif == null ? null : exif.getString(ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL);
    try {
      return time == null ? null : LocalDateTime.parse(time.strip(), TIME);
    } catch (DateTimeException never) {
      return null;
    }
  }

  /** Turned and mirrored as the camera says (Exif, tag 274). */
  private static Raster upright(BufferedImage image, int turn) {
    int width = image.getWidth();
    int height = image.getHeight();
    boolean lying = turn >= 5 && turn <= 8;
    Raster raster = new Raster(lying ? height : width, lying ? width : height);
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      image.getRGB(0, y, width, 1, row, 0, width);
      for (int x = 0; x < width; x++) {
        raster.pixels()[place(x, y, width, height, turn)] = onPaper(row[x]);
      }
    }
    return raster;
  }

  /** What can be seen through shows the paper behind it, which is white. */
  private static int onPaper(int argb) {
    int alpha = argb >>> 24;
    if (alpha == 255) {
      return argb & 0xFFFFFF;
    }
    int seen = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      int channel = (argb >> shift) & 0xFF;
      seen |= ((channel * alpha + 255 * (255 - alpha) + 127) / 255) << shift;
    }
    return seen;
  }

  private static int place(int x, int y, int width, int height, int turn) {
    int right = width - 1 - x;
    int below = height - 1 - y;
    return switch (turn) {
      case 2 -> y * width + right;
      case 3 -> below * width + right;
      case 4 -> below * width + x;
      case 5 -> x * height + y;
      case 6 -> x * height + below;
      case 7 -> right * height + below;
      case 8 -> right * height + y;
      default -> y * width + x;
    };
  }
}
