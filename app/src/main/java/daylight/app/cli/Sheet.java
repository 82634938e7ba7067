package daylight.app.cli;

import daylight.app.BookInFilm;
import daylight.app.PictureSheet;
import daylight.app.Progress;
import daylight.footage.codec.Footage;
import daylight.footage.counter.Found;
import daylight.line.measure.Argument;
import daylight.line.measure.Reading;
import daylight.line.measure.Shown;
import daylight.report.captions.Counted;
import daylight.report.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Small pictures along the line on one page. */
@Command(
    name = "sheet",
    mixinStandardHelpOptions = true,
    description = {
      "Small pictures along the line on one page that opens anywhere: one every so far by the counter",
      "of the recording, on the way out, and with a book one for each finding, marked by its label.",
      "Where the counter could not be read there is no picture, and that is said."
    })
final class Sheet implements Callable<Integer> {
  @Mixin private Video video = new Video();
  @Mixin private Target target = new Target();
  @Mixin private ByBook byBook = new ByBook();

  @Option(
      names = "--every",
      paramLabel = "DISTANCE",
      description = "A picture every so far; default: 5 ft or 1.5 m.")
  private @Nullable String every;

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description = "Where to: FILE.html; default: the name with -sheet.html, beside it.")
  private @Nullable Path to;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    VideoConsole console = VideoConsole.of(spec, video.json());
    Path file = to == null ? video.beside("-sheet.html") : to;
    return byBook.open(
        console,
        video,
        target.wrong(console, "--to", file, video.file(), List.of("html")),
        every,
        (footage, told, step) ->
            video.counter(
                footage, console, counter -> make(footage, console, file, told, counter, step)));
  }

  private int make(
      Footage footage,
      VideoConsole console,
      Path file,
      @Nullable BookInFilm told,
      Found.Counter counter,
      @Nullable Reading step)
      throws IOException {
    Shown shown = byBook.shown(told, counter);
    Words words = Words.of(console.words().language(), shown);
    Counted counted = ByBook.counted(counter, footage, told);
    return switch (PictureSheet.make(
        footage,
        counted,
        told,
        new PictureSheet.Manner(
            String.valueOf(video.file().getFileName()),
            step == null ? null : step.value(),
            0,
            counter.bare()),
        words,
        console.begin(Progress.Step.PICTURES, video.file()))) {
      case PictureSheet.Outcome.TooMany _ ->
          console.misunderstood(
              console.say("cli.sheet.many", new Argument.Count(PictureSheet.MOST)));
      case PictureSheet.Outcome.Stopped _ -> console.stopped();
      case PictureSheet.Outcome.Made(String page, int pictures) -> {
        Target.write(file, page.getBytes(StandardCharsets.UTF_8));
        yield console.sheet(file, pictures);
      }
    };
  }
}
