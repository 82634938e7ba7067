package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avutil.AV_LOG_QUIET;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_free;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_set;
import static org.bytedeco.ffmpeg.global.avutil.av_log_set_level;
import static org.bytedeco.ffmpeg.global.avutil.av_max_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_strerror;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.javacpp.Pointer;
import org.jspecify.annotations.Nullable;

/** The manners of the native library: silence, error numbers, dictionaries, names of files. */
final class Native {
  private static final int LONGEST_MESSAGE = 256;
  private static final long MOST_BYTES = 1L << 30;

  private Native() {}

  /**
   * To be called before anything else: the library prints nothing from then on, and no file can
   * make it take more memory at once than a few of the largest pictures need.
   */
  static void ready() {
    av_log_set_level(AV_LOG_QUIET);
    av_max_alloc(MOST_BYTES);
  }

  /** Passes on what is not an error. */
  static int check(int result, String doing) throws IOException {
    if (result < 0) {
      throw new IOException(doing + ": " + message(result));
    }
    return result;
  }

  /** Passes on what was made. */
  static <P extends Pointer> P made(@Nullable P pointer, String what) throws IOException {
    if (pointer == null || pointer.isNull()) {
      throw new IOException("no memory for " + what);
    }
    return pointer;
  }

  static String message(int error) {
    byte[] text = new byte[LONGEST_MESSAGE];
    av_strerror(error, text, text.length);
    int end = 0;
    while (end < text.length && text[end] != 0) {
      end++;
    }
    return new String(text, 0, end, StandardCharsets.UTF_8);
  }

  /** A file by a name that is never taken for another protocol, whatever it is called. */
  static String url(Path file) {
    return "file:" + file.toAbsolutePath();
  }

  /** What can be done with options that are freed afterwards. */
  interface WithOptions {
    int apply(AVDictionary options) throws IOException;
  }

  static int withOptions(Map<String, String> options, WithOptions work) throws IOException {
    AVDictionary dictionary = new AVDictionary(null);
    try {
      options.entrySet().stream()
          .sorted(Map.Entry.comparingByKey())
          .forEach(one -> av_dict_set(dictionary, one.getKey(), one.getValue(), 0));
      return work.apply(dictionary);
    } finally {
      av_dict_free(dictionary);
    }
  }
}
