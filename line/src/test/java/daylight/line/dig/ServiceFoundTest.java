package daylight.line.dig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.FieldBook;
import daylight.line.book.Papers;
import daylight.line.course.Draft;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Marks of other services about a pipe that runs 20 m straight out, 3 m along the wall. */
class ServiceFoundTest {
  private static Papers.ServiceMark mark(String label, Papers.Service service, String... points) {
    return new Papers.ServiceMark(Draft.id("service", label), service, List.of(points));
  }

  private static List<ServiceFound> found(Papers.ServiceMark... marks) {
    FieldBook book =
        Yard.with(
            Yard.book(
                draft ->
                    draft
                        .along("K1", 0, 12)
                        .along("K2", 9, 12)
                        .along("K3", 9, 4)
                        .along("K4", 7, 9)),
            Yard.papers(List.of(), List.of(marks)));
    return Digger.services(book, Yard.line(book));
  }

  @Test
  void whereItCrossesIsToldWithHowSureThatIs() {
    ServiceFound gas = found(mark("U1", Papers.Service.GAS, "K1", "K2")).getFirst();

    assertThat(gas.points()).hasSize(2);
    assertThat(gas.crossings()).hasSize(1);
    // The locates stand 2 m further out than their cable: 12 m out is 10 m of pipe.
    assertThat(gas.crossings().getFirst().along().value()).isCloseTo(10, within(0.2));
    assertThat(gas.crossings().getFirst().along().sd()).isBetween(0.01, 0.3);
  }

  @Test
  void whatDoesNotCrossIsSoNear() {
    List<ServiceFound> two =
        found(
            mark("U1", Papers.Service.WATER, "K3", "K4"),
            mark("U2", Papers.Service.ELECTRIC, "K4"));

    for (ServiceFound one : two) {
      assertThat(one.crossings()).isEmpty();
      ServiceFound.Nearest nearest = Objects.requireNonNull(one.nearest());
      assertThat(nearest.away()).isCloseTo(4, within(0.15));
      assertThat(nearest.least()).isLessThan(nearest.away());
      assertThat(nearest.place().distance()).isCloseTo(7, within(0.7));
    }
  }

  @Test
  void whatHasNoPlaceMayBeAnywhere() {
    ServiceFound open = found(mark("U1", Papers.Service.GAS, "K1", "nowhere")).getFirst();
    ServiceFound bare = found(mark("U2", Papers.Service.UNKNOWN)).getFirst();

    for (ServiceFound one : List.of(open, bare)) {
      assertThat(one.points()).isEmpty();
      assertThat(one.crossings()).isEmpty();
      assertThat(one.nearest()).isNull();
    }
  }
}
