package daylight.app.cli;

import daylight.app.Progress;
import daylight.footage.Writ;
import daylight.footage.codec.Footage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A copy to give away. */
@Command(
    name = "copy",
    mixinStandardHelpOptions = true,
    description = {
      "A copy of a recording to give away. It begins where the camera enters the pipe (the last frame",
      "at nothing before the counter runs out), is silent, and holds no place, day, device or other",
      "tag. Frames before its beginning are not in it. The recording is only read."
    })
final class MakeCopy implements Callable<Integer> {
  @Mixin private Video video = new Video();
  @Mixin private Target target = new Target();

  @Option(
      names = "--to",
      paramLabel = "FILE",
      required = true,
      description = "Where to: FILE.webm or FILE.mp4.")
  private Path to = Path.of("");

  @Option(
      names = "--from",
      paramLabel = "MOMENT",
      description = "Begin at this moment instead, as 1:02.5; 0 for the whole recording.")
  private @Nullable String from;

  @Option(
      names = "--sound",
      description = "With its sound as it is; default: silent. Rooms and voices are on it.")
  private boolean sound;

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    VideoConsole console = VideoConsole.of(spec, video.json());
    String wrong = target.wrong(console, "--to", to, video.file(), List.of("webm", "mp4"));
    return wrong != null
        ? console.misunderstood(wrong)
        : video.open(console, footage -> begin(footage, console));
  }

  private int begin(Footage footage, VideoConsole console) throws IOException {
    if (from != null) {
      OptionalInt frame = Moment.frame(footage.times(), from);
      return frame.isPresent()
          ? copy(footage, console, frame.getAsInt())
          : console.misunderstood(
              console.say(
                  "cli.copy.no_moment",
                  Given.text(from),
                  Given.text(VideoConsole.clock(footage.recording().seconds()))));
    }
    return video.counter(
        footage,
        console,
        counter -> {
          OptionalInt entry = StillAt.passages(counter).entry();
          return entry.isPresent()
              ? copy(footage, console, entry.getAsInt())
              : console.open(
                  "no-entry",
                  "no-entry",
                  console.say("cli.copy.no_entry", Given.text(video.file().toString())));
        });
  }

  private int copy(Footage footage, VideoConsole console, int frame) throws IOException {
    Writ writ =
        footage.copy(
            to,
            MakeProxy.make(to),
            frame,
            sound,
            console.begin(Progress.Step.COPYING, video.file()));
    return writ instanceof Writ.Written
        ? console.copied(to, footage.times().secondsOf(frame), footage.recording())
        : console.notWritten(video.file(), writ);
  }
}
