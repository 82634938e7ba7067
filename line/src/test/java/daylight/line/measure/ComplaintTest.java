package daylight.line.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ComplaintTest {
  private enum Code implements ComplaintCode {
    DEPTH_REFUSED,
    UNKNOWN_KEY;

    @Override
    public String key() {
      return "test." + name();
    }

    @Override
    public Gravity gravity() {
      return Gravity.DOUBT;
    }
  }

  private static Complaint at(String path, String file, int line, int column) {
    FilePlace place = FilePlace.at(path).withPosition(file, line, column);
    return new Complaint(Code.DEPTH_REFUSED, place, List.of());
  }

  @Test
  void sortByFileLineColumnPathAndKey() {
    List<Complaint> sorted =
        List.of(
            new Complaint(Code.DEPTH_REFUSED, FilePlace.at("z"), List.of()),
            at("b", "book.yaml", 2, 9),
            at("a", "book.yaml", 10, 1),
            at("a", "book.yaml", 10, 4),
            at("b", "book.yaml", 10, 4),
            new Complaint(
                Code.UNKNOWN_KEY, FilePlace.at("b").withPosition("book.yaml", 10, 4), List.of()),
            at("a", "other.yaml", 1, 1));
    List<Complaint> shuffled = new ArrayList<>(sorted);
    Collections.reverse(shuffled);
    Collections.sort(shuffled);
    assertThat(shuffled).isEqualTo(sorted);
  }

  @Test
  void keepItsOwnCopyOfItsArguments() {
    List<Argument> arguments = new ArrayList<>(List.of(new Argument.Length(1.4)));
    Complaint complaint = new Complaint(Code.DEPTH_REFUSED, FilePlace.at("L3"), arguments);
    arguments.clear();
    assertThat(complaint.arguments()).containsExactly(new Argument.Length(1.4));
  }

  @Test
  void refusePositionsBeforeTheFirst() {
    assertThatIllegalArgumentException().isThrownBy(() -> new FilePlace(null, -1, 0, ""));
    assertThatIllegalArgumentException().isThrownBy(() -> new FilePlace(null, 0, -1, ""));
  }
}
