package daylight.report.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.report.markup.Tag;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** What an element becomes on paper; the operators are those of ISO 32000-1, annex A. */
class PlottingTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          M1 2L3 4                | 1 2 m 3 4 l
          m1 2 3 4l1-1            | 1 2 m 4 6 l 5 5 l
          M0 0H5v2Z               | 0 0 m 5 0 l 5 2 l h
          M1 1C2 2 3 3 4 4s2 2 3 0 | 1 1 m 2 2 3 3 4 4 c 5 5 6 6 7 4 c
          M0 0Q3 3 6 0            | 0 0 m 2 2 4 2 6 0 c
          M0 0q3 3 6 0t6 0        | 0 0 m 2 2 4 2 6 0 c 8 -2 10 -2 12 0 c
          M0 0L1 0zl0 1           | 0 0 m 1 0 l h 0 1 l
          """)
  void pathDataBecomesPathOperators(String data, String operators) throws Exception {
    assertThat(traced(data)).isEqualTo(operators);
  }

  @Test
  void aQuarterOfACircleIsTheWellKnownCurve() throws Exception {
    assertThat(traced("M10 0A10 10 0 0 1 0 10")).isEqualTo("10 0 m 10 5.5228 5.5228 10 -0 10 c");
  }

  @Test
  void theLongWayRoundTakesThreeQuarters() throws Exception {
    assertThat(traced("M10 0A10 10 0 1 0 0 10").chars().filter(sign -> sign == 'c')).hasSize(3);
  }

  @Test
  void anEllipseTooSmallToReachIsGrownUntilItDoes() throws Exception {
    assertThat(traced("M0 0A1 1 0 0 1 10 0")).contains("5 -5").endsWith("10 -0 c");
  }

  @ParameterizedTest
  @ValueSource(strings = {"M1", "L", "M0 0X1", "5 5", "M0 0Z5", "M0 0 & 1"})
  void whatIsNoPathIsRefused(String data) {
    assertThatThrownBy(() -> traced(data)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void stepsOfATransformAreTakenFromTheInnermost() {
    Matrix matrix = Turn.read("translate(10 20) rotate(90) scale(2)");

    assertThat(matrix.transformPoint(1, 0).x).isEqualTo(10f);
    assertThat(matrix.transformPoint(1, 0).y).isEqualTo(22f);
    assertThatThrownBy(() -> Turn.read("skewX(3)")).hasMessageContaining("skewX");
  }

  @Test
  void aCircleOfPaperIsFilledAndStroked() throws Exception {
    String painted =
        painted(
            Tag.of("circle")
                .with("cx", 5)
                .with("cy", 5)
                .with("r", 5)
                .with("fill", "#ff0000")
                .with("stroke", "#000000")
                .with("stroke-dasharray", "2 1"));

    assertThat(painted).contains("1 0 0 rg", "0 0 0 RG", "[2 1 ] 0 d", "0 5 m").contains("\nB\n");
  }

  @Test
  void whatAnElementSaysThatIsNotKnownIsRefusedNotLeftOut() {
    Tag blurred = Tag.of("circle").with("r", 5).with("filter", "url(#blur)");
    Tag foreign = Tag.of("foreignObject");

    assertThatThrownBy(() -> painted(blurred)).hasMessageContaining("filter");
    assertThatThrownBy(() -> painted(foreign)).hasMessageContaining("foreignObject");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          xMidYMid meet  | 40 0 0 -20 10 40
          xMidYMid slice | 80 0 0 -40 -10 50
          """)
  void aPictureKeepsItsProportions(String fit, String matrix) throws Exception {
    Tag picture =
        Tag.of("image")
            .with("xlink:href", "any")
            .with("x", 10)
            .with("y", 10)
            .with("width", 40)
            .with("height", 40)
            .with("preserveAspectRatio", fit);

    assertThat(painted(picture)).contains("10 10 40 40 re\nW\nn", matrix + " cm");
    assertThatThrownBy(() -> painted(Tag.of("image").with("preserveAspectRatio", "none")))
        .hasMessageContaining("none");
  }

  @Test
  void aPatternIsPaintedInItsOwnTile() throws Exception {
    Tag dots =
        Tag.of("pattern")
            .with("id", "dots")
            .with("width", 5)
            .with("height", 5)
            .with("patternUnits", "userSpaceOnUse")
            .add(Tag.of("circle").with("r", 1).with("fill", "#00ff00"));
    Tag area = Tag.of("rect").with("width", 9).with("height", 9).with("fill", "url(#dots)");

    assertThat(painted(Tag.of("g").add(Tag.of("defs").add(dots), area)))
        .contains("/p1 scn\n0 0 9 9 re")
        .contains("\nf\n");
  }

  @Test
  void whatInheritsPaintsAlike() throws Exception {
    Tag group = Tag.of("g").with("stroke", "#0000ff").with("fill", "none");
    Tag line = Tag.of("line").with("x2", 4);

    assertThat(painted(group.add(line)))
        .contains("0 0 1 RG")
        .contains("\nS\n")
        .doesNotContain("rg");
  }

  private static String painted(Tag tag) throws Exception {
    String svg = Tag.of("svg").add(tag).write();
    Element root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(svg)))
            .getDocumentElement();
    return stream(
        (document, out) ->
            new Plotter(
                    Fonts.load(document),
                    address -> picture(document),
                    out,
                    new Painter(document, out, new PDResources(), Plotter.named(root)))
                .inside(root, Brush.FIRST, new Matrix()));
  }

  /** Twice as wide as high. */
  private static PDImageXObject picture(PDDocument document) {
    try {
      return LosslessFactory.createFromImage(
          document, new BufferedImage(20, 10, BufferedImage.TYPE_INT_RGB));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String traced(String data) throws Exception {
    return String.join(
        " ",
        List.of(stream((document, out) -> Outline.trace(data, out)).strip().split("\\s+", -1)));
  }

  private interface Writing {
    void write(PDDocument document, PDPageContentStream out) throws Exception;
  }

  private static String stream(Writing writing) throws Exception {
    try (PDDocument document = new PDDocument()) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      PDAppearanceStream form = new PDAppearanceStream(document);
      form.setResources(new PDResources());
      try (PDPageContentStream out = new PDPageContentStream(document, form, bytes)) {
        writing.write(document, out);
      }
      return bytes.toString(StandardCharsets.US_ASCII);
    }
  }
}
