package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.Progress;
import daylight.archive.ReadBook;
import daylight.footage.Chapter;
import daylight.footage.Writ;
import daylight.footage.codec.Footage;
import daylight.footage.counter.Found;
import daylight.line.book.Finding;
import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import daylight.line.measure.Shown;
import daylight.report.captions.Counted;
import daylight.report.captions.Cue;
import daylight.report.captions.DistanceCaptions;
import daylight.report.captions.DistanceChapters;
import daylight.report.captions.FindingChapters;
import daylight.report.captions.WebVtt;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Chapters and captions of a recording. */
@Command(
    name = "chapters",
    mixinStandardHelpOptions = true,
    description = {
      "Chapters of a recording: with a book one for each finding that it shows, else by the distance",
      "its own counter shows, with rests, the furthest point and a counter set anew. They are printed,",
      "written as WebVTT, or put into an MP4 copy without writing a picture anew. The copy takes",
      "pictures and sound along and nothing else: no place, day or device. Captions say the distance",
      "as it runs; what was bridged or is not known says so."
    })
final class Chapters implements Callable<Integer> {
  private static final double TEN_FEET = 3.048;
  private static final double THREE_METRES = 3;

  @Mixin private Video video = new Video();
  @Mixin private Target target = new Target();

  @Option(names = "--book", paramLabel = "BOOK", description = "The field book that names VIDEO.")
  private @Nullable Path book;

