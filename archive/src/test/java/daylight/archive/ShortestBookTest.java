package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.FieldBook;
import daylight.line.book.Locate;
import daylight.line.book.Pass;
import daylight.line.book.Tie;
import daylight.line.book.Visit;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** One wall, so far along and so far out, a depth: what is supplied, and what it comes to. */
class ShortestBookTest {
  private final ReadBook read = FieldBookReader.read(Path.of("../docs/examples/shortest.yaml"));
  private final FieldBook book = Objects.requireNonNull(read.book());
  private final Visit visit = book.visits().getFirst();

  @Test
  void readsWithoutComplaint() {
    assertThat(read.complaints()).isEmpty();
    assertThat(read.sound()).isTrue();
  }

  @Test
  void oneWallAndOnePipeAreSupplied() {
    assertThat(book.site().landmarks())
        .extracting(landmark -> landmark.label())
        .containsExactly("wall-0", "wall-1");
    assertThat(book.site().reaches()).hasSize(1);
    assertThat(book.site().reaches().getFirst().line()).isEqualTo("line");
    assertThat(book.site().findNode("entry")).isPresent();
    assertThat(book.site().findNode("end")).isPresent();
    Pass pass = visit.passes().getFirst();
    assertThat(pass.label()).isEqualTo("P1");
    assertThat(pass.walk()).containsExactly(new Pass.Leg("R1", true));
    assertThat(((Pass.Zero.Reads) pass.zero()).counter().value()).isZero();
  }

  @Test
  void bareNumbersAreMeantInTheBooksUnits() {
    Locate first = visit.locates().getFirst();
    assertThat(first.label()).isEqualTo("L1");
    assertThat(Objects.requireNonNull(first.cable()).value()).isEqualTo(12 * 0.3048);
    assertThat(Objects.requireNonNull(first.depth()).value()).isEqualTo(2.5 * 0.3048);
    Locate last = visit.locates().getLast();
    assertThat(Objects.requireNonNull(last.depth()).written()).isEqualTo("3' 1\"");
    assertThat(Objects.requireNonNull(last.depth()).value()).isCloseTo(37 * 0.0254, within(1e-12));
  }

  @Test
  void eachSpotIsSoFarAlongTheWallAndSoFarOut() {
    Tie.AlongOut tie = (Tie.AlongOut) visit.ties().get(1);
    assertThat(tie.label()).isEqualTo("wall–L2");
    assertThat(tie.point()).isEqualTo("L2");
    assertThat(tie.zero()).isEqualTo("wall-0");
    assertThat(tie.toward()).isEqualTo("wall-1");
    assertThat(tie.along().value()).isEqualTo(9.5 * 0.3048);
    assertThat(tie.out().value()).isEqualTo(20 * 0.3048);
  }

  @Test
  void readingTwiceGivesTheSameIdentities() {
    assertThat(FieldBookReader.read(Path.of("../docs/examples/shortest.yaml"))).isEqualTo(read);
  }
}
