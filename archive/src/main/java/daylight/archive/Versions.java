package daylight.archive;

import daylight.archive.form.Desk;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Mark;
import daylight.archive.form.Tree;
import daylight.line.measure.Argument;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The versions of the book's format. A book of an older version climbs a ladder of steps, each of
 * which turns a tree of one version into one of the next, places and all.
 */
final class Versions {
  /** The first key of every book. */
  static final String KEY = "daylight-book";

  /** The first step leads from version 1 to version 2; there is none yet. */
  private static final List<UnaryOperator<Tree.Keys>> STEPS = List.of();

  private Versions() {}

  /** The newest version, which is also the one that is written. */
  static int newest() {
    return STEPS.size() + 1;
  }

  /** The tree as the newest version has it; null when it is no book or of an unknown version. */
  static Tree.@Nullable Keys upgraded(Tree tree, Desk desk) {
    return upgraded(tree, STEPS, desk);
  }

  static Tree.@Nullable Keys upgraded(Tree tree, List<UnaryOperator<Tree.Keys>> steps, Desk desk) {
    if (!(tree instanceof Tree.Keys book)) {
      Argument shape = new Argument.Term("form.shape.keys");
      desk.complain(FormTrouble.WRONG_SHAPE, tree.at(), "", shape);
      return null;
    }
    List<String> known =
        IntStream.rangeClosed(1, steps.size() + 1).mapToObj(Integer::toString).toList();
    Map.Entry<String, Tree.Member> first =
        book.members().isEmpty() ? null : book.members().entrySet().iterator().next();
    if (first == null || !first.getKey().equals(KEY)) {
      Mark at = first == null ? book.at() : first.getValue().key();
      desk.complain(FileTrouble.VERSION_NOT_FIRST, at, "", new Argument.Choices(known));
      return null;
    }
    String written = first.getValue().value() instanceof Tree.Text text ? text.text() : "";
    int version = known.indexOf(written) + 1;
    if (version == 0) {
      desk.complain(
          FileTrouble.VERSION_UNKNOWN,
          first.getValue().value().at(),
          KEY,
          new Argument.Text(written),
          new Argument.Choices(known));
      return null;
    }
    for (UnaryOperator<Tree.Keys> step : steps.subList(version - 1, steps.size())) {
      book = step.apply(book);
    }
    return book;
  }
}
