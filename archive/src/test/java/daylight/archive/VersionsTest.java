package daylight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.archive.form.Desk;
import daylight.archive.form.Tree;
import daylight.archive.form.TreeReader;
import daylight.line.measure.Argument;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Older books climb the ladder step by step; books from the future are refused. */
class VersionsTest {
  private final Desk desk = new Desk("book.yaml");

  /** A step that renames one key, as a later version might. */
  private static UnaryOperator<Tree.Keys> renaming(String old, String renamed) {
    return tree -> {
      Map<String, Tree.Member> members = new LinkedHashMap<>();
      tree.members().forEach((key, member) -> members.put(key.equals(old) ? renamed : key, member));
      return new Tree.Keys(members, tree.at());
    };
  }

  private Tree.@Nullable Keys upgraded(String version) {
    String text = "daylight-book: " + version + "\nplace: Shop\n";
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Tree tree = Objects.requireNonNull(TreeReader.read(bytes, desk));
    return Versions.upgraded(
        tree, List.of(renaming("place", "ground"), renaming("ground", "site")), desk);
  }

  @Test
  void everyStepFromItsOwnVersionOnIsTaken() {
    assertThat(Objects.requireNonNull(upgraded("1")).members()).containsKey("site");
    assertThat(Objects.requireNonNull(upgraded("2")).members()).containsKey("place");
    assertThat(desk.complaints()).isEmpty();
  }

  @Test
  void placesSurviveTheClimb() {
    Tree.Member member =
        Objects.requireNonNull(Objects.requireNonNull(upgraded("1")).members().get("site"));
    assertThat(member.value().at().line()).isEqualTo(2);
    assertThat(member.value().at().column()).isEqualTo(8);
  }

  @Test
  void aVersionFromTheFutureIsRefusedWithThoseKnown() {
    assertThat(upgraded("4")).isNull();
    assertThat(desk.complaints().getFirst().arguments())
        .containsExactly(new Argument.Text("4"), new Argument.Choices(List.of("1", "2", "3")));
  }
}
