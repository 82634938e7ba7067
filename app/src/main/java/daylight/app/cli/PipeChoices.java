package daylight.app.cli;

import daylight.archive.Bundled;
import daylight.archive.DataReader;
import daylight.archive.form.Section;
import daylight.line.book.Material;
import daylight.line.book.Priors;
import daylight.line.flow.FlowTables;
import daylight.line.flow.FrictionLaw;
import daylight.line.flow.Roughness;
import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Measured;
import daylight.line.measure.Nearest;
import daylight.line.measure.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** A pipe as the calculations of flow take it: how wide, and how rough. */
final class PipeChoices {
  /** How far off a figure of a wall may be that was given without its doubt; common practice. */
  private static final double WALL_OFF = 0.05;

  /** How far off an inside diameter of a table may be; common practice. */
  private static final double SIZE_OFF = 0.005;

  @Option(names = "--bore", paramLabel = "LENGTH", description = "Inside diameter of the pipe.")
  private @Nullable String bore;

  @Option(
      names = "--bore-give-or-take",
      paramLabel = "LENGTH",
      description = "How far off the inside diameter may be, 19 times of 20.")
  private @Nullable String boreOff;

  @Option(
      names = "--size",
      paramLabel = "LENGTH",
      description = "The size the pipe is sold by, in place of --bore; with --series.")
  private @Nullable String size;

  @Option(
      names = "--series",
      paramLabel = "SERIES",
      description = "schedule-40, sdr-35, cast-iron-soil or clay.")
  private @Nullable String series;

  @Option(
      names = "--material",
      paramLabel = "MATERIAL",
      description = "What the pipe is made of, such as pvc, clay or cast-iron.")
  private @Nullable String material;

  @Option(
      names = "--state",
      paramLabel = "STATE",
      description = "How its wall is: new, used or bad; default: used.")
  private @Nullable String state;

  @Option(
      names = "--law",
      paramLabel = "LAW",
      description =
          "By which law a material rubs: manning for gravity, hazen-williams for pumps, or"
              + " darcy-weisbach for both.")
  private @Nullable String law;

  @Option(
      names = "--n",
      paramLabel = "NUMBER",
      description = "Manning's n, in place of --material.")
  private @Nullable String manning;

  @Option(
      names = "--c",
      paramLabel = "NUMBER",
      description = "Hazen and Williams' C, in place of --material.")
  private @Nullable String hazen;

  @Option(
      names = "--wall",
      paramLabel = "LENGTH",
      description = "Height of the wall's roughness, in place of --material.")
  private @Nullable String wall;

  @Option(
      names = "--flow-data",
      paramLabel = "FILE",
      description = "Figures of pipes of your own in place of those of Daylight.")
  private @Nullable Path data;

  /**
   * A pipe as it was given.
   *
   * @param bore inside diameter, metres
   * @param roughness of its wall
   * @param origins where figures of tables come from
   */
  record Pipe(Measured bore, Roughness roughness, List<FlowTables.Origin> origins) {
    Pipe {
      origins = List.copyOf(origins);
    }
  }

  FlowTables tables(Given given) {
    Path own = data;
    return own == null
        ? Bundled.flow()
        : FigureChoices.taken(given, "--flow-data", DataReader.flow(own), Bundled.flow());
  }

  /**
   * The pipe.
   *
   * @param laws those that will do, the usual one first
   * @return null where something is missing or wrong
   */
  @Nullable Pipe pipe(Given given, Priors priors, FlowTables tables, List<FrictionLaw> laws) {
    List<FlowTables.Origin> origins = new ArrayList<>();
    Measured inside = inside(given, priors, tables, origins);
    Roughness rough = roughness(given, tables, laws, origins);
    if (inside != null && rough != null && tooRough(rough, inside)) {
      given.complain("--wall", "figure.pipe.too-rough", Given.text(String.valueOf(wall)));
      return null;
    }
    return inside == null || rough == null ? null : new Pipe(inside, rough, origins);
  }

  /** Colebrook's formula was made of walls no rougher than a twentieth of the bore. */
  private static boolean tooRough(Roughness rough, Measured inside) {
    return rough.law() == FrictionLaw.DARCY_WEISBACH
        && rough.figure().value() > inside.value() / 20;
  }

