package daylight.footage.codec;

import static org.bytedeco.ffmpeg.global.avformat.AVPROBE_PADDING_SIZE;
import static org.bytedeco.ffmpeg.global.avformat.AVPROBE_SCORE_MAX;
import static org.bytedeco.ffmpeg.global.avformat.av_probe_input_format3;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.bytedeco.ffmpeg.avformat.AVInputFormat;
import org.bytedeco.ffmpeg.avformat.AVProbeData;
import org.bytedeco.javacpp.BytePointer;

/**
 * What a file is by its content. Its name is asked only where the content is too short to be sure,
 * and only to agree.
 *
 * @param format the library's reader of it
 * @param wrapping the container
 */
record Sniffed(AVInputFormat format, Wrapping wrapping) {
  private static final int LOOKED_AT = 1 << 20;
  private static final int LIKELY = AVPROBE_SCORE_MAX / 4;

  static Optional<Sniffed> of(Path file) throws IOException {
    byte[] start;
    try (InputStream in = Files.newInputStream(file)) {
      start = in.readNBytes(LOOKED_AT);
    }
    // The library looks a little beyond the bytes it is given.
    byte[] padded = Arrays.copyOf(start, start.length + AVPROBE_PADDING_SIZE);
    try (BytePointer bytes = new BytePointer(padded);
        BytePointer name = new BytePointer("");
        AVProbeData data = new AVProbeData()) {
      data.filename(name).buf(bytes).buf_size(start.length).mime_type(null);
      int[] score = new int[1];
      AVInputFormat format = av_probe_input_format3(data, 1, score);
      if (format == null || format.isNull()) {
        return Optional.empty();
      }
      return Wrapping.of(format.name().getString(), start)
          .filter(wrapping -> score[0] > LIKELY || wrapping.isEndedBy(ending(file)))
          .map(wrapping -> new Sniffed(format, wrapping));
    }
  }

  /** What the name of a file ends with after its last dot, in lower case. */
  static String ending(Path file) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return dot < 0 ? "" : name.substring(dot + 1).toLowerCase(Locale.ROOT);
  }
}
