package daylight.archive.form;

import daylight.line.measure.FilePlace;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Where every key of a section stands, and every key within. */
final class PlacesWithin {
  private final Desk desk;
  private final String path;
  private final Map<String, FilePlace> places = new TreeMap<>();

  /**
   * @param path the path of the section
   */
  PlacesWithin(Desk desk, String path) {
    this.desk = desk;
    this.path = path;
  }

  /** The places by the key's path within the section; the section itself by the empty path. */
  Map<String, FilePlace> of(Tree.Keys section) {
    places.put("", desk.place(section.at(), path));
    collect(section, "");
    return places;
  }

  private void collect(Tree tree, String within) {
    switch (tree) {
      case Tree.Text text -> {}
      case Tree.Items(List<Tree> items, Mark at) -> {
        for (int i = 0; i < items.size(); i++) {
          put(items.get(i), within + "[" + i + "]");
        }
      }
      case Tree.Keys(Map<String, Tree.Member> members, Mark at) ->
          members.forEach(
              (key, member) -> put(member.value(), within.isEmpty() ? key : within + "." + key));
    }
  }

  private void put(Tree tree, String within) {
    places.put(within, desk.place(tree.at(), path.isEmpty() ? within : path + "." + within));
    collect(tree, within);
  }
}
