package daylight.archive.form;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A YAML text as it was written: texts, lists and keys, each with its place; nothing is typed. */
public sealed interface Tree {
  /** Where it begins. */
  Mark at();

  /**
   * A text.
   *
   * @param plain whether it stood without quotes
   * @param cut whether words followed it that YAML takes for a comment, as in {@code MH #2}
   */
  record Text(String text, boolean plain, boolean cut, Mark at) implements Tree {}

  /** A list. */
  record Items(List<Tree> items, Mark at) implements Tree {
    public Items {
      items = List.copyOf(items);
    }
  }

  /** Keys with what stands at each, in the order of the text. */
  record Keys(Map<String, Member> members, Mark at) implements Tree {
    public Keys {
      members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }
  }

  /** What stands at a key, and where the key itself stands. */
  record Member(Mark key, Tree value) {}
}
