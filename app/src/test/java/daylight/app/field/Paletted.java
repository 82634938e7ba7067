package daylight.app.field;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

/** Pictures of pages made small: 255 colours that are there most, each other one as the nearest. */
final class Paletted {
  private static final int COLOURS = 255;

  private Paletted() {}

  /** Writes a picture that a browser took. */
  static void write(byte[] png, Path file) throws IOException {
    BufferedImage taken = ImageIO.read(new ByteArrayInputStream(png));
    int[] palette = palette(taken);
    byte[] red = new byte[palette.length];
    byte[] green = new byte[palette.length];
    byte[] blue = new byte[palette.length];
    for (int i = 0; i < palette.length; i++) {
      red[i] = (byte) (palette[i] >> 16);
      green[i] = (byte) (palette[i] >> 8);
      blue[i] = (byte) palette[i];
    }
    BufferedImage small =
        new BufferedImage(
            taken.getWidth(),
            taken.getHeight(),
            BufferedImage.TYPE_BYTE_INDEXED,
            new IndexColorModel(8, palette.length, red, green, blue));
    Map<Integer, Integer> nearest = new HashMap<>();
    for (int y = 0; y < taken.getHeight(); y++) {
      for (int x = 0; x < taken.getWidth(); x++) {
        int index =
            nearest.computeIfAbsent(
                taken.getRGB(x, y) & 0xFFFFFF, colour -> nearest(palette, colour));
        small.getRaster().setSample(x, y, 0, index);
      }
    }
    Files.createDirectories(file.toAbsolutePath().resolveSibling("."));
    if (!ImageIO.write(small, "png", file.toFile())) {
      throw new IOException("no writer for " + file);
    }
  }

  private static int[] palette(BufferedImage image) {
    Map<Integer, Integer> often = new HashMap<>();
    int[] all = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    Arrays.stream(all).forEach(colour -> often.merge(colour & 0xFFFFFF, 1, Integer::sum));
    List<Integer> most =
        often.keySet().stream()
            .sorted(
                Comparator.<Integer, Integer>comparing(often::get)
                    .reversed()
                    .thenComparing(Comparator.naturalOrder()))
            .limit(COLOURS)
            .toList();
    return most.stream().mapToInt(Integer::intValue).toArray();
  }

  private static int nearest(int[] palette, int colour) {
    int best = 0;
    int least = Integer.MAX_VALUE;
    for (int i = 0; i < palette.length; i++) {
      int red = ((palette[i] >> 16) & 0xFF) - ((colour >> 16) & 0xFF);
      int green = ((palette[i] >> 8) & 0xFF) - ((colour >> 8) & 0xFF);
      int blue = (palette[i] & 0xFF) - (colour & 0xFF);
      int off = red * red + green * green + blue * blue;
      if (off < least) {
        least = off;
        best = i;
      }
    }
    return best;
  }
}
