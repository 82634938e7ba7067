package daylight.archive.store;

import daylight.archive.FieldBookReader;
import daylight.archive.ReadBook;
import daylight.archive.form.Desk;
import daylight.archive.form.Tree;
import daylight.archive.form.TreeReader;
import daylight.archive.form.TreeWriter;
import daylight.line.measure.Complaint;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jdbi.v3.core.Handle;

/** Stands in until the archive's own way of entering is merged. */
final class EnterNow {
  private EnterNow() {}

  static Entering enter(Handle handle, UUID book, Entered one, By by) {
    List<Revision> history = Entries.history(handle, book, one.entry());
    int number = history.isEmpty() ? 0 : history.getLast().number();
    List<Leaf> now = new ArrayList<>(Entries.now(handle, book));
    Leaf old =
        now.stream().filter(leaf -> leaf.entry().equals(one.entry())).findFirst().orElse(null);
    String content = one.content() == null ? null : normal(one.content());
    if (number > 0 && Objects.equals(content, old == null ? null : old.content())) {
      return new Entering.Same(number);
    }
    if (one.base() != number) {
      return new Entering.Clash(number, old == null ? null : old.content());
    }
    double place =
        one.section().equals("site") || one.parent() == null
            ? BookTree.ALONE
            : old == null
                ? 1
                    + now.stream()
                        .filter(leaf -> leaf.section().equals(one.section()))
                        .mapToDouble(Leaf::place)
                        .max()
                        .orElse(0)
                : old.place();
    List<Complaint> before = complaints(book, now);
    now.remove(old);
    Leaf fresh =
        content == null
            ? Objects.requireNonNull(old)
            : new Leaf(one.entry(), one.parent(), one.section(), place, content);
    if (content != null) {
      now.add(fresh);
    }
    List<Complaint> after = new ArrayList<>(complaints(book, now));
    after.removeIf(
        c ->
            before.stream()
                .anyMatch(b -> b.code().equals(c.code()) && b.arguments().equals(c.arguments())));
    after.removeIf(c -> c.code().gravity() != daylight.line.measure.Gravity.STOPS);
    if (!after.isEmpty()) {
      return new Entering.Wrong(after);
    }
    Entries.revise(handle, book, fresh, content == null, by);
    return new Entering.Kept(number + 1);
  }

  static ReadBook read(UUID book, List<Leaf> leaves) {
    return FieldBookReader.read(
        book + ".yaml", BookTree.together(leaves).getBytes(StandardCharsets.UTF_8), null);
  }

  private static List<Complaint> complaints(UUID book, List<Leaf> leaves) {
    return leaves.stream().noneMatch(leaf -> leaf.parent() == null)
        ? List.of()
        : read(book, leaves).complaints();
  }

  private static String normal(String content) {
    Tree tree = TreeReader.read(content.getBytes(StandardCharsets.UTF_8), new Desk("entry"));
    return TreeWriter.write((Tree.Keys) Objects.requireNonNull(tree));
  }
}
