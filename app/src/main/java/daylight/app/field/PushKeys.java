package daylight.app.field;

import daylight.archive.Bundled;
import daylight.line.book.Catalogue;
import java.util.List;

/** Which kinds of the catalogue have a key of their own, and how the others are grouped. */
final class PushKeys {
  /**
   * What is met most in the drains of a house, and the joints and fittings by which two passes are
   * laid over each other: common practice, no source.
   */
  static final List<String> LARGE =
      List.of(
          "joint",
          "junction",
          "bend",
          "roots",
          "standing-water",
          "grease",
          "deposit-loose",
          "obstruction",
          "displaced-joint",
          "crack",
          "break",
          "material-change");

  private PushKeys() {}

  /** What orders everybody out. */
  static List<Catalogue.Kind> stop() {
    return Bundled.catalogue().kinds().stream()
        .filter(kind -> kind.hazard() == Catalogue.Hazard.STOP)
        .toList();
  }

  static List<Catalogue.Kind> large() {
    Catalogue catalogue = Bundled.catalogue();
    return LARGE.stream().map(id -> catalogue.find(id).orElseThrow()).toList();
  }

  /** The rest of what bears on one thing. */
  static List<Catalogue.Kind> rest(Catalogue.Bears bears) {
    return Bundled.catalogue().kinds().stream()
        .filter(kind -> kind.bears() == bears)
        .filter(kind -> kind.hazard() != Catalogue.Hazard.STOP && !LARGE.contains(kind.id()))
        .toList();
  }
}
