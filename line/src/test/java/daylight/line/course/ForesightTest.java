package daylight.line.course;

import static daylight.line.course.Known.known;
import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.FieldBook;
import daylight.line.book.Locate;
import daylight.line.book.Place;
import daylight.line.measure.Measured;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is promised of one more measurement is what it brings when it is made. */
class ForesightTest {
  private static final int FEW = 25;
  private static final int MANY = 200;

  private static FieldBook without(FieldBook book, String locate) {
    return Reworked.visits(
        book,
        v -> {
          List<Locate> rest = v.locates().stream().filter(l -> !l.label().equals(locate)).toList();
          return Reworked.with(v, v.passes(), rest, v.ties());
        });
  }

  /** Of each line: the uncertainty that came out over the one that was promised. */
  private static List<Double> ratios(int lines) {
    List<Double> ratios = new ArrayList<>();
    for (int seed = 1; seed <= lines; seed++) {
      LineSort sort = LineSort.of(seed % 2, 4, 8);
      KnownProperty property = KnownProperty.of(Nature.SUPPOSED, sort, seed);
      Line all = Flat.line(property.book());
      LocateFit middle = all.locates().get(all.locates().size() / 2);
      Line fewer = Flat.line(without(property.book(), middle.entry().label()));
      Place there = middle.place();
      for (Wanted wanted : List.of(new Wanted.Depth(there), new Wanted.Across(there))) {
        Measured promised = known(fewer.after(wanted, new Extra.Locate(there)).orElse(null));
        Measured came = known(all.now(wanted).orElse(null));
        ratios.add(came.sd() / promised.sd());
      }
    }
    Collections.sort(ratios);
    return ratios;
  }

  @Test
  void aLocateBringsWhatWasPromised() {
    List<Double> ratios = ratios(FEW);
    assertThat(ratios.get(ratios.size() / 2)).isBetween(0.9, 1.1);
  }

  @Tag("long")
  @Test
  void aLocateBringsWhatWasPromisedOverTwoHundredLines() {
    List<Double> ratios = ratios(MANY);
    assertThat(ratios.get(ratios.size() / 2)).isBetween(0.9, 1.1);
  }

  @Test
  void aProbeTellsTheDepthAsWellAsATape() {
    Line line = Flat.line(KnownProperty.of(Nature.SUPPOSED, LineSort.of(0, 4, 8), 3).book());
    Place place = line.locates().getFirst().place();
    Measured now = known(line.now(new Wanted.Depth(place)).orElse(null));
    Measured then = known(line.after(new Wanted.Depth(place), new Extra.Probe(place)).orElse(null));

    assertThat(then.value()).isEqualTo(now.value());
    assertThat(then.sd()).isLessThan(0.03).isLessThan(now.sd());
  }

  @Test
  void whereNothingIsLevelledOneLevelTellsNothing() {
    Line line = Flat.line(Flat.book(Flat.push(), 3, 10, 17));
    Place place = new Place("R1", 10);

    assertThat(line.after(new Wanted.Depth(place), new Extra.Level(place))).isEmpty();
  }
}
