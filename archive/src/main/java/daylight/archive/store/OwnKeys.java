package daylight.archive.store;

import daylight.archive.form.Desk;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Mark;
import daylight.archive.form.Section;
import daylight.archive.form.Tree;
import daylight.archive.form.TreeReader;
import daylight.archive.form.TreeWriter;
import daylight.line.measure.Argument;
import daylight.line.measure.Complaint;
import daylight.line.measure.ComplaintCode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * An entry's own keys, brought from any way of writing them into the one in which they are kept, so
 * that the same keys are the same text.
 */
final class OwnKeys {
  private static final String ID = "id";
  private static final String LABEL = "label";

  private final UUID entry;
  private final Desk desk = new Desk("");
  private Tree.Keys keys = new Tree.Keys(Map.of(), Mark.NOWHERE);

  /**
   * @param written YAML or JSON
   */
  OwnKeys(UUID entry, String written) {
    this.entry = entry;
    Tree tree = TreeReader.read(written.getBytes(StandardCharsets.UTF_8), desk);
    if (tree instanceof Tree.Keys own) {
      keys = own;
      checkWhole(own, "");
      checkIdentity(own);
      if (BookTree.holdsEntries(own)) {
        complain(EntryTrouble.OTHERS_WITHIN, own.at(), "");
      }
    } else if (tree != null) {
      complain(FormTrouble.WRONG_SHAPE, tree.at(), "", new Argument.Term("form.shape.keys"));
    }
  }

  /** Whether they say this label. */
  boolean isCalled(String label) {
    Tree.Member said = keys.members().get(LABEL);
    return said != null && said.value() instanceof Tree.Text text && text.text().equals(label);
  }

  /** What is wrong with how they are written. */
  List<Complaint> complaints() {
    return desk.complaints().stream()
        .map(
            said ->
                new Complaint(
                    said.code(),
                    said.place().withPosition(null, said.place().line(), said.place().column()),
                    said.arguments()))
        .toList();
  }

  private void complain(ComplaintCode code, Mark at, String path, Argument... arguments) {
    desk.complain(code, at, path, arguments);
  }

  /** What a comment cut off would be gone when it is written again, and nobody would know. */
  private void checkWhole(Tree tree, String path) {
    switch (tree) {
      case Tree.Text(String text, boolean plain, boolean cut, Mark at) -> {
        if (cut) {
          complain(FormTrouble.CUT_BY_COMMENT, at, path, new Argument.Text(text));
        }
      }
      case Tree.Items items -> items.items().forEach(item -> checkWhole(item, path));
      case Tree.Keys within ->
          within
              .members()
              .forEach(
                  (key, member) ->
                      checkWhole(member.value(), path.isEmpty() ? key : path + "." + key));
    }
  }

  private void checkIdentity(Tree.Keys own) {
    Tree.Member id = own.members().get(ID);
    if (id != null && !isNothing(id.value()) && !entry.equals(BookTree.identity(own))) {
      String said = id.value() instanceof Tree.Text text ? text.text() : "";
      complain(EntryTrouble.OTHER_ID, id.value().at(), ID, new Argument.Text(said));
    }
  }

  /** The text in which they are kept: keys in the order of the file's table. */
  String kept(Section table) {
    Map<String, Tree.Member> written = new LinkedHashMap<>();
    thin(keys).members().forEach(written::put);
    written.put(
        ID,
        new Tree.Member(Mark.NOWHERE, new Tree.Text(entry.toString(), true, false, Mark.NOWHERE)));
    Map<String, Tree.Member> ordered = new LinkedHashMap<>();
    for (String key : order(table)) {
      Tree.Member member = written.remove(key);
      if (member != null) {
        ordered.put(key, member);
      }
    }
    ordered.putAll(written);
    return TreeWriter.write(new Tree.Keys(ordered, Mark.NOWHERE));
  }

  /** The identity stands where a book's writer puts it, behind the label. */
  private static List<String> order(Section table) {
    List<String> keys = new ArrayList<>(table.keys().keySet());
    if (keys.remove(ID)) {
      keys.add(keys.indexOf(LABEL) + 1, ID);
    }
    return keys;
  }

  /** Without the keys behind which nothing stands, which count as not written. */
  private static Tree.Keys thin(Tree.Keys thick) {
    Map<String, Tree.Member> thin = new LinkedHashMap<>();
    thick
        .members()
        .forEach(
            (key, member) -> {
              if (member.value() instanceof Tree.Keys within) {
                thin.put(key, new Tree.Member(member.key(), thin(within)));
              } else if (!isNothing(member.value())) {
                thin.put(key, member);
              }
            });
    return new Tree.Keys(thin, thick.at());
  }

  private static boolean isNothing(Tree tree) {
    return tree instanceof Tree.Text(String text, boolean plain, boolean cut, Mark at)
        && plain
        && text.isEmpty();
  }
}
