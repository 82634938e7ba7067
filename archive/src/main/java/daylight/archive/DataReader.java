package daylight.archive;

import daylight.archive.form.CsvTree;
import daylight.archive.form.Desk;
import daylight.archive.form.Fields;
import daylight.archive.form.FormTrouble;
import daylight.archive.form.Section;
import daylight.archive.form.Tree;
import daylight.archive.form.TreeReader;
import daylight.line.answer.Rules;
import daylight.line.book.Catalogue;
import daylight.line.book.Letterhead;
import daylight.line.book.Priors;
import daylight.line.cause.CauseTable;
import daylight.line.cause.WordList;
import daylight.line.condition.CodeTable;
import daylight.line.condition.GradeScheme;
import daylight.line.fall.FallRules;
import daylight.line.flow.FlowTables;
import daylight.line.frost.FrostTables;
import daylight.line.measure.Argument;
import daylight.line.measure.Gravity;
import daylight.line.proving.HoldLimits;
import daylight.line.urgency.UrgencyTable;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Reads the data that come with their sources: priors, catalogue, tables of smallest slopes and of
 * grades. A company's own file may hold only what differs from a base.
 */
public final class DataReader {
  private static final String VERSION = "1";

  private DataReader() {}

  /**
   * Priors.
   *
   * @param base where rows come from that the file does not have; null when it must have all
   */
  public static ReadData<Priors> priors(String name, byte[] bytes, @Nullable Priors base) {
    return read(
        new Desk(name),
        bytes,
        DataShape.PRIORS,
        DataShape.PRIORS_KEY,
        fields -> PriorsReader.read(fields, base));
  }

  /** Priors in a file, over a base. */
  public static ReadData<Priors> priors(Path file, @Nullable Priors base) {
    return file(file, bytes -> priors(file.toString(), bytes, base));
  }

  /**
   * A catalogue.
   *
   * @param base the kinds to which the file adds, and of which it replaces those of the same id;
   *     null for none
   */
  public static ReadData<Catalogue> catalogue(String name, byte[] bytes, @Nullable Catalogue base) {
    return read(
        new Desk(name),
        bytes,
        DataShape.CATALOGUE,
        DataShape.CATALOGUE_KEY,
        fields -> CatalogueReader.read(fields, base));
  }

  /** A catalogue in a file, over a base. */
  public static ReadData<Catalogue> catalogue(Path file, @Nullable Catalogue base) {
    return file(file, bytes -> catalogue(file.toString(), bytes, base));
  }

  /** A table of smallest slopes. */
  public static ReadData<FallRules> fallRules(String name, byte[] bytes) {
    return read(
        new Desk(name),
        bytes,
        DataShape.FALL_RULES,
        DataShape.FALL_RULES_KEY,
        FallRulesReader::read);
  }

  /** A table of smallest slopes in a file. */
  public static ReadData<FallRules> fallRules(Path file) {
    return file(file, bytes -> fallRules(file.toString(), bytes));
  }

  /** A table of grades over the kinds of a catalogue. */
  public static ReadData<GradeScheme> grades(String name, byte[] bytes, Catalogue catalogue) {
    return read(
        new Desk(name),
        bytes,
        GradeShape.GRADES,
        GradeShape.GRADES_KEY,
        fields -> GradesReader.read(fields, catalogue));
  }

  /** A table of grades in a file. */
  public static ReadData<GradeScheme> grades(Path file, Catalogue catalogue) {
    return file(file, bytes -> grades(file.toString(), bytes, catalogue));
  }

  /** A table of urgency. */
  public static ReadData<UrgencyTable> urgency(String name, byte[] bytes) {
    return read(
        new Desk(name),
        bytes,
        UrgencyReader.URGENCY,
        UrgencyReader.URGENCY_KEY,
        UrgencyReader::read);
  }

  /** A table of urgency in a file. */
  public static ReadData<UrgencyTable> urgency(Path file) {
    return file(file, bytes -> urgency(file.toString(), bytes));
  }

  /** A table of causes over the kinds of a catalogue. */
  public static ReadData<CauseTable> causes(String name, byte[] bytes, Catalogue catalogue) {
    return read(
        new Desk(name),
        bytes,
        CauseShape.CAUSES,
        CauseShape.CAUSES_KEY,
        fields -> CausesReader.read(fields, catalogue));
  }

  /** By which words owners name each kind of complaint. */
  public static ReadData<WordList> complaintWords(String name, byte[] bytes) {
    return read(new Desk(name), bytes, CauseShape.WORDS, CauseShape.WORDS_KEY, CausesReader::words);
  }