  private @Nullable Measured inside(
      Given given, Priors priors, FlowTables tables, List<FlowTables.Origin> origins) {
    if ((bore == null) == (size == null)) {
      given.complain(bore == null ? "--bore" : "--size", "figure.pipe.one-bore");
    }
    Reading off = given.positiveLength("--bore-give-or-take", boreOff);
    Reading across = given.positiveLength("--bore", bore);
    Reading sold = given.positiveLength("--size", size);
    if (size != null || series != null) {
      given.need("--size", size);
      given.need("--series", series);
    }
    String named = series;
    if (across != null) {
      return new Measured(across.value(), given.sd(off, priors.sd(Priors.Kind.BORE, across)));
    }
    if (named == null) {
      return null;
    }
    if (!tables.series().contains(named)) {
      notAmong(given, "--series", named, tables.series());
      return null;
    }
    if (sold == null) {
      return null;
    }
    Optional<FlowTables.Bore> row = tables.bore(named, sold.value());
    if (row.isEmpty()) {
      List<Argument> sizes = new ArrayList<>();
      tables.bores().stream()
          .filter(one -> one.series().equals(named))
          .forEach(one -> sizes.add(new Argument.Bore(one.nominal())));
      given.complain(
          "--size",
          "figure.pipe.not-in-series",
          Given.text(sold.written()),
          Given.text(named),
          new Argument.Several(sizes));
      return null;
    }
    origins.add(row.get().origin());
    double within = row.get().inside();
    return new Measured(within, given.sd(off, SIZE_OFF * within));
  }

  private @Nullable Roughness roughness(
      Given given, FlowTables tables, List<FrictionLaw> laws, List<FlowTables.Origin> origins) {
    boolean manningDoes = laws.contains(FrictionLaw.MANNING);
    FrictionLaw other = manningDoes ? FrictionLaw.MANNING : FrictionLaw.HAZEN_WILLIAMS;
    String option = manningDoes ? "--n" : "--c";
    String wrong = manningDoes ? "--c" : "--n";
    if ((manningDoes ? hazen : manning) != null) {
      given.complain(wrong, "figure.pipe.wrong-law", new Argument.Term(other.key()));
    }
    String number = manningDoes ? manning : hazen;
    if ((number == null ? 0 : 1) + (wall == null ? 0 : 1) + (material == null ? 0 : 1) != 1) {
      given.complain("--material", "figure.pipe.one-wall", Given.text(option));
    }
    if (material == null && (state != null || law != null)) {
      given.complain(state == null ? "--law" : "--state", "figure.pipe.with-material");
    }
    Double figure = given.number(option, number, other.least(), other.most());
    Reading height = given.positiveLength("--wall", wall);
    FrictionLaw chosen = choice(given, "--law", law, laws);
    FlowTables.State how = choice(given, "--state", state, List.of(FlowTables.State.values()));
    Material made = choice(given, "--material", material, List.of(Material.values()));
    if (figure != null) {
      return new Roughness(other, new Measured(figure, WALL_OFF * figure));
    }
    if (height != null) {
      if (height.value() > FrictionLaw.DARCY_WEISBACH.most()) {
        given.complain("--wall", "figure.pipe.too-rough", Given.text(height.written()));
        return null;
      }
      double metres = height.value();
      return new Roughness(FrictionLaw.DARCY_WEISBACH, new Measured(metres, WALL_OFF * metres));
    }
    if (made == null) {
      return null;
    }
    FrictionLaw by = chosen == null ? laws.getFirst() : chosen;
    FlowTables.State as = how == null ? FlowTables.State.USED : how;
    Optional<FlowTables.Wall> row = tables.wall(made, as, by);
    if (row.isEmpty()) {
      given.complain("--material", "figure.pipe.no-wall", new Argument.Term(by.key()));
      return null;
    }
    origins.add(row.get().origin());
    return row.get().roughness();
  }

  private static <E extends Enum<E>> @Nullable E choice(
      Given given, String option, @Nullable String text, List<E> known) {
    if (text == null) {
      return null;
    }
    String word = text.strip().toLowerCase(Locale.ROOT);
    for (E one : known) {
      if (Section.word(one).equals(word)) {
        return one;
      }
    }
    List<String> words = new ArrayList<>();
    known.forEach(one -> words.add(Section.word(one)));
    notAmong(given, option, text, words);
    return null;
  }

  /** Complains that a text is none of the words known, the likeliest first. */
  static void notAmong(Given given, String option, String text, List<String> known) {
    List<String> choices = new ArrayList<>(known);
    Nearest.of(text, known)
        .ifPresent(
            near -> {
              choices.remove(near);
              choices.addFirst(near);
            });
    given.complain(option, "form.not-a-choice", Given.text(text), new Argument.Choices(choices));
  }

  /** A temperature of water in its range, or the usual one; null where wrong. */
  static @Nullable Double celsius(Given given, @Nullable String text, double usual) {
    Reading reading = given.quantity(Dimension.TEMPERATURE, "--temperature", text);
    if (text == null) {
      return usual;
    }
    if (reading != null && !(reading.value() >= 0 && reading.value() <= 100)) {
      given.complain("--temperature", "figure.pipe.frozen", Given.text(reading.written()));
      return null;
    }
    return reading == null ? null : Double.valueOf(reading.value());
  }
}
