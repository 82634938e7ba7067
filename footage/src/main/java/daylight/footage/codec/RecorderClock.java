package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.av_dict_get;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import org.bytedeco.ffmpeg.avutil.AVDictionaryEntry;

/**
 * What a recorder's own clock said when it wrote a file. Recorders are set wrong, and some write
 * when they ended instead of when they began: the figure is for comparing, not for relying on.
 */
public final class RecorderClock {
  private static final String WRITTEN = "creation_time";

  private RecorderClock() {}

  /** The time that a file says it was recorded at; empty where it says none that can be read. */
  public static Optional<Instant> of(Path file) {
    Native.ready();
    try {
      Optional<Sniffed> sniffed = Sniffed.of(file);
      if (sniffed.isEmpty()) {
        return Optional.empty();
      }
      try (Input input = Input.open(file, sniffed.get())) {
        AVDictionaryEntry entry = av_dict_get(input.context().metadata(), WRITTEN, null, 0);
        return entry == null ? Optional.empty() : read(entry.value().getString());
      }
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Optional<Instant> read(String text) {
    try {
      Instant time = Instant.parse(text);
      // A recorder that has no clock writes the beginning of its count.
      return time.isBefore(Instant.parse("2000-01-01T00:00:00Z"))
          ? Optional.empty()
          : Optional.of(time);
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
