package daylight.report.view;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Place;
import daylight.report.Example;
import daylight.report.draw.Spot;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ViewsTest {
  private static final Pattern SHEET = Pattern.compile("viewBox=\"0 0 ([\\d.]+) ([\\d.]+)\"");

  private final Views views = Views.of(Example.usual().subject());

  @Test
  void everyRouteIsToldFromItsStartToItsEndWithTheWater() {
    assertThat(views.stretches())
        .extracting(one -> one.route().from())
        .containsExactly("CO1", "DL1");
    int next = 0;
    for (Views.Stretch stretch : views.stretches()) {
      assertThat(stretch.from()).isEqualTo(next);
      next = stretch.to() + 1;
      double before = -1;
      for (int i = stretch.from(); i <= stretch.to(); i++) {
        double now = stretch.route().station(views.samples().get(i).place()).orElseThrow();
        assertThat(now).isGreaterThanOrEqualTo(before);
        before = now;
      }
    }
    assertThat(views.samples()).hasSize(next);
  }

  @Test
  void everySpotLiesOnItsSheet() {
    assertThat(views.showing()).hasSize(3).allSatisfy(ViewsTest::lieOn);
    assertThat(Views.onSheets(Example.usual().subject(), _ -> "").showing())
        .hasSizeGreaterThan(2)
        .allSatisfy(ViewsTest::lieOn);
  }

  private static void lieOn(Face face) {
    Matcher size = SHEET.matcher(face.sheet().write());
    assertThat(size.find()).isTrue();
    double wide = Double.parseDouble(size.group(1));
    double high = Double.parseDouble(size.group(2));
    List<Spot> spots = face.spots().stream().flatMap(Optional::stream).toList();
    assertThat(spots).hasSizeGreaterThan(40);
    assertThat(spots)
        .allSatisfy(
            spot -> {
              assertThat(spot.x()).isBetween(0.0, wide);
              assertThat(spot.y()).isBetween(0.0, high);
              assertThat(Math.min(spot.from(), spot.to())).isBetween(0.0, high);
              assertThat(Math.max(spot.from(), spot.to())).isBetween(0.0, high);
              assertThat(spot.wide()).isNotNegative();
              assertThat(spot.high()).isNotNegative();
            });
  }

  @Test
  void whatHasANameHasASampleAtItsVeryPlace() {
    assertThat(views.things()).extracting(Thing::says).contains("L3, found from the ground");
    Example.usual()
        .line()
        .locates()
        .forEach(
            fit -> {
              int nearest = views.nearest(fit.place()).orElseThrow();
              assertThat(views.samples().get(nearest).place()).isEqualTo(fit.place());
            });
    assertThat(views.nearest(new Place("nowhere", 1))).isEmpty();
  }

  @Test
  void itsWordsSayAsMuchAsIsKnown() {
    assertThat(views.samples())
        .allSatisfy(one -> assertThat(one.depth().orElse("± ")).contains("± "));
    assertThat(views.samples().getFirst().where()).isEqualTo("0\"");
    String table = CursorTable.json(views, List.of());
    assertThat(table).contains("\"says\":\"CO1 → OUT\"", "\"rides\":[]").doesNotContain("NaN");
  }
}
