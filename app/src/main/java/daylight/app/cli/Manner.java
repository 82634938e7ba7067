package daylight.app.cli;

import daylight.app.Job;
import daylight.app.RuleChoice;
import daylight.archive.Bundled;
import daylight.line.measure.Shown;
import daylight.report.draw.PlanTurn;
import daylight.report.page.Paper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** In which units, on whose paper and by which data books are answered. */
final class Manner {
  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "Show distances in feet-inches, feet or metres; default: as the book.")
  private @Nullable UnitsWord units;

  @Option(
      names = "--paper",
      paramLabel = "SHEET",
      description =
          "Set the report on LETTER or A4; default: LETTER where feet are shown, else A4.")
  private @Nullable Paper paper;

  @Option(
      names = "--rules",
      paramLabel = "ID",
      completionCandidates = RuleIds.class,
      description =
          "Table of smallest slopes: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.",
      defaultValue = "ipc-704.1")
  private String rules = "ipc-704.1";

  @Option(
      names = "--rules-file",
      paramLabel = "FILE",
      description = "A table of smallest slopes of your own.")
  private @Nullable Path rulesFile;

  @Option(
      names = "--priors",
      paramLabel = "FILE",
      description = "Your own figures for how good each kind of measurement is.")
  private @Nullable Path priors;

  @Option(
      names = "--catalogue",
      paramLabel = "FILE",
      description = "Your own kinds of finding beside those of Daylight.")
  private @Nullable Path catalogue;

  @Option(
      names = "--limits",
      paramLabel = "FILE",
      description = "Your own thresholds of the judgement.")
  private @Nullable Path limits;

  @Option(names = "--grades", paramLabel = "FILE", description = "A table of grades of your own.")
  private @Nullable Path grades;

  @Option(
      names = "--urgency",
      paramLabel = "FILE",
      description = "Your own table of how soon, by class and consequence.")
  private @Nullable Path urgency;

  @Option(
      names = "--hold-limits",
      paramLabel = "FILE",
      description = "Limits for hold tests of your own.")
  private @Nullable Path holds;

  @Option(
      names = "--flow-data",
      paramLabel = "FILE",
      description = "Walls, fittings, sizes and surfaces of your own.")
  private @Nullable Path flow;

  @Option(
      names = "--frost-data",
      paramLabel = "FILE",
      description = "Soils, surfaces, snow and climates of your own.")
  private @Nullable Path frost;

  @Option(
      names = "--codes",
      paramLabel = "FILE",
      description = "Your own codes for what is found, a CSV table, beside our words.")
  private @Nullable Path codes;

  @Option(
      names = "--letterhead",
      paramLabel = "FILE",
      description = "Whose report it is: name, logo, licences, terms and prices at its head.")
  private @Nullable Path letterhead;

  @Option(
      names = "--en-letters",
      description =
          "Show main codes of EN 13508-2 beside our words: from memory, not checked against a copy.")
  private boolean letters;

  @Option(
      names = "--plan",
      paramLabel = "WAY",
      description =
          "Lay the plan with grid north up or along the line; default: north up, unless another"
              + " way draws it larger.")
  private @Nullable PlanWord plan;

  /** How a person says which way up a plan lies. */
  enum PlanWord {
    NORTH(PlanTurn.NORTH_UP),
    ALONG(PlanTurn.ALONG);

    private final PlanTurn way;

    PlanWord(PlanTurn way) {
      this.way = way;
    }
  }

  /** How a person says units. */
  enum UnitsWord {
    FEET_INCHES("feet-inches", Shown.FEET_INCHES),
    FEET("feet", Shown.DECIMAL_FEET),
    METRES("metres", Shown.METRES);

    private final String word;
    private final Shown shown;

    UnitsWord(String word, Shown shown) {
      this.word = word;
      this.shown = shown;
    }

    Shown shown() {
      return shown;
    }

    /** The units of that word, or null. */
    static @Nullable UnitsWord of(String word) {
      for (UnitsWord units : values()) {
        if (units.word.equals(word)) {
          return units;
        }
      }
      return null;
    }
  }

  /** The ids of the tables that come with Daylight. */
  static final class RuleIds implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Bundled.fallRulesIds().iterator();
    }
  }

  /** What is wrong with the choices, all of it; null when nothing is. */
  @Nullable String wrong() {
    List<String> wrong = new ArrayList<>();
    List<String> known = Bundled.fallRulesIds();
    if (known.stream().noneMatch(id -> id.equals(rules) || id.startsWith(rules + "-"))) {
      wrong.add("--rules: no table '" + rules + "'; there are " + String.join(", ", known));
    }
    if (letters && codes != null) {
      wrong.add("--en-letters, --codes: one of the two");
    }
    return wrong.isEmpty() ? null : String.join(System.lineSeparator(), wrong);
  }

  /**
   * The same as settings.
   *
   * @param visit label of the visit to judge; null takes the last
   */
  Job.Settings settings(@Nullable String visit) {
    UnitsWord chosen = units;
    return new Job.Settings(
        null,
        chosen == null ? null : chosen.shown,
        paper,
        new RuleChoice(
            rules,
            rulesFile,
            priors,
            catalogue,
            limits,
            grades,
            urgency,
            holds,
            flow,
            frost,
            codes,
            letterhead,
            letters),
        visit,
        plan == null ? PlanTurn.AS_IT_FITS : plan.way);
  }
}
