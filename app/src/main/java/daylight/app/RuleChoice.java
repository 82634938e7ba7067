package daylight.app;

import daylight.archive.Bundled;
import daylight.archive.DataReader;
import daylight.archive.ReadData;
import daylight.line.answer.Rules;
import daylight.line.book.Catalogue;
import daylight.line.book.Letterhead;
import daylight.line.condition.CodeTable;
import daylight.line.measure.Complaint;
import daylight.report.page.Sender;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * By which data a book is judged and named, and on whose letter paper: those that come with
 * Daylight, and in their place a person's own.
 *
 * @param fall id of a table of smallest slopes that comes with Daylight
 * @param fallFile a table of one's own in its place; null for none
 * @param priors a file over the priors; null for none
 * @param catalogue a file over the catalogue; null for none
 * @param limits a file over the limits; null for none
 * @param grades a table of grades of one's own in its place; null for none
 * @param urgency a table of urgency of one's own in its place; null for none
 * @param holds limits for hold tests of one's own in their place; null for none
 * @param flow figures of pipes of one's own in their place; null for none
 * @param frost soils, surfaces, snow and climates of one's own in their place; null for none
 * @param codes a company's table of codes; null for none
 * @param letterhead whose report it is; null for nobody's
 * @param letters whether the letters of EN 13508-2 are shown, unchecked as they are
 */
public record RuleChoice(
    String fall,
    @Nullable Path fallFile,
    @Nullable Path priors,
    @Nullable Path catalogue,
    @Nullable Path limits,
    @Nullable Path grades,
    @Nullable Path urgency,
    @Nullable Path holds,
    @Nullable Path flow,
    @Nullable Path frost,
    @Nullable Path codes,
    @Nullable Path letterhead,
    boolean letters) {
  /** What the file of a letterhead is for, as {@link #own} names it. */
  static final String LETTERHEAD = "letterhead";

  /** What is taken where nobody chooses. */
  public static final RuleChoice USUAL =
      new RuleChoice(
          "ipc-704.1", null, null, null, null, null, null, null, null, null, null, null, false);

  /** The usual ones over priors of one's own. */
  public static RuleChoice usualOver(@Nullable Path priors) {
    return new RuleChoice(
        USUAL.fall, null, priors, null, null, null, null, null, null, null, null, null, false);
  }

  /**
   * Files of one's own by what they are for, as {@link #own} names it.
   *
   * @param files null for what there is none of
   */
  static RuleChoice of(String fall, boolean letters, Function<String, @Nullable Path> files) {
    return new RuleChoice(
        fall,
        files.apply("slopes"),
        files.apply("priors"),
        files.apply("catalogue"),
        files.apply("limits"),
        files.apply("grades"),
        files.apply("urgency"),
        files.apply("hold-limits"),
        files.apply("flow"),
        files.apply("frost"),
        files.apply("codes"),
        files.apply(LETTERHEAD),
        letters);
  }

  /** The files of one's own, by what each is for. */
  Map<String, Path> own() {
    Map<String, @Nullable Path> all = new LinkedHashMap<>();
    all.put("slopes", fallFile);
    all.put("priors", priors);
    all.put("catalogue", catalogue);
    all.put("limits", limits);
    all.put("grades", grades);
    all.put("urgency", urgency);
    all.put("hold-limits", holds);
    all.put("flow", flow);
    all.put("frost", frost);
    all.put("codes", codes);
    all.put(LETTERHEAD, letterhead);
    Map<String, Path> own = new LinkedHashMap<>();
    all.forEach(
        (of, file) -> {
          if (file != null) {
            own.put(of, file);
          }
        });
    return own;
  }

  /** The files of one's own. */
  public List<Path> files() {
    return List.copyOf(own().values());
  }

  /**
   * What the files hold; what cannot be used is replaced by what comes with Daylight, so that a
   * book is read even so, for its own complaints.
   *
   * @param sender whose report it is
   * @param sound whether every file can be used
   * @param complaints of every file
   */
  record Gathered(
      Rules rules, CodeTable codes, Sender sender, boolean sound, List<Complaint> complaints) {
    Gathered {
      complaints = List.copyOf(complaints);
    }
  }

  /** Reads every file, however many are wrong. */
  Gathered gather() {
    Taking taking = new Taking();
    Catalogue kinds =
        taking.of(
            catalogue,
            Bundled.catalogue(),
            file -> DataReader.catalogue(file, Bundled.catalogue()));
    Rules rules =
        new Rules(
            kinds,
            taking.of(fallFile, Bundled.fallRules(fall), DataReader::fallRules),
            taking.of(limits, Bundled.limits(), file -> DataReader.limits(file, Bundled.limits())),
            taking.of(priors, Bundled.priors(), file -> DataReader.priors(file, Bundled.priors())),
            taking.of(grades, Bundled.grades(), file -> DataReader.grades(file, kinds)),
            taking.of(urgency, Bundled.urgency(), DataReader::urgency),
            Bundled.causes(),
            taking.of(holds, Bundled.holdLimits(), DataReader::holdLimits),
            taking.of(flow, Bundled.flow(), DataReader::flow),
            taking.of(frost, Bundled.frost(), DataReader::frost));
    CodeTable letters = this.letters ? CodeTable.letters(kinds) : CodeTable.NONE;
    CodeTable called = taking.of(codes, letters, file -> DataReader.codes(file, kinds));
    Letterhead letter =
        taking.of(letterhead, Letterhead.NONE, file -> DataReader.letterhead(file, kinds));
    Sender sender = taking.sender(letterhead, letter);
    return new Gathered(rules, called, sender, taking.sound, taking.complaints);
  }

  /** Takes files one after the other and keeps what is said of them. */
  private static final class Taking {
    private final List<Complaint> complaints = new ArrayList<>();
    private boolean sound = true;

    /** What a file holds; the usual where there is none, or where it cannot be used. */
    <T> T of(@Nullable Path file, T usual, Function<Path, ReadData<T>> reader) {
      if (file == null) {
        return usual;
      }
      ReadData<T> read = reader.apply(file);
      complaints.addAll(read.complaints());
      T value = read.value();
      sound &= value != null;
      return value == null ? usual : value;
    }

    /** A letterhead with its logo; a logo that cannot be shown is told and left out. */
    Sender sender(@Nullable Path file, Letterhead letterhead) {
      String logo = letterhead.logo();
      if (file == null || logo == null) {
        return new Sender(letterhead, null);
      }
      Logo.Read read = Logo.read(file, logo);
      complaints.addAll(read.complaints());
      return new Sender(letterhead, read.picture());
    }
  }
}
