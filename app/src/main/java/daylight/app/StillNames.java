package daylight.app;

import daylight.archive.MediaFiles;
import daylight.line.book.Finding;
import daylight.line.book.Place;
import daylight.line.course.Line;
import daylight.line.course.PlacedFinding;
import daylight.line.course.Route;
import daylight.line.measure.Shown;
import daylight.line.measure.Unit;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What pictures of findings are called: by how far along the drain it is, so that a list of them by
 * name is a walk along it; then the finding's label and its kind. Where there are several lines
 * each has its name in front, and a branch that of where it begins. No two are one on any system,
 * and no name holds what a system may refuse.
 */
final class StillNames {

  private final Line line;
  private final Shown shown;
  private final int digits;
  private final List<String> lines;
  private final Set<String> taken = new HashSet<>();

  /**
   * @param shown the units of the distances in the names
   */
  StillNames(Line line, Shown shown) {
    this.line = line;
    this.shown = shown;
    this.lines = line.runs().stream().map(run -> run.reach().line()).distinct().toList();
    double longest =
        lines.stream()
            .flatMap(name -> Route.of(line, name).stream())
            .mapToDouble(route -> route.length() / unit())
            .max()
            .orElse(0);
    this.digits = Math.max(3, Long.toString((long) longest).length());
  }

  private double unit() {
    return shown == Shown.METRES ? 1 : Unit.FOOT.metres();
  }

  /**
   * The name of a picture within the results.
   *
   * @param more what else tells it from others of the same finding; empty for nothing
   */
  String name(Finding finding, String more) {
    String plain =
        where(finding) + MediaFiles.plain(finding.label()) + "-" + MediaFiles.plain(finding.kind());
    String base = "stills/" + plain + (more.isEmpty() ? "" : "-" + MediaFiles.plain(more));
    String name = base + ".jpg";
    for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
      name = base + "-" + i + ".jpg";
    }
    return name;
  }

  /** How far along, in front; what nothing places comes last. */
  private String where(Finding finding) {
    Optional<Place> place =
        line.findings().stream()
            .filter(placed -> placed.finding().id().equals(finding.id()))
            .findFirst()
            .map(PlacedFinding::from);
    return place.map(this::where).orElse("unplaced-");
  }

  private String where(Place place) {
    String name = line.findRun(place.reach()).map(run -> run.reach().line()).orElse("");
    List<Route> routes = Route.of(line, name);
    for (int i = 0; i < routes.size(); i++) {
      Route route = routes.get(i);
      if (route.station(place).isPresent()) {
        String ofLine = lines.size() > 1 ? MediaFiles.plain(name) + "-" : "";
        String ofBranch = i > 0 ? MediaFiles.plain(route.from()) + "-" : "";
        return ofLine + ofBranch + distance(route.station(place).getAsDouble());
      }
    }
    return "unplaced-";
  }

  private String distance(double metres) {
    boolean metric = shown == Shown.METRES;
    int decimals = metric ? 2 : 1;
    String format = "%0" + (digits + 1 + decimals) + "." + decimals + "f";
    return String.format(Locale.ROOT, format, Math.max(0, metres) / unit())
        + (metric ? "m-" : "ft-");
  }
}
