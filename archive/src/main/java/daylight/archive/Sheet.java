package daylight.archive;

import daylight.archive.form.Mark;
import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import daylight.archive.form.Tree;
import daylight.line.book.Id;
import daylight.line.book.Units;
import daylight.line.measure.Reading;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One section while it is written. A key that the section's table does not have is our own mistake
 * and throws; what is not recorded is not written.
 */
final class Sheet {
  private final Section section;
  private final Units units;
  private final Map<String, Tree.Member> members = new LinkedHashMap<>();

  Sheet(Section section, Units units) {
    this.section = section;
    this.units = units;
  }

  /** A section of an entry, identity first. */
  static Sheet of(Section section, Id id, Units units) {
    return new Sheet(section, units).id(id);
  }

  Sheet id(Id id) {
    return words("label", id.label()).words("id", id.uuid().toString());
  }

  Sheet words(String key, @Nullable String words) {
    return words == null ? this : tree(key, text(words));
  }

  Sheet yes(String key, boolean yes) {
    return words(key, yes ? "yes" : "no");
  }

  /** Yes where it is so; nothing where it is not. */
  Sheet mark(String key, boolean yes) {
    return yes ? yes(key, true) : this;
  }

  Sheet choice(String key, @Nullable Enum<?> constant) {
    return constant == null ? this : words(key, Section.word(constant));
  }

  Sheet reading(String key, @Nullable Reading reading) {
    if (reading == null) {
      return this;
    }
    if (section.at(key) instanceof Shape.Amount amount) {
      return reading(key, reading, amount);
    }
    throw new IllegalArgumentException(section.name() + ": " + key + " is not a quantity");
  }

  Sheet reading(String key, Reading reading, Shape.Amount amount) {
    Amount written = new Amount(amount.dimension(), amount.bare().in(units));
    Tree.Text value = text(written.written(reading));
    Double sd = reading.sd();
    if (sd == null) {
      return tree(key, value);
    }
    Map<String, Tree.Member> both = new LinkedHashMap<>();
    both.put("is", member(value));
    both.put("sd", member(text(written.exact(sd))));
    return tree(key, new Tree.Keys(both, Mark.NOWHERE));
  }

  Sheet texts(String key, List<String> texts) {
    return texts.isEmpty() ? this : tree(key, items(texts.stream().map(Sheet::text).toList()));
  }

  <T> Sheet rows(String key, List<T> rows, Function<T, Sheet> writer) {
    return rows.isEmpty()
        ? this
        : tree(key, items(rows.stream().map(row -> writer.apply(row).tree()).toList()));
  }

  Sheet part(String key, @Nullable Sheet part) {
    return part == null ? this : tree(key, part.tree());
  }

  Sheet tree(String key, Tree tree) {
    section.at(key);
    members.put(key, member(tree));
    return this;
  }

  Tree.Keys tree() {
    return new Tree.Keys(members, Mark.NOWHERE);
  }

  static Tree.Text text(String text) {
    return new Tree.Text(text, false, false, Mark.NOWHERE);
  }

  static Tree.Items items(List<? extends Tree> items) {
    return new Tree.Items(List.copyOf(items), Mark.NOWHERE);
  }

  private static Tree.Member member(Tree tree) {
    return new Tree.Member(Mark.NOWHERE, tree);
  }
}
