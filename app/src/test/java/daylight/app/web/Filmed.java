package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.app.Job;
import daylight.app.Progress;
import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.codec.Film;
import daylight.report.Handout;
import daylight.report.shots.Picture;
import daylight.report.shots.Reel;
import daylight.report.shots.Shots;
import daylight.report.shots.Still;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Semaphore;
import javax.imageio.ImageIO;

/**
 * An invented shop with a recording that browsers play, one that they do not, and stills: all of
 * them made here, from test pictures.
 */
final class Filmed {
  static final double SECONDS = 8;
  static final int PER_SECOND = 10;
  static final int WIDTH = 320;
  static final int HEIGHT = 180;

  private Filmed() {}

  /** Its book in a folder of its own, with its recordings beside it. */
  static Path in(Path folder) {
    try {
      Files.createDirectories(folder);
      record(folder.resolve("film.webm"), Make.VP8_WEBM);
      record(folder.resolve("old.avi"), Make.MPEG4_AVI);
      return unfilmed(
          folder,
          "media: [{label: M1, kind: footage, file: film.webm, pass: P1},"
              + " {label: M2, kind: footage, file: old.avi, pass: P2}]");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same with what the counter of the first recording showed at both of its ends. */
  static Path counted(Path folder) {
    try {
      Path book = in(folder);
      return Files.writeString(
          book,
          Files.readString(book)
              .replaceFirst(
                  " +counter-checks:",
                  """
                  \\        anchors:
                  \\          - {label: K1, media: M1, at: 0 s, counter: 0 ft}
                  \\          - {label: K2, media: M1, at: 7.9 s, counter: 84.9 ft}
                  \\        counter-checks:"""));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The book of the invented shop with another line in its visit, and nothing beside it. */
  static Path unfilmed(Path folder, String line) {
    try (InputStream in = Filmed.class.getResourceAsStream("shop.yaml")) {
      String shop = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      Files.createDirectories(folder);
      return Files.writeString(
          folder.resolve("field-book.yaml"),
          shop.replace("    tickets:\n", "    " + line + "\n    tickets:\n"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The property served under that name, answered with pictures. */
  static Property property(String name, Path book) {
    return new Property(name, new Opened(book, Job.Settings.USUAL), Filmed::answer);
  }

  /** The same with copies made for the browser. */
  static Property property(String name, Path book, Proxies proxies) {
    return new Property(
        name, new Opened(book, Job.Settings.USUAL), Filmed::answer, proxies, new Semaphore(1));
  }

  private static Job.Outcome answer(Path book, Job.Settings settings, Progress progress) {
    Job.Outcome outcome = Job.answerWithoutFootage(book, settings);
    if (!(outcome instanceof Job.Outcome.Answered answered)) {
      return outcome;
    }
    Handout bare = answered.handout();
    return new Job.Outcome.Answered(
        new Handout(
            bare.book(),
            bare.line(),
            bare.answers(),
            bare.rules(),
            shots(),
            bare.complaints(),
            bare.language(),
            bare.shown(),
            bare.paper()),
        answered.counters(),
        answered.tracks(),
        answered.places());
  }

  private static Shots shots() {
    return new Shots(
        List.of(
            new Reel("M1", "film.webm", "P1", SECONDS, WIDTH, HEIGHT, "VP8", true),
            new Reel("M2", "old.avi", "P2", SECONDS, WIDTH, HEIGHT, "MPEG-4", false)),
        List.of(
            new Still("stills/F1.jpg", "F1", "M1", 1.5, picture(Color.DARK_GRAY)),
            new Still("stills/F2.jpg", "F2", "M1", 5.2, picture(Color.GRAY)),
            new Still("stills/F7.jpg", "F7", "M2", 3, picture(Color.LIGHT_GRAY))));
  }

  private static Picture picture(Color colour) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(colour);
    pen.fillRect(0, 0, WIDTH, HEIGHT);
    pen.setColor(Color.BLACK);
    pen.fillOval(WIDTH / 2 - 60, HEIGHT / 2 - 60, 120, 120);
    pen.dispose();
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    try {
      assertThat(ImageIO.write(image, "jpg", jpeg)).isTrue();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Picture(WIDTH, HEIGHT, jpeg.toByteArray());
  }

  /** Ten pictures a second, each of a grey of its own: a scene of eight seconds grows light. */
  static void record(Path file, Make make) throws IOException {
    Raster raster = new Raster(WIDTH, HEIGHT);
    try (Film film = Film.begin(file, make, WIDTH, HEIGHT, Rate.of(PER_SECOND))) {
      for (int frame = 0; frame < SECONDS * PER_SECOND; frame++) {
        int grey = 40 + 2 * frame;
        Arrays.fill(raster.pixels(), grey << 16 | grey << 8 | grey);
        film.add(raster);
      }
      film.finish();
    }
  }
}
