package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.report.Example;
import daylight.report.markup.Tag;
import daylight.report.shots.Still;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class StripStillsTest {
  private static final String JPEG = "data:image/jpeg;base64,";

  private static Subject pictured(String... findings) {
    return Typed.pictured(DrawingsTest.subject(Example.usual()), Stream.of(findings));
  }

  private static List<Element> images(Tag svg) {
    return new AsDrawn(svg).all("image").toList();
  }

  @Test
  void picturesAreHeldInsideTheDrawingAndSayWhatTheyShow() {
    Subject subject = pictured("F4", "F8");

    List<Element> images = images(StripDrawing.draw(subject));

    assertThat(images).hasSize(2);
    assertThat(images)
        .extracting(image -> image.getAttribute("aria-label"))
        .containsExactly(
            "Picture F4 from inside the pipe: roots, at 32' 0\"",
            "Picture F8 from inside the pipe: broken wall, at 72' 2\"");
    Still roots = subject.shots().of("F4").orElseThrow();
    String data = images.getFirst().getAttribute("xlink:href");
    assertThat(data).startsWith(JPEG);
    assertThat(
            Arrays.equals(
                Base64.getDecoder().decode(data.substring(JPEG.length())), roots.picture().jpeg()))
        .isTrue();
  }

  @Test
  void aPictureStandsInForTheLabelOfItsFinding() {
    List<String> words = LabelOverlaps.words(StripDrawing.draw(pictured("F4")));

    assertThat(words)
        .contains("F4 Roots 35 % right", "32' 0\"")
        .doesNotContain("Roots 35 % right, 32' 0\"");
  }

  @Test
  void picturesOfManyFindingsLieBesideEachOtherAndTheRestAreNamedByTheirLabels() {
    Tag svg = StripDrawing.draw(Typed.pictured(StripCases.sixty(), StripCases.labels(60)));
    List<Box> boxes = images(svg).stream().map(AsDrawn::box).toList();
    List<String> words = LabelOverlaps.words(svg);

    assertThat(boxes).hasSizeBetween(12, 30);
    for (int i = 0; i < boxes.size(); i++) {
      for (Box other : boxes.subList(i + 1, boxes.size())) {
        assertThat(boxes.get(i).overlaps(other)).isFalse();
      }
    }
    assertThat(StripCases.sixty().line().findings())
        .filteredOn(placed -> !placed.finding().kind().equals("joint"))
        .allSatisfy(
            placed ->
                assertThat(words).anyMatch(w -> w.startsWith(placed.finding().label() + " ")));
  }

  @Test
  void withoutFootageThereIsNoPicture() {
    assertThat(images(StripDrawing.draw(pictured()))).isEmpty();
  }
}
