package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.BookInFilm;
import daylight.app.FilmText;
import daylight.app.Progress;
import daylight.footage.Chapter;
import daylight.footage.Writ;
import daylight.footage.codec.Footage;
import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import daylight.line.measure.Shown;
import daylight.report.captions.Counted;
import daylight.report.captions.Cue;
import daylight.report.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
  @Mixin private ByBook byBook = new ByBook();

  @Option(
      names = "--every",
      paramLabel = "DISTANCE",
      description = "Without a book, a chapter every so far; default: 10 ft or 3 m.")
  private @Nullable String every;

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
    return byBook.open(
        console,
        video,
        wrong(console),
        every,
        (footage, told, step) -> make(footage, console, told, step));
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
    double seconds = footage.recording().seconds();
    return video.counter(
        footage,
        console,
        found -> {
          Counted counted = ByBook.counted(found, footage, told);
          Shown shown = byBook.shown(told, found);
          Words words = Words.of(console.words().language(), shown);
          double usual = shown == Shown.METRES ? THREE_METRES : TEN_FEET;
          return write(
              footage,
              console,
              told == null
                  ? FilmText.of(counted, step == null ? usual : step.value(), words)
                  : FilmText.of(told, counted, seconds, words));
        },
        none -> {
          Words words = Words.of(console.words().language(), byBook.shown(told, null));
          return told == null || captions != null
              ? console.noCounter(video.file(), none.why())
              : write(footage, console, FilmText.of(told, null, seconds, words));
        });
  }

  private int write(Footage footage, VideoConsole console, FilmText text) throws IOException {
    // The copy first: it is the only one that may be refused.
    for (Path file : files) {
      if (Target.ending(file).equals("mp4")) {
        Writ writ =
            footage.chaptered(
                file,
                text.chapters().stream().map(c -> new Chapter(c.from(), c.to(), c.text())).toList(),
                console.begin(Progress.Step.COPYING, video.file()));
        if (!(writ instanceof Writ.Written)) {
          return console.notWritten(video.file(), writ);
        }
      }
    }
    for (Path file : files) {
      if (Target.ending(file).equals("vtt")) {
        Target.write(file, text.chapterFile().getBytes(StandardCharsets.UTF_8));
      }
    }
    if (captions != null) {
      Target.write(captions, text.captionFile().getBytes(StandardCharsets.UTF_8));
    }
    return tell(console, text.chapters(), text.unseen());
  }

  private int tell(VideoConsole console, List<Cue> chapters, List<String> unseen) {
    List<Path> written = new ArrayList<>(files);
    if (captions != null) {
      written.add(captions);
    }
    if (console.json()) {
      ObjectNode reply = JsonReply.reply("chapters");
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
