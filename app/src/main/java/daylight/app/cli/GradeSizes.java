package daylight.app.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How large a finding is, and its other particulars, as options by the catalogue's names. */
final class GradeSizes {
  private static final String WITH = "--with";
  private static final Set<String> OPTIONS =
      Set.of(
          "width",
          "offset",
          "share",
          "depth",
          "height",
          "thickness",
          "diameter",
          "length",
          "depth-of-wear",
          "strength",
          "through",
          "extent",
          "missing");

  @Option(names = "--width", paramLabel = "LENGTH", description = "How wide a crack is.")
  private @Nullable String width;

  @Option(names = "--offset", paramLabel = "LENGTH", description = "How far a joint is out.")
  private @Nullable String offset;

  @Option(
      names = "--share",
      paramLabel = "SHARE",
      description =
          "How much of the section something fills; of the height, for standing water; of the"
              + " diameter, for a pipe out of round: 30 %%.")
  private @Nullable String share;

  @Option(names = "--depth", paramLabel = "LENGTH", description = "How deep water stands.")
  private @Nullable String depth;

  @Option(names = "--height", paramLabel = "LENGTH", description = "How high loose dirt lies.")
  private @Nullable String height;

  @Option(names = "--thickness", paramLabel = "LENGTH", description = "How thick a root is.")
  private @Nullable String thickness;

  @Option(names = "--diameter", paramLabel = "LENGTH", description = "How large a hole is.")
  private @Nullable String diameter;

  @Option(names = "--length", paramLabel = "LENGTH", description = "How long a break is.")
  private @Nullable String length;

  @Option(
      names = "--depth-of-wear",
      paramLabel = "LENGTH",
      description = "How much of the wall is worn off.")
  private @Nullable String depthOfWear;

  @Option(
      names = "--strength",
      paramLabel = "WORD",
      description = "How ground water comes in: damp, dripping, running.")
  private @Nullable String strength;

  @Option(
      names = "--through",
      paramLabel = "WORD",
      description = "What roots came in through: joint, crack.")
  private @Nullable String through;

  @Option(
      names = "--extent",
      paramLabel = "WORD",
      description = "How far a wall is corroded: general, through, collapsed.")
  private @Nullable String extent;

  @Option(
      names = "--missing",
      paramLabel = "YES-NO",
      description = "Whether pieces of a broken wall are missing.")
  private @Nullable String missing;

  @Option(
      names = WITH,
      paramLabel = "NAME=VALUE",
      description = "Any other size or particular, by its name in the catalogue.")
  private Map<String, String> others = new LinkedHashMap<>();

  /**
   * Something written.
   *
   * @param option under which it was written
   */
  record Written(String option, String text) {}

  /** What was written, by the catalogue's names; what is written twice is complained of. */
  Map<String, Written> written(Given given) {
    Map<String, Written> written = new LinkedHashMap<>();
    put(written, "width", width);
    put(written, "offset", offset);
    put(written, "share", share);
    put(written, "depth", depth);
    put(written, "height", height);
    put(written, "thickness", thickness);
    put(written, "diameter", diameter);
    put(written, "length", length);
    put(written, "depth-of-wear", depthOfWear);
    put(written, "strength", strength);
    put(written, "through", through);
    put(written, "extent", extent);
    put(written, "missing", missing);
    others.forEach(
        (name, text) -> {
          if (written.putIfAbsent(name, new Written(WITH + " " + name, text)) != null) {
            given.complain(WITH, "figure.grade.twice", Given.text(name));
          }
        });
    return written;
  }

  private static void put(Map<String, Written> written, String name, @Nullable String text) {
    if (text != null) {
      written.put(name, new Written(option(name), text));
    }
  }

  /** How something is written that the catalogue calls so. */
  static String option(String name) {
    return OPTIONS.contains(name) ? "--" + name : WITH + " " + name;
  }
}
