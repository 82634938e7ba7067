package daylight.footage.scene;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.codec.Film;
import daylight.line.book.Material;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Films clips that are hard to read, each with what is true of every frame beside it. */
public final class Torture {
  /** Below this contrast to noise nobody reads a digit; fixed before any was read. */
  public static final double LEGIBLE = 2.5;

  private static final double RADIUS = 0.05;

  private Torture() {}

  /** What a line of letters looks like: in one of our faces or in a typeface of a file. */
  record Look(String face, int tall, int colour, double ink, int border, double x, double y) {}

  /** One clip. */
  record Clip(
      String name,
      Make make,
      int width,
      int height,
      int rate,
      double grain,
      CounterFormat format,
      Look look,
      Motions way,
      List<String> tricks) {}

  /** Folder to write to, folder of typefaces, names of clips (none for all). */
  public static void main(String[] words) throws Exception {
    for (Clip clip : TortureClips.all()) {
      if (words.length < 3 || List.of(words).contains(clip.name())) {
        film(clip, Path.of(words[0]), Path.of(words[1]));
      }
    }
  }

  /** The same for a clip by its name, in one of our own faces. */
  public static Path film(String name, Path folder) throws Exception {
    Clip clip =
        TortureClips.all().stream()
            .filter(one -> one.name().equals(name))
            .findFirst()
            .orElseThrow();
    return film(clip, folder, folder);
  }

  /** Writes a clip and, beside it, a line a frame: the text shown, a tab, contrast to noise. */
  static Path film(Clip clip, Path folder, Path faces) throws Exception {
    Scene scene = scene(clip, clip.way());
    return film(
        clip, folder, faces, (n, raster) -> scene.paint(Math.min(n, scene.frames() - 1), raster));
  }

  /** What is behind the letters. */
  interface Backdrop {
    void paint(int frame, Raster raster);
  }

  /** The same before a backdrop of somebody's own. */
  static Path film(Clip clip, Path folder, Path faces, Backdrop backdrop) throws Exception {
    Path file = folder.resolve(clip.name() + "." + clip.make().extension());
    Motions motions = clip.way();
    Raster raster = new Raster(clip.width(), clip.height());
    Font font = font(clip.look(), faces);
    List<String> truth = new ArrayList<>();
    int frames = (int) (motions.end() * clip.rate());
    try (Film film =
        Film.begin(file, clip.make(), clip.width(), clip.height(), Rate.of(clip.rate()))) {
      for (int n = 0; n < frames; n++) {
        double seconds = (double) n / clip.rate();
        backdrop.paint(n, raster);
        if (clip.tricks().contains("glare")) {
          glare(raster, clip, seconds);
        }
        if (clip.tricks().contains("murk")) {
          murk(raster);
        }
        String text = clip.format().text(motions.readingAt(seconds));
        boolean away = clip.tricks().contains("sometimes") && seconds % 5 > 3.5;
        double contrast = 0;
        if (clip.tricks().contains("none") || away) {
          text = "";
        } else {
          contrast = burn(text, clip.look(), font, raster);
        }
        extras(clip, n, seconds, font, raster);
        truth.add(text + "\t" + String.format(Locale.ROOT, "%.2f", contrast));
        if (clip.tricks().contains("uneven") && clip.make().keepsTimes()) {
          film.add(raster, seconds + (n % 5 == 0 ? 0.4 / clip.rate() : 0));
        } else {
          film.add(raster);
        }
      }
      film.finish();
    }
    Files.write(folder.resolve(file.getFileName() + ".txt"), truth);
    return file;
  }

  static Scene scene(Clip clip, Motions motions) {
    Script script =
        new Script(
            motions.camera(),
            new Odometer(List.of()),
            List.of(
                new Script.Pipe(
                    Double.NEGATIVE_INFINITY,
                    clip.tricks().contains("pvc") ? Material.PVC : Material.CLAY,
                    RADIUS)),
            List.of(0.6, 1.2, 1.8, 2.4, 3.0, 3.6),
            List.of(),
            List.of(),
            List.of(),
            new Script.Mouth(Double.POSITIVE_INFINITY, Script.Into.PIPE),
            "LINE 7 MAPLE ST",
            36_000,
            "2026-04-18");
    List<CameraLook.Caption> captions = new ArrayList<>();
    Typeface face = Typeface.MATRIX;
    int tall = Math.max(12, clip.height() / 34);
    if (clip.tricks().contains("clock")) {
      captions.add(
          new CameraLook.Caption(
              CameraLook.Says.DATE_AND_CLOCK,
              new Lettering(face, tall, 0xFFFFFF, 1, 1, 0, new Lettering.Place(1, 0))));
    }
    if (clip.tricks().contains("place")) {
      captions.add(
          new CameraLook.Caption(
              CameraLook.Says.PLACE,
              new Lettering(face, tall, 0xFFFFFF, 1, 1, 0, new Lettering.Place(0, 0))));
    }
    return new Scene(
        script,
        new CameraLook(
            clip.width(),
            clip.height(),
            Rate.of(clip.rate()),
            clip.grain(),
            clip.format(),
            null,
            captions));
  }

