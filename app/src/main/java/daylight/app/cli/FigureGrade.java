package daylight.app.cli;

import daylight.archive.Bundled;
import daylight.archive.DataReader;
import daylight.line.book.Catalogue;
import daylight.line.book.Priors;
import daylight.line.condition.Condition;
import daylight.line.condition.FindingGrade;
import daylight.line.condition.GradeScheme;
import daylight.line.condition.Immediate;
import daylight.line.condition.Lack;
import daylight.line.condition.Seen;
import daylight.line.condition.Verdict;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** How bad one finding is, by a published scheme. */
@Command(
    name = "grade",
    mixinStandardHelpOptions = true,
    description = {
      "How bad one finding is, by a published scheme.",
      "",
      "Its class for structure and for operation, from 1, at once, to 5, with other works; the limit",
      "that decided and its source; and whether it calls for action at once apart from that. A value",
      "right on a limit counts for the worse class. KIND is the name of a kind in the catalogue, as",
      "crack, or its words, as joint-offset. Leaves with 1 where something more must be known."
    })
final class FigureGrade implements Callable<Integer> {
  @Mixin private FigureChoices choices = new FigureChoices();

  @Mixin private GradeSizes sizes = new GradeSizes();

  @Parameters(paramLabel = "KIND", description = "The kind of finding.")
  private String kind = "";

  @Option(names = "--bore", paramLabel = "LENGTH", description = "Inside diameter of the pipe.")
  private @Nullable String bore;

  @Option(
      names = "--give-or-take",
      paramLabel = "SIZE",
      description = "How far off the size may be, 19 times of 20; default: not said.")
  private @Nullable String giveOrTake;

  @Option(
      names = "--grades",
      paramLabel = "FILE",
      description = "A table of grades of your own in place of that of Daylight.")
  private @Nullable Path grades;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    Given given = choices.given();
    Figured figured = figured(given, choices.priors(given));
    FigureConsole console = choices.console(spec, given);
    return figured == null || !given.sound() ? console.misunderstood() : console.say(figured);
  }

  private @Nullable Figured figured(Given given, Priors priors) {
    Catalogue catalogue = Bundled.catalogue();
    GradeScheme scheme = scheme(given, catalogue);
    Catalogue.Kind known = KindWritten.of(given, catalogue, kind);
    Map<String, Reading> readings = new LinkedHashMap<>();
    Map<String, String> words = new LinkedHashMap<>();
    if (known != null) {
      for (Map.Entry<String, GradeSizes.Written> one : sizes.written(given).entrySet()) {
        read(given, known, one.getKey(), one.getValue(), readings, words);
      }
      doubt(given, known, readings);
    }
    Reading inside = given.positiveLength("--bore", bore);
    if (known == null || !given.sound()) {
      return null;
    }
    Condition condition = new Condition(scheme, catalogue);
    Seen seen = Seen.of(known.id(), readings, words, inside == null ? null : inside.value());
    Seen usual = seen.withUsualDoubt(priors);
    FindingGrade grade = condition.grade(usual);
    if (inside != null) {
      higher(given, grade, inside.value());
    }
    return new GradeTold(condition, inside, !usual.equals(seen)).figured(grade);
  }

  private GradeScheme scheme(Given given, Catalogue catalogue) {
    Path own = grades;
    return own == null
        ? Bundled.grades()
        : FigureChoices.taken(
            given, "--grades", DataReader.grades(own, catalogue), Bundled.grades());
  }

  private static void read(
      Given given,
      Catalogue.Kind kind,
      String name,
      GradeSizes.Written written,
      Map<String, Reading> readings,
      Map<String, String> words) {
    Dimension dimension = kind.quantities().get(name);
    if (dimension != null) {
      Reading reading = given.quantity(dimension, written.option(), written.text());
      if (reading != null && reading.value() < 0) {
        given.complain(written.option(), "cli.option.negative", Given.text(reading.written()));
      } else if (reading != null) {
        readings.put(name, reading);
      }
    } else if (kind.words().contains(name)) {
      words.put(name, written.text());
    } else {
      List<Argument> has = new ArrayList<>();
      kind.quantities().keySet().forEach(each -> has.add(Given.text(GradeSizes.option(each))));
      kind.words().forEach(each -> has.add(Given.text(GradeSizes.option(each))));
      given.complain(
          written.option(),
          "figure.grade.not-of-kind",
          new Argument.Term("kind." + kind.id()),
          new Argument.Several(has));
    }
  }

  /** Gives the one size that was written the doubt that was written. */
  private void doubt(Given given, Catalogue.Kind kind, Map<String, Reading> readings) {
    if (giveOrTake == null) {
      return;
    }
    if (readings.size() != 1) {
      given.complain(
          "--give-or-take", "figure.grade.which-size", new Argument.Number(readings.size()));
      return;
    }
    String name = readings.keySet().iterator().next();
    Dimension dimension = kind.quantities().getOrDefault(name, Dimension.LENGTH);
    Reading off =
        given.positive("--give-or-take", given.quantity(dimension, "--give-or-take", giveOrTake));
    Reading size = readings.get(name);
    if (off != null && size != null) {
      readings.put(name, size.withSd(given.sd(off, off.value())));
    }
  }

  private static void higher(Given given, FindingGrade grade, double inside) {
    List<Lack> lacks = new ArrayList<>();
    for (Verdict verdict : grade.verdicts().values()) {
      if (verdict instanceof Verdict.CannotSay(List<Lack> some)) {
        lacks.addAll(some);
      }
    }
    if (grade.immediate() instanceof Immediate.Open(List<Lack> some)) {
      lacks.addAll(some);
    }
    lacks.stream()
        .filter(lack -> lack.why() == Lack.Why.HIGHER_THAN_BORE)
        .map(Lack::name)
        .distinct()
        .forEach(
            name ->
                given.complain(
                    GradeSizes.option(name), "figure.grade.higher", new Argument.Bore(inside)));
  }
}
