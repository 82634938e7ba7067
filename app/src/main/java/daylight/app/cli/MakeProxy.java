package daylight.app.cli;

import daylight.app.Progress;
import daylight.footage.Make;
import daylight.footage.Writ;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A copy that every browser plays. */
@Command(
    name = "proxy",
    mixinStandardHelpOptions = true,
    description = {
      "A copy of a recording that every browser plays and seeks in, whatever the recording is: the",
      "same frames at the same times, without place, day or device. Its sound goes along where the",
      "file can hold it as it is, and is left out where not, which is said. It is for looking, not for",
      "giving away: for that there is copy. The recording is only read."
    })
final class MakeProxy implements Callable<Integer> {
  @Mixin private Video video = new Video();
  @Mixin private Target target = new Target();

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description =
          "Where to: FILE.webm or FILE.mp4; default: the name with -proxy.webm, beside it.")
  private @Nullable Path to;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    VideoConsole console = VideoConsole.of(spec, video.json());
    Path file = to == null ? video.beside("-proxy.webm") : to;
    String wrong = target.wrong(console, "--to", file, video.file(), List.of("webm", "mp4"));
    if (wrong != null) {
      return console.misunderstood(wrong);
    }
    return video.open(
        console,
        footage -> {
          Optional<String> unfit = footage.unfitSound(make(file));
          boolean sound = footage.recording().sound() && unfit.isEmpty();
          Writ writ =
              footage.copy(
                  file, make(file), 0, sound, console.begin(Progress.Step.COPYING, video.file()));
          return writ instanceof Writ.Written
              ? console.proxied(file, footage.recording(), unfit.orElse(null))
              : console.notWritten(video.file(), writ);
        });
  }

  /** What a file of that name is. */
  static Make make(Path file) {
    return Target.ending(file).equals("mp4") ? Make.VP9_MP4 : Make.VP9_WEBM;
  }
}