  private static Font font(Look look, Path faces) throws Exception {
    if (look.face().equals(look.face().toUpperCase(Locale.ROOT))) {
      return new Font(Font.MONOSPACED, Font.PLAIN, look.tall());
    }
    try (var files = Files.walk(faces)) {
      Path file =
          files
              .filter(
                  f -> f.toString().contains(look.face()) && f.toString().matches(".*(woff|ttf)"))
              .sorted()
              .findFirst()
              .orElseThrow();
      byte[] bytes = Files.readAllBytes(file);
      if (file.toString().endsWith("woff")) {
        bytes = daylight.footage.counter.LettersTeacher.unwrapped(bytes);
      }
      return Font.createFont(Font.TRUETYPE_FONT, new java.io.ByteArrayInputStream(bytes));
    }
  }

  private static void glare(Raster raster, Clip clip, double seconds) {
    double cx = clip.width() * (clip.look().x() * 0.8 + 0.1 + 0.15 * Math.sin(seconds * 1.3));
    double cy = clip.height() * (clip.look().y() * 0.9 + 0.05);
    double r = clip.height() * 0.17;
    int[] pixels = raster.pixels();
    for (int i = 0; i < pixels.length; i++) {
      int row = i / clip.width();
      double dx = i % clip.width() - cx;
      double dy = row - cy;
      double share = Math.exp(-(dx * dx + dy * dy) / (r * r)) * 0.85;
      pixels[i] = Packed.mix(pixels[i], 0xF4F0E0, (int) (256 * share));
    }
  }

  private static void murk(Raster raster) {
    int[] pixels = raster.pixels();
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = Packed.mix(pixels[i], 0x6A6040, 190);
    }
  }

  private static void extras(Clip clip, int n, double seconds, Font font, Raster raster) {
    Look look = clip.look();
    int small = Math.max(12, look.tall() * 3 / 4);
    for (String trick : clip.tricks()) {
      String text =
          switch (trick) {
            case "frames" -> String.format(Locale.ROOT, "%06d", 1200 + n);
            case "battery" -> "BAT " + (87 - (int) (seconds / 5)) + "%";
            case "time" -> clockOf(seconds);
            case "gps" ->
                String.format(
                    Locale.ROOT, "44.%05dN 093.%05dW", 12345 + n / 50 * 7 % 9, 54321 - n / 50 % 5);
            case "hertz" -> "512Hz";
            case "rec" -> "REC";
            default -> "";
          };
      if (!text.isEmpty()) {
        double y = trick.equals("frames") ? 0.5 : trick.equals("time") ? 0.12 : 0;
        double x = trick.equals("gps") || trick.equals("rec") ? 0 : trick.equals("hertz") ? 0.5 : 1;
        burn(text, new Look(look.face(), small, 0xF0F0F0, 1, 1, x, y), font, raster);
      }
    }
  }

  private static String clockOf(double seconds) {
    int now = 40_000 + (int) (seconds + 0.37);
    return String.format(Locale.ROOT, "%02d:%02d:%02d", now / 3600, now / 60 % 60, now % 60);
  }

  /** Burns a line in and returns how it stands out from what is behind it. */
  private static double burn(String text, Look look, Font font, Raster raster) {
    int[] before = raster.pixels().clone();
    if (look.face().equals(look.face().toUpperCase(Locale.ROOT))) {
      new Burner(
              new Lettering(
                  Typeface.valueOf(look.face()),
                  look.tall(),
                  look.colour(),
                  look.ink(),
                  look.border(),
                  0x000000,
                  new Lettering.Place(look.x(), look.y())))
          .burn(text, raster);
    } else {
      type(text, look, font, raster);
    }
    return Contrast.of(before, raster.pixels());
  }

  private static void type(String text, Look look, Font font, Raster raster) {
    BufferedImage sheet =
        new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_ARGB);
    Graphics2D pen = sheet.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    Font sized = font.deriveFont(look.tall() * 1.38f);
    var glyphs = sized.createGlyphVector(pen.getFontRenderContext(), text);
    int free = (int) (raster.width() - 28 - glyphs.getLogicalBounds().getWidth());
    float x = 14 + (float) (free * look.x());
    float y = 14 + look.tall() + (float) ((raster.height() - 28 - look.tall()) * look.y());
    java.awt.Shape outline = glyphs.getOutline(x, y);
    if (look.border() > 0) {
      pen.setColor(java.awt.Color.BLACK);
      pen.setStroke(new java.awt.BasicStroke(2f * look.border()));
      pen.draw(outline);
    }
    pen.setColor(new java.awt.Color(look.colour()));
    pen.fill(outline);
    pen.dispose();
    int[] drawn = ((java.awt.image.DataBufferInt) sheet.getRaster().getDataBuffer()).getData();
    int[] pixels = raster.pixels();
    for (int i = 0; i < pixels.length; i++) {
      int alpha = drawn[i] >>> 24;
      if (alpha > 0) {
        pixels[i] =
            Packed.mix(pixels[i], drawn[i] & 0xFFFFFF, (int) (alpha * look.ink() * 256 / 255));
      }
    }
  }
}
