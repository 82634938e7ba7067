package daylight.app.cli;

import daylight.archive.Bundled;
import daylight.archive.DataReader;
import daylight.archive.FieldBookReader;
import daylight.archive.NetworkReader;
import daylight.archive.ReadBook;
import daylight.archive.ReadData;
import daylight.archive.ReadNetwork;
import daylight.line.book.FieldBook;
import daylight.line.book.Priors;
import daylight.line.measure.Complaint;
import daylight.line.measure.Gravity;
import daylight.line.measure.Shown;
import daylight.line.measure.Unit;
import daylight.line.survey.Adjustment;
import daylight.line.survey.Survey;
import daylight.line.survey.Surveyor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The plane network of a field book, or one that stands by itself, adjusted. */
@Command(
    name = "ties",
    mixinStandardHelpOptions = true,
    description = {
      "Where landmarks and located spots lie on the ground, from the ties of a field book: every",
      "point with its uncertainty, every tie with what the others say of it, how large a mistake",
      "would have to be to show, what does not fit and how it may have come about, and which points",
      "could lie on either side.",
      "",
      "With --network a network by itself, in the format of docs/network.md: fixed and approximate",
      "points, distances, angles, directions, azimuths, differences of coordinates, coordinates and",
      "satellite fixes with their covariance. Nothing of it is set aside unless you say so."
    })
final class FigureTies implements Callable<Integer> {
  @Parameters(
      arity = "0..1",
      paramLabel = "BOOK",
      description = "A field book, or a folder that holds field-book.yaml.")
  private @Nullable Path book;

  @Option(
      names = "--network",
      paramLabel = "FILE",
      description = "A network by itself in place of a book.")
  private @Nullable Path network;

  @Option(
      names = "--set-aside",
      description = "Leave out of the result what does not fit the rest of the network.")
  private boolean setAside;

  @Option(
      names = "--priors",
      paramLabel = "FILE",
      description = "Your own figures for how good each kind of measurement is.")
  private @Nullable Path priors;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "Show distances in feet-inches, feet or metres; default: as they were written.")
  private Manner.@Nullable UnitsWord units;

  @Option(names = "--json", description = "Print one JSON object instead of sentences.")
  private boolean json;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    Console console = Console.of(spec, json);
    Path lone = network;
    Path given = book;
    if ((lone == null) == (given == null)) {
      return console.misunderstood("give a field book or --network FILE, and not both");
    }
    return lone != null ? network(console, lone) : given == null ? 0 : book(console, given);
  }

  private int network(Console console, Path file) {
    ReadData<ReadNetwork> read = NetworkReader.read(file, setAside);
    ReadNetwork found = read.value();
    if (found == null) {
      return console.refused(read.complaints(), shown(Unit.METRE));
    }
    Adjustment plan = Surveyor.adjust(found.network());
    var report =
        new TiesReport(
            found.network(), plan, Surveyor.doubts(found.network(), plan, found.written()));
    return console.ties(report, read.complaints(), shown(Unit.METRE));
  }

  private int book(Console console, Path given) {
    Path file = Files.isDirectory(given) ? given.resolve("field-book.yaml") : given;
    ReadBook read = FieldBookReader.read(file, Bundled.catalogue());
    List<Complaint> complaints = new ArrayList<>(read.complaints());
    Priors believed = Bundled.priors();
    Path own = priors;
    if (own != null) {
      ReadData<Priors> data = DataReader.priors(own, believed);
      complaints.addAll(data.complaints());
      believed = data.value();
    }
    FieldBook found = read.book();
    boolean stopped = complaints.stream().anyMatch(c -> c.code().gravity() == Gravity.STOPS);
    if (found == null || believed == null || stopped) {
      return console.refused(complaints, shown(found == null ? null : found.units().distance()));
    }
    Survey survey = Surveyor.survey(found, believed);
    var report = new TiesReport(survey.network(), survey.plan(), survey.doubts());
    return console.ties(report, complaints, shown(found.units().distance()));
  }

  private Shown shown(@Nullable Unit distance) {
    Manner.UnitsWord chosen = units;
    if (chosen != null) {
      return chosen.shown();
    }
    return distance == Unit.FOOT || distance == Unit.INCH ? Shown.FEET_INCHES : Shown.METRES;
  }
}
