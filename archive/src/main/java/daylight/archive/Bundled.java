package daylight.archive;

import daylight.line.answer.Rules;
import daylight.line.book.Catalogue;
import daylight.line.book.Priors;
import daylight.line.cause.CauseRules;
import daylight.line.condition.GradeScheme;
import daylight.line.fall.FallRules;
import daylight.line.flow.FlowTables;
import daylight.line.frost.FrostTables;
import daylight.line.proving.HoldLimits;
import daylight.line.urgency.UrgencyTable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.BiFunction;

/** The data that come with Daylight. */
public final class Bundled {
  private static final String FOLDER = "/daylight/line/";
  private static final List<String> FALL_RULES =
      List.of(
          "ipc-704.1", "irc-p3005.3", "upc-708", "obc-7.4.8.1", "npc-2.4.8.1", "ten-states-33.41");

  private Bundled() {}

  /** The priors. */
  public static Priors priors() {
    return Held.PRIORS;
  }

  /** Read once, when first asked for. */
  private static final class Held {
    static final Priors PRIORS =
        read("priors.yaml", (name, bytes) -> DataReader.priors(name, bytes, null));
    static final Catalogue CATALOGUE =
        read("catalogue.yaml", (name, bytes) -> DataReader.catalogue(name, bytes, null));
  }

  /** The catalogue. */
  public static Catalogue catalogue() {
    return Held.CATALOGUE;
  }

  /** The thresholds of the judgement. */
  public static Rules.Limits limits() {
    return read("limits.yaml", (name, bytes) -> DataReader.limits(name, bytes, null));
  }

  /** The scheme of grades. */
  public static GradeScheme grades() {
    return Grades.HELD;
  }

  /** Read once, when first asked for. */
  private static final class Grades {
    static final GradeScheme HELD =
        read("grades.yaml", (name, bytes) -> DataReader.grades(name, bytes, catalogue()));
  }

  /** The table of urgency. */
  public static UrgencyTable urgency() {
    return Ours.URGENCY;
  }

  /** The table of causes of complaints, and the words by which complaints are recognised. */
  public static CauseRules causes() {
    return Ours.CAUSES;
  }

  /** The criteria for hold tests. */
  public static HoldLimits holdLimits() {
    return Ours.HELD;
  }

  /** Figures of pipes: walls, fittings, sizes, surfaces. */
  public static FlowTables flow() {
    return Ours.FLOW;
  }

  /** The tables that frost is worked out with. */
  public static FrostTables frost() {
    return Cold.FROST;
  }

  /** Read once, when first asked for. */
  private static final class Cold {
    static final FrostTables FROST = read("frost.yaml", DataReader::frost);
  }

  /** Read once, when first asked for. */
  private static final class Ours {
    static final FlowTables FLOW = read("flow.yaml", DataReader::flow);
    static final HoldLimits HELD = read("hold-limits.yaml", DataReader::holdLimits);
    static final UrgencyTable URGENCY = read("urgency.yaml", DataReader::urgency);
    static final CauseRules CAUSES =
        new CauseRules(
            read("causes.yaml", (name, bytes) -> DataReader.causes(name, bytes, catalogue())),
            read("complaints/en.yaml", DataReader::complaintWords));
  }

  /** The ids of the tables of smallest slopes. */
  public static List<String> fallRulesIds() {
    return FALL_RULES;
  }

  /**
   * A table of smallest slopes.
   *
   * @param id its id, such as {@code ipc-704.1}, or what stands before the first hyphen
   * @throws IllegalArgumentException for an id that none has
   */
  public static FallRules fallRules(String id) {
    String full =
        FALL_RULES.stream()
            .filter(known -> known.equals(id) || known.startsWith(id + "-"))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException(id + " must be one of " + FALL_RULES));
    return read("rules/" + full + ".yaml", DataReader::fallRules);
  }

  private static <T> T read(String name, BiFunction<String, byte[], ReadData<T>> reader) {
    try (InputStream in = Priors.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IllegalStateException("no resource " + name);
      }
      ReadData<T> read = reader.apply(name, in.readAllBytes());
      if (read.value() == null || !read.complaints().isEmpty()) {
        throw new IllegalStateException("wrong in " + name + ": " + read.complaints());
      }
      return read.value();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
