package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avformat.av_guess_format;

import daylight.footage.Make;
import java.io.IOException;
import java.util.Optional;
import org.bytedeco.ffmpeg.avformat.AVOutputFormat;
import org.jspecify.annotations.Nullable;

/**
 * What is heard in a copy.
 *
 * @param sound null for silence
 */
record Heard(@Nullable Sound sound) implements AutoCloseable {
  static final Heard NOTHING = new Heard(null);

  /** The sound of an input from a moment on; the input is taken over. */
  static Heard of(Input input, double seconds) {
    return new Heard(Sound.of(input, seconds).orElse(null));
  }

  /** What the container of a make cannot hold, in plain words; empty where it can. */
  Optional<String> unfit(Make make) throws IOException {
    if (sound == null) {
      return Optional.empty();
    }
    AVOutputFormat format =
        Native.made(av_guess_format(Recipe.of(make).muxer(), null, null), make.extension());
    return sound.fits(format) ? Optional.empty() : Optional.of(CodecWords.of(sound.parameters()));
  }

  @Override
  public void close() {
    if (sound != null) {
      sound.close();
    }
  }
}