  /** Thresholds of the judgement, over a base where a company sets only some. */
  public static ReadData<Rules.Limits> limits(
      String name, byte[] bytes, Rules.@Nullable Limits base) {
    return read(
        new Desk(name),
        bytes,
        DataShape.LIMITS,
        DataShape.LIMITS_KEY,
        fields -> LimitsReader.read(fields, base));
  }

  /** Thresholds in a file, over a base. */
  public static ReadData<Rules.Limits> limits(Path file, Rules.@Nullable Limits base) {
    return file(file, bytes -> limits(file.toString(), bytes, base));
  }

  /** Criteria for hold tests. */
  public static ReadData<HoldLimits> holdLimits(String name, byte[] bytes) {
    return read(
        new Desk(name),
        bytes,
        DataShape.HOLD_LIMITS,
        DataShape.HOLD_LIMITS_KEY,
        HoldLimitsReader::read);
  }

  /** Criteria for hold tests in a file. */
  public static ReadData<HoldLimits> holdLimits(Path file) {
    return file(file, bytes -> holdLimits(file.toString(), bytes));
  }

  /** A company's codes over the kinds of a catalogue, as comma-separated values. */
  public static ReadData<CodeTable> codes(String name, byte[] bytes, Catalogue catalogue) {
    Desk desk = new Desk(name);
    Tree.Keys keys = CsvTree.read(bytes, desk);
    if (keys == null) {
      return new ReadData<>(null, desk.complaints());
    }
    Path file = Path.of(name).getFileName();
    CodeTable table =
        CodesReader.read(
            new Fields(CodesReader.CODES, keys, "", desk), catalogue, String.valueOf(file));
    return taken(table, desk);
  }

  /** A company's codes in a file. */
  public static ReadData<CodeTable> codes(Path file, Catalogue catalogue) {
    return file(file, bytes -> codes(file.toString(), bytes, catalogue));
  }

  /** Whose report it is, with prices for the kinds of a catalogue. */
  public static ReadData<Letterhead> letterhead(String name, byte[] bytes, Catalogue catalogue) {
    return read(
        new Desk(name),
        bytes,
        LetterheadReader.LETTERHEAD,
        LetterheadReader.KEY,
        fields -> LetterheadReader.read(fields, catalogue));
  }

  /** The same in a file. */
  public static ReadData<Letterhead> letterhead(Path file, Catalogue catalogue) {
    return file(file, bytes -> letterhead(file.toString(), bytes, catalogue));
  }

  /** The tables that frost is worked out with. */
  public static ReadData<FrostTables> frost(String name, byte[] bytes) {
    return read(new Desk(name), bytes, FrostReader.FROST, FrostReader.KEY, FrostReader::read);
  }

  /** The same in a file. */
  public static ReadData<FrostTables> frost(Path file) {
    return file(file, bytes -> frost(file.toString(), bytes));
  }

  /** Figures of pipes. */
  public static ReadData<FlowTables> flow(String name, byte[] bytes) {
    return read(
        new Desk(name),
        bytes,
        FlowTablesReader.FLOW,
        FlowTablesReader.FLOW_KEY,
        FlowTablesReader::read);
  }

  /** Figures of pipes in a file. */
  public static ReadData<FlowTables> flow(Path file) {
    return file(file, bytes -> flow(file.toString(), bytes));
  }

  private static <T> ReadData<T> file(Path file, Function<byte[], ReadData<T>> reader) {
    Desk desk = new Desk(file.toString());
    byte[] bytes = FileBytes.read(file, desk);
    return bytes == null ? new ReadData<>(null, desk.complaints()) : reader.apply(bytes);
  }

  static <T> ReadData<T> read(
      Desk desk,
      byte[] bytes,
      Section section,
      String versionKey,
      Function<Fields, @Nullable T> reader) {
    Tree tree = TreeReader.read(bytes, desk);
    if (tree == null) {
      return new ReadData<>(null, desk.complaints());
    }
    if (!(tree instanceof Tree.Keys keys)) {
      Argument shape = new Argument.Term("form.shape.keys");
      desk.complain(FormTrouble.WRONG_SHAPE, tree.at(), "", shape);
      return new ReadData<>(null, desk.complaints());
    }
    Fields fields = new Fields(section, keys, "", desk);
    String version = fields.wantedWords(versionKey);
    if (fields.has(versionKey) && !version.equals(VERSION)) {
      fields.complain(
          FileTrouble.VERSION_UNKNOWN,
          versionKey,
          new Argument.Text(version),
          new Argument.Choices(List.of(VERSION)));
    }
    return taken(reader.apply(fields), desk);
  }

  private static <T> ReadData<T> taken(@Nullable T value, Desk desk) {
    boolean stopped = desk.complaints().stream().anyMatch(c -> c.code().gravity() == Gravity.STOPS);
    return new ReadData<>(stopped ? null : value, desk.complaints());
  }
}