  @Option(
      names = "--every",
      paramLabel = "DISTANCE",
      description = "Without a book, a chapter every so far; default: 10 ft or 3 m.")
  private @Nullable String every;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "Feet-inches, feet or metres; default: as the book, else as the counter.")
  private Choices.@Nullable UnitsWord units;

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description = "Write the chapters as FILE.vtt, or a copy with them as FILE.mp4; or both.")
  private List<Path> files = new ArrayList<>();

  @Option(
      names = "--captions",
      paramLabel = "FILE",
      description = "Write the captions as FILE.vtt.")
  private @Nullable Path captions;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    VideoConsole console = VideoConsole.of(spec, video.json());
    String wrong = wrong(console);
    Given given = new Given();
    Reading step = given.positiveLength("--every", every);
    if (wrong == null && !given.sound()) {
      wrong = console.wrong(given.wrong().getFirst());
    }
    if (wrong != null) {
      return console.misunderstood(wrong);
    }
    if (book == null) {
      return video.open(console, footage -> make(footage, console, null, step));
    }
    ReadBook read = BookInFilm.read(book);
    if (!read.sound() || read.book() == null) {
      return console.refused(read.complaints(), BookInFilm.shown(read.book()));
    }
    Optional<BookInFilm> told = BookInFilm.of(read.book(), book, video.file());
    return told.isEmpty()
        ? console.misunderstood(
            console.say(
                "cli.book.other", Given.text(book.toString()), Given.text(video.file().toString())))
        : video.open(console, footage -> make(footage, console, told.get(), step));
  }

  private @Nullable String wrong(VideoConsole console) {
    for (Path file : files) {
      String wrong = target.wrong(console, "--to", file, video.file(), List.of("vtt", "mp4"));
      if (wrong != null) {
        return wrong;
      }
    }
    return captions == null
        ? null
        : target.wrong(console, "--captions", captions, video.file(), List.of("vtt"));
  }

  private int make(
      Footage footage, VideoConsole console, @Nullable BookInFilm told, @Nullable Reading step)
      throws IOException {
    return video.counter(
        footage,
        console,
        found -> write(footage, console, told, counted(found, footage), shown(told, found), step),
        none ->
            told == null || captions != null
                ? console.noCounter(video.file(), none.why())
                : write(footage, console, told, null, shown(told, null), step));
  }

  /** A counter as what is written beside a recording needs it. */
  static Counted counted(Found.Counter found, Footage footage) {
    return new Counted(
        found.track(""),
        Set.copyOf(found.leaps()),
        found.metresPerStep(),
        footage.recording().seconds());
  }

  private Shown shown(@Nullable BookInFilm told, Found.@Nullable Counter counter) {
    if (units != null) {
      return units.shown();
    }
    return told != null || counter == null
        ? BookInFilm.shown(told == null ? null : told.book())
        : CounterConsole.shown(counter);
  }

  private int write(
      Footage footage,
      VideoConsole console,
      @Nullable BookInFilm told,
      @Nullable Counted counted,
      Shown shown,
      @Nullable Reading step)
      throws IOException {
    Words words = Words.of(Language.EN, shown);
    double seconds = footage.recording().seconds();
    List<Cue> chapters = new ArrayList<>();
    List<Cue> spoken = counted == null ? List.of() : DistanceCaptions.of(counted, words);
    List<String> unseen = List.of();
    if (told != null) {
      BookInFilm.Told findings = told.findings(counted);
      chapters.addAll(FindingChapters.chapters(findings.seen(), told.entry(), seconds, words));
      spoken = joined(spoken, FindingChapters.captions(findings.seen(), seconds, words));
      unseen = findings.unseen().stream().map(Finding::label).toList();
    } else if (counted != null) {
      double usual = shown == Shown.METRES ? THREE_METRES : TEN_FEET;
      chapters.addAll(DistanceChapters.of(counted, step == null ? usual : step.value(), words));
    }
    String note = note(told, words);
    // The copy first: it is the only one that may be refused.
    for (Path file : files) {
      if (Target.ending(file).equals("mp4")) {
        Writ writ =
            footage.chaptered(
                file,
                chapters.stream().map(c -> new Chapter(c.from(), c.to(), c.text())).toList(),
                console.begin(Progress.Step.COPYING, video.file()));
        if (!(writ instanceof Writ.Written)) {
          return console.notWritten(video.file(), writ);
        }
      }
    }
    for (Path file : files) {
      if (Target.ending(file).equals("vtt")) {
        Target.write(file, WebVtt.write(chapters, note).getBytes(StandardCharsets.UTF_8));
      }
    }
    if (captions != null) {
      Target.write(captions, WebVtt.write(spoken, note).getBytes(StandardCharsets.UTF_8));
    }
    return tell(console, chapters, unseen);
  }

  private static List<Cue> joined(List<Cue> distances, List<Cue> findings) {
    List<Cue> all = new ArrayList<>(distances);
    all.addAll(findings);
    // The order of cues in the standard: of those that begin together the longest first.
    all.sort(
        Comparator.comparingDouble(Cue::from)
            .thenComparing(Comparator.comparingDouble(Cue::to).reversed()));
    return all;
  }

  private static String note(@Nullable BookInFilm told, Words words) {
    String made = words.word("caption.note");
    return told != null && told.book().site().invented()
        ? made + " " + words.word("cli.invented")
        : made;
  }

  private int tell(VideoConsole console, List<Cue> chapters, List<String> unseen) {
    List<Path> written = new ArrayList<>(files);
    if (captions != null) {
      written.add(captions);
    }
    if (console.json()) {
      ObjectNode reply = VideoConsole.reply("chapters");
      ArrayNode list = reply.putArray("chapters");
      for (Cue chapter : chapters) {
        list.addObject()
            .put("from", chapter.from())
            .put("to", chapter.to())
            .put("title", chapter.text());
      }
      ArrayNode without = reply.putArray("not-shown");
      unseen.forEach(without::add);
      ArrayNode names = reply.putArray("files");
      written.forEach(file -> names.add(file.toString()));
      return console.object(reply);
    }
    for (Cue chapter : chapters) {
      console.line(VideoConsole.clock(chapter.from()) + "  " + chapter.text());
    }
    if (!unseen.isEmpty()) {
      console.line(
          console.say(
              "cli.chapters.unseen",
              new Argument.Several(unseen.stream().<Argument>map(Argument.Label::new).toList())));
    }
    written.forEach(file -> console.line(file.toString()));
    return ExitCode.DONE;
  }
}
