package daylight.footage.counter;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Makes the resource of {@link Letters}: draws glyphs of open typefaces, blurs and dirties them,
 * and teaches the network by stochastic gradient descent. Run by hand, with a folder of typefaces
 * (TTF or WOFF) and the file to write; the same typefaces give the same weights.
 */
public final class LettersTeacher {
  private static final String OTHERS = "ACEGHJKNPRUVWXYabcdeghknpqrsuwxyz#=()";
  private static final int ROUNDS = 18;
  private static final int PER_ROUND = 70_000;

  private final Random chance = new Random(5);
  private final List<Font> fonts = new ArrayList<>();
  private final float[][] first = new float[Letters.HIDDEN][Shape.CELLS + 1];
  private final float[][] second = new float[Letters.KINDS.length()][Letters.HIDDEN + 1];

  private LettersTeacher() {}

  /** Typefaces' folder, file to write. */
  public static void main(String[] words) throws Exception {
    LettersTeacher teacher = new LettersTeacher();
    teacher.load(Path.of(words[0]));
    teacher.teach();
    teacher.write(Path.of(words[1]));
  }

  private void load(Path folder) throws Exception {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted().toList()) {
        String name = file.toString();
        if (name.endsWith(".ttf")) {
          fonts.add(Font.createFont(Font.TRUETYPE_FONT, file.toFile()));
        } else if (name.endsWith(".woff")) {
          fonts.add(
              Font.createFont(
                  Font.TRUETYPE_FONT,
                  new ByteArrayInputStream(unwrapped(Files.readAllBytes(file)))));
        }
      }
    }
    System.out.println(fonts.size() + " typefaces");
  }

  /** The typeface in a WOFF file (W3C WOFF 1.0, section 4: tables compressed each by itself). */
  public static byte[] unwrapped(byte[] woff) throws DataFormatException, IOException {
    ByteBuffer in = ByteBuffer.wrap(woff);
    int tables = in.getShort(12);
    int at = 12 + 16 * tables;
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    ByteBuffer head = ByteBuffer.allocate(at);
    int power = Integer.highestOneBit(tables);
    head.putInt(in.getInt(4)).putShort((short) tables).putShort((short) (power * 16));
    head.putShort((short) Integer.numberOfTrailingZeros(power));
    head.putShort((short) (tables * 16 - power * 16));
    for (int i = 0; i < tables; i++) {
      int entry = 44 + 20 * i;
      int packed = in.getInt(entry + 8);
      int size = in.getInt(entry + 12);
      byte[] table = new byte[(size + 3) / 4 * 4];
      if (packed < size) {
        Inflater inflater = new Inflater();
        inflater.setInput(woff, in.getInt(entry + 4), packed);
        inflater.inflate(table, 0, size);
        inflater.end();
      } else {
        System.arraycopy(woff, in.getInt(entry + 4), table, 0, size);
      }
      head.putInt(in.getInt(entry)).putInt(in.getInt(entry + 16)).putInt(at).putInt(size);
      at += table.length;
      body.write(table);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(head.array());
    out.write(body.toByteArray());
    return out.toByteArray();
  }

  private void teach() {
    for (float[] row : first) {
      for (int i = 0; i < Shape.CELLS; i++) {
        row[i] = (float) (chance.nextGaussian() * 0.5);
      }
    }
    for (float[] row : second) {
      for (int i = 0; i < Letters.HIDDEN; i++) {
        row[i] = (float) (chance.nextGaussian() * 0.15);
      }
    }
    List<float[]> shapes = new ArrayList<>();
    List<Integer> kinds = new ArrayList<>();
    for (int round = 0; round < ROUNDS; round++) {
      if (round % 3 == 0) {
        shapes.clear();
        kinds.clear();
        while (shapes.size() < PER_ROUND) {
          int kind =
              chance.nextInt(4) > 0 ? chance.nextInt(10) : chance.nextInt(Letters.KINDS.length());
          float[] shape = draw(kind);
          if (shape.length > 0) {
            shapes.add(shape);
            kinds.add(kind);
          }
        }
      }
      float rate = 0.05f * (float) StrictMath.pow(0.8, round);
      int right = 0;
      for (int n = 0; n < PER_ROUND; n++) {
        int i = chance.nextInt(PER_ROUND);
        right += step(shapes.get(i), kinds.get(i), rate) ? 1 : 0;
      }
      System.out.printf("round %d: %.2f %% right%n", round, 100.0 * right / PER_ROUND);
    }
  }

  private boolean step(float[] shape, int kind, float rate) {
    float[] middle = new float[Letters.HIDDEN];
    for (int i = 0; i < middle.length; i++) {
      float sum = first[i][Shape.CELLS];
      for (int j = 0; j < Shape.CELLS; j++) {
        sum += first[i][j] * shape[j];
      }
      middle[i] = Math.max(0, sum);
    }
    float[] opinion = new Letters(first, second).opinion(shape);
    float[] back = new float[middle.length];
    int best = 0;
    for (int k = 0; k < opinion.length; k++) {
      best = opinion[k] > opinion[best] ? k : best;
      float error = opinion[k] - (k == kind ? 1 : 0);
      for (int i = 0; i < middle.length; i++) {
        back[i] += error * second[k][i];
        second[k][i] -= rate * error * middle[i];
      }
      second[k][middle.length] -= rate * error;
    }
    for (int i = 0; i < middle.length; i++) {
      if (middle[i] > 0) {
        for (int j = 0; j < Shape.CELLS; j++) {
          first[i][j] -= rate * back[i] * shape[j] * 4;
        }
        first[i][Shape.CELLS] -= rate * back[i];
      }
    }
    return best == kind;
  }

  private float[] draw(int kind) {
    char letter = Letters.KINDS.charAt(kind);
    if (kind == Letters.KINDS.length() - 1) {
      letter = OTHERS.charAt(chance.nextInt(OTHERS.length()));
    }
    int tall = 9 + chance.nextInt(chance.nextInt(3) == 0 ? 50 : 24);
    BufferedImage sheet = new BufferedImage(3 * tall + 8, 3 * tall, BufferedImage.TYPE_BYTE_GRAY);
    double[] line = new double[2];
    int own = chance.nextInt(4) == 0 ? chance.nextInt(3) + 1 : 0;
    if (!(own > 0 && OwnFaces.draw(sheet, letter, own, tall, chance, line))) {
      if (!type(sheet, letter, tall, line)) {
        return new float[0];
      }
    }
    return chance.nextInt(4) == 0 ? looked(sheet, tall, line) : filmed(sheet, tall, line);
  }

  /** As it is burned into a picture and told from it by its ink. */
  private float[] filmed(BufferedImage sheet, int tall, double[] line) {
    int width = sheet.getWidth();
    int height = sheet.getHeight();
    int[] letter = new int[width * height];
    sheet.getRaster().getPixels(0, 0, width, height, letter);
    double behind = 15 + 150 * chance.nextDouble();
    double bright = behind + 40 + (255 - behind - 40) * chance.nextDouble();
    double across = chance.nextGaussian() * 15 / width;
    double down = chance.nextGaussian() * 15 / height;
    int edge = chance.nextInt(5) < 3 ? 1 + chance.nextInt(1 + tall / 16) : 0;
    int[] edged = edge == 0 ? letter : spread(letter, width, edge);
    double[] picture = new double[letter.length];
    for (int i = 0; i < picture.length; i++) {
      double ground = behind + across * (i % width) + down * ((double) i / width);
      double dark = ground + (8 - ground) * edged[i] / 255.0;
      picture[i] = dark + (bright - dark) * letter[i] / 255.0;
    }
    int blurs = chance.nextInt(3);
    int[] soft = new int[picture.length];
    for (int i = 0; i < soft.length; i++) {
      soft[i] = (int) picture[i];
    }
    for (int i = 0; i < blurs; i++) {
      soft = blurred(soft, width, height);
    }
    double noise = 1 + 7 * chance.nextDouble();
    byte[] pixels = new byte[soft.length];
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = (byte) Math.clamp(soft[i] + noise * chance.nextGaussian(), 0.0, 255.0);
    }
    int reach = (int) Math.max(1, Math.rint(0.13 * (tall + chance.nextInt(5))));
    double least = bright - (0.3 + 0.25 * chance.nextDouble()) * (bright - behind);
    int[] ink = new Ink(width, height, reach).find(pixels, false, (int) least);
    double from = (bright - (edge > 0 ? 20 : behind)) * (0.3 + 0.25 * chance.nextDouble());
    int left = width;
    int right = 0;
    for (int i = 0; i < ink.length; i++) {
      if (ink[i] >= from && edged[i] > 60) {
        left = Math.min(left, i % width);
        right = Math.max(right, i % width + 1);
      }
    }
    if (right <= left + 1) {
      return new float[0];
    }
    double off = Math.max(0.4, tall * 0.03);
    double top = line[0] + off * chance.nextGaussian();
    double bottom = line[1] + off * chance.nextGaussian();
    return Shape.of(ink, width, left, right, top, bottom);
  }

  private static int[] spread(int[] letter, int width, int by) {
    int[] across = letter.clone();
    for (int i = by; i < letter.length - by; i++) {
      for (int d = -by; d <= by; d++) {
        across[i] = Math.max(across[i], letter[i + d]);
      }
    }
    int[] spread = across.clone();
    for (int i = by * width; i < letter.length - by * width; i++) {
      for (int d = -by; d <= by; d++) {
        spread[i] = Math.max(spread[i], across[i + d * width]);
      }
    }
    return spread;
  }

  private boolean type(BufferedImage sheet, char letter, int tall, double[] line) {
    Font font = fonts.get(chance.nextInt(fonts.size()));
    if (!font.canDisplay(letter)) {
      return false;
    }
    Graphics2D pen = sheet.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_ANTIALIASING,
        chance.nextInt(5) == 0
            ? RenderingHints.VALUE_ANTIALIAS_OFF
            : RenderingHints.VALUE_ANTIALIAS_ON);
    Font large = font.deriveFont(100f);
    Rectangle2D eight = large.createGlyphVector(pen.getFontRenderContext(), "8").getVisualBounds();
    if (eight.getHeight() < 5) {
      return false;
    }
    double size = tall / eight.getHeight();
    double wide = size * (0.8 + 0.45 * chance.nextDouble());
    GlyphVector glyph = large.createGlyphVector(pen.getFontRenderContext(), String.valueOf(letter));
    AffineTransform place = new AffineTransform();
    double base = 2 * tall + chance.nextDouble();
    place.translate(tall + chance.nextDouble(), base);
    if (chance.nextInt(6) == 0) {
      place.shear(-0.25 * chance.nextDouble(), 0);
    }
    place.scale(wide, size);
    pen.setColor(Color.WHITE);
    pen.fill(place.createTransformedShape(glyph.getOutline()));
    if (chance.nextInt(4) == 0) {
      pen.setStroke(new java.awt.BasicStroke((float) (tall * 0.06 * chance.nextDouble())));
      pen.draw(place.createTransformedShape(glyph.getOutline()));
    }
    if (letter == '0' && chance.nextInt(4) == 0) {
      Rectangle2D box = place.createTransformedShape(glyph.getOutline()).getBounds2D();
      pen.setStroke(new java.awt.BasicStroke((float) Math.max(1, tall * 0.08)));
      double in = 0.15 * box.getHeight();
      pen.draw(
          new java.awt.geom.Line2D.Double(
              box.getMinX() + 0.1 * box.getWidth(),
              box.getMaxY() - in,
              box.getMaxX() - 0.1 * box.getWidth(),
              box.getMinY() + in));
    }
    pen.dispose();
    line[0] = base + eight.getMinY() * size;
    line[1] = base + eight.getMaxY() * size;
    return true;
  }

  /** As the reader would see it: blurred, noisy, its box a little off. */
  private float[] looked(BufferedImage sheet, int tall, double[] line) {
    int width = sheet.getWidth();
    int height = sheet.getHeight();
    int[] ink = new int[width * height];
    sheet.getRaster().getPixels(0, 0, width, height, ink);
    if (chance.nextInt(2) == 0) {
      ink = blurred(ink, width, height);
    }
    int left = width;
    int right = 0;
    for (int i = 0; i < ink.length; i++) {
      if (ink[i] > 110) {
        left = Math.min(left, i % width);
        right = Math.max(right, i % width + 1);
      }
    }
    if (right <= left) {
      return new float[0];
    }
    double noise = chance.nextInt(2) * 40 * chance.nextDouble();
    for (int i = 0; i < ink.length; i++) {
      ink[i] = (int) Math.clamp(ink[i] + noise * chance.nextGaussian(), 0.0, 255.0);
    }
    double off = Math.max(0.5, tall * 0.05);
    double top = line[0] + off * (2 * chance.nextDouble() - 1);
    double bottom = line[1] + off * (2 * chance.nextDouble() - 1);
    double aside = chance.nextInt(3) == 0 ? chance.nextInt(2) : 0;
    return Shape.of(ink, width, left - aside, right + aside, top, bottom);
  }

  private static int[] blurred(int[] ink, int width, int height) {
    int[] blurred = new int[ink.length];
    for (int y = 1; y < height - 1; y++) {
      for (int x = 1; x < width - 1; x++) {
        int sum = 0;
        for (int dy = -1; dy <= 1; dy++) {
          for (int dx = -1; dx <= 1; dx++) {
            sum += ink[(y + dy) * width + x + dx] * (2 - Math.abs(dx)) * (2 - Math.abs(dy));
          }
        }
        blurred[y * width + x] = sum / 16;
      }
    }
    return blurred;
  }

  private void write(Path file) throws IOException {
    try (DataOutputStream out =
        new DataOutputStream(new java.io.BufferedOutputStream(Files.newOutputStream(file)))) {
      for (float[][] layer : List.of(first, second)) {
        for (float[] row : layer) {
          for (float weight : row) {
            out.writeShort(Math.clamp(Math.round(weight * 1024), -32768, 32767));
          }
        }
      }
    }
  }
}
