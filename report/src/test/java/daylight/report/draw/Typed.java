package daylight.report.draw;

import daylight.archive.Bundled;
import daylight.archive.FieldBookReader;
import daylight.archive.ReadBook;
import daylight.line.answer.Judge;
import daylight.line.answer.Rules;
import daylight.line.book.FieldBook;
import daylight.line.counter.Tracks;
import daylight.line.course.Estimator;
import daylight.line.course.Line;
import daylight.line.measure.Shown;
import daylight.report.shots.Picture;
import daylight.report.shots.Shots;
import daylight.report.shots.Still;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/** A field book typed by hand, estimated and judged as the program does it. */
public final class Typed {
  private static final String HEAD =
      """
      daylight-book: 1
      units: {distance: m, depth: m, bore: mm, level: m}
      site:
        name: Typed
        zone: UTC
        nodes:
          - {label: N1, kind: access, what: cleanout}
          - {label: N2, kind: outlet}
          - {label: N3, kind: inlet}
          - {label: N4, kind: end}
        reaches:
      """;

  private Typed() {}

  /** One reach from N1 to N2 and one pass over it. */
  public static Subject one(String reach, String pass) {
    return book(
        "    - {label: R1, line: main, from: N1, to: N2" + reach + "}\n",
        "      - label: P1\n        head: self-righting\n        walk: [R1]\n        zero: {reads: 0}\n"
            + pass.indent(8));
  }

  /** Any reaches and passes, as rows of the file. */
  static Subject book(String reaches, String passes) {
    return of(
        HEAD
            + reaches
            + "visits:\n  - label: V1\n    kit: {}\n"
            + (passes.isEmpty() ? "" : "    passes:\n" + passes));
  }

  /** A whole file. */
  public static Subject of(String text) {
    ReadBook read =
        FieldBookReader.read(
            "typed.yaml", text.getBytes(StandardCharsets.UTF_8), null, Bundled.catalogue());
    if (read.book() == null) {
      throw new AssertionError(read.complaints() + "\n" + text);
    }
    FieldBook book = Objects.requireNonNull(read.book());
    Rules rules =
        new Rules(
            Bundled.catalogue(),
            Bundled.fallRules("ipc-704.1"),
            Bundled.limits(),
            Bundled.priors(),
            Bundled.grades(),
            Bundled.urgency(),
            Bundled.causes(),
            Bundled.holdLimits(),
            Bundled.flow(),
            Bundled.frost());
    Line line = Estimator.estimate(book, Tracks.NONE, Bundled.priors());
    return new Subject(
        book,
        line,
        Judge.judge(book, line, rules, book.visits().getLast()),
        rules,
        Shots.NONE,
        List.of(),
        Words.of(Language.EN, Shown.METRES));
  }

  /** The same with a picture of each of these findings. */
  static Subject pictured(Subject subject, Stream<String> findings) {
    List<Still> stills = findings.map(Typed::still).toList();
    return new Subject(
        subject.book(),
        subject.line(),
        subject.answers(),
        subject.rules(),
        new Shots(List.of(), stills),
        subject.complaints(),
        subject.words());
  }

  private static Still still(String finding) {
    return new Still("stills/" + finding + ".jpg", finding, "M1", 1, picture(finding.hashCode()));
  }

  /** A coloured picture of nothing, 160 by 90 pixels. */
  private static Picture picture(int seed) {
    BufferedImage image = new BufferedImage(160, 90, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(new Color(Color.HSBtoRGB(seed * 0.137f, 0.5f, 0.6f)));
    pen.fillRect(0, 0, 160, 90);
    pen.setColor(Color.DARK_GRAY);
    pen.fillOval(55, 20, 50, 50);
    pen.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "jpeg", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Picture(160, 90, out.toByteArray());
  }
}
