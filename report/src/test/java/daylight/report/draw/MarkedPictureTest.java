package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Finding;
import daylight.report.shots.Picture;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class MarkedPictureTest {
  private static final Pattern PATH = Pattern.compile("<path d=\"([^\"]+)\"");
  private static final double HOUR = Math.PI / 6;

  private final MarkedPicture picture = new MarkedPicture(new Picture(640, 480, new byte[0]), 640);

  /** The points of the marks, each mark twice: dark below, white above. */
  private List<List<Point>> drawn() {
    return drawn(picture);
  }

  private static List<List<Point>> drawn(MarkedPicture picture) {
    Matcher paths = PATH.matcher(picture.drawn("A pipe.", "An arc.").write());
    return paths.results().map(path -> points(path.group(1))).toList();
  }

  private static List<Point> points(String path) {
    return Arrays.stream(path.replace("Z", "").substring(1).split("L", -1))
        .map(point -> point.split(" ", -1))
        .map(point -> new Point(Double.parseDouble(point[0]), Double.parseDouble(point[1])))
        .toList();
  }

  /** The point furthest from the middle between the ends of an arc. */
  private static Point middle(List<Point> arc) {
    return arc.get(arc.size() / 2);
  }

  @Test
  void theArcLiesWhereTheClockSaysAsSeenInThePicture() {
    List<Point> at =
        List.of(new Point(320, 29), new Point(531, 240), new Point(320, 451), new Point(109, 240));
    for (int quarter = 0; quarter < 4; quarter++) {
      picture.noted(new Finding.Clock(3 * quarter * HOUR, 3 * quarter * HOUR));
    }
    List<List<Point>> arcs = drawn();

    assertThat(arcs).hasSize(2 * 4);
    for (int quarter = 0; quarter < 4; quarter++) {
      Point middle = middle(arcs.get(quarter));
      assertThat(middle.x()).isCloseTo(at.get(quarter).x(), within(6.0));
      assertThat(middle.y()).isCloseTo(at.get(quarter).y(), within(6.0));
    }
  }

  @Test
  void aStretchRunsClockwiseAcrossTwelveToo() {
    picture.noted(new Finding.Clock(9 * HOUR, 3 * HOUR));
    picture.noted(new Finding.Clock(4 * HOUR, 8 * HOUR));
    List<List<Point>> arcs = drawn();

    assertThat(arcs.get(0)).allSatisfy(point -> assertThat(point.y()).isLessThan(240.01));
    assertThat(arcs.get(1)).allSatisfy(point -> assertThat(point.y()).isGreaterThan(300));
  }

  @Test
  void aRingIsDrawnAsTheBookGivesIt() {
    boolean inside = picture.ringed(new Finding.Outline(null, 335, 170, 250, 230));
    boolean outside = picture.ringed(new Finding.Outline(null, 335, 481, 250, 230));
    List<Point> ring = drawn().getFirst();

    assertThat(inside).isTrue();
    assertThat(outside).isFalse();
    assertThat(ring.stream().mapToDouble(Point::x).min().orElseThrow()).isEqualTo(210, within(0.1));
    assertThat(ring.stream().mapToDouble(Point::x).max().orElseThrow()).isEqualTo(460, within(0.1));
    assertThat(ring.stream().mapToDouble(Point::y).min().orElseThrow()).isEqualTo(55, within(0.1));
    assertThat(ring.stream().mapToDouble(Point::y).max().orElseThrow()).isEqualTo(285, within(0.1));
  }

  /** A telephone's photograph is many times wider than its copy in the report. */
  @Test
  void aRingGoesAlongWithAPictureMadeSmaller() {
    MarkedPicture copy = new MarkedPicture(new Picture(640, 480, new byte[0]), 4000);
    boolean inside = copy.ringed(new Finding.Outline("M1", 3900, 2900, 100, 50));
    boolean outside = copy.ringed(new Finding.Outline("M1", 3900, 3010, 100, 50));
    List<Point> ring = drawn(copy).getFirst();

    assertThat(inside).isTrue();
    assertThat(outside).isFalse();
    assertThat(ring.getFirst().x()).isEqualTo(624, within(0.01));
    assertThat(ring.getFirst().y()).isEqualTo(460, within(0.01));
  }
}
