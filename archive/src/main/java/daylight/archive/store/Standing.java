package daylight.archive.store;

import daylight.archive.form.Section;
import daylight.archive.form.Shape;
import java.util.List;
import java.util.Optional;

/**
 * Where entries stand in another, by the tables of the file.
 *
 * @param keys that such an entry may have
 * @param several whether there is a list of them
 */
record Standing(Section keys, boolean several) {
  private static final String ID = "id";

  /** What stands at these keys; empty where no entries do. */
  static Optional<Standing> of(Section within, String section) {
    List<String> keys = List.of(section.split(BookTree.STEP, -1));
    Section at = within;
    for (String key : keys.subList(0, keys.size() - 1)) {
      if (!(at.keys().get(key) instanceof Shape.Part(Section next))) {
        return Optional.empty();
      }
      at = next;
    }
    Shape shape = at.keys().get(keys.getLast());
    boolean several = shape instanceof Shape.Rows;
    Shape one = shape instanceof Shape.Rows(Shape item) ? item : shape;
    return one instanceof Shape.Part(Section found) && found.keys().containsKey(ID)
        ? Optional.of(new Standing(found, several))
        : Optional.empty();
  }
}
