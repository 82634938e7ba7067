package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.bytedeco.ffmpeg.global.avutil.av_image_copy_to_buffer;
import static org.bytedeco.ffmpeg.global.avutil.av_image_get_buffer_size;

import daylight.footage.Frame;
import daylight.footage.Recording;
import daylight.footage.Watch;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.BytePointer;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Reference: the library's own program, which decodes from the beginning and counts. A frame asked
 * for out of order must be the same bytes.
 */
class ExactFrameTest {
  private static final int ASKED = 12;

  @TempDir static Path folder = Path.of("");

  @ParameterizedTest
  @EnumSource(Sample.class)
  void framesAreThoseTheProgramCounts(Sample sample) throws IOException {
    Path film = sample.in(folder);
    try (Footage footage = Films.opened(film)) {
      List<Integer> mixed = mixed(footage.times().count());
      Map<Integer, byte[]> ours = new HashMap<>();
      for (int number : mixed) {
        ours.put(number, bytes(footage.decoded(number).orElseThrow()));
      }
      ByteArrayOutputStream rising = new ByteArrayOutputStream();
      for (int number : mixed.stream().sorted().toList()) {
        rising.write(ours.get(number));
      }

      assertThat(rising.toByteArray()).isEqualTo(theirs(film, mixed));
    }
  }

  /** As the counter is looked for; what follows a frame that was reached so is exact, too. */
  @ParameterizedTest
  @EnumSource(Sample.class)
  void framesFarApartAreThoseTheProgramCounts(Sample sample) throws IOException {
    Path film = sample.in(folder);
    try (Footage footage = Films.opened(film)) {
      Map<Integer, byte[]> ours = new TreeMap<>();
      for (int number : footage.waypoints(ASKED)) {
        ours.put(number, bytes(footage.leapt(number).orElseThrow()));
        int next = Math.min(number + 1, footage.times().count() - 1);
        ours.put(next, bytes(footage.decoded(next).orElseThrow()));
      }
      ByteArrayOutputStream rising = new ByteArrayOutputStream();
      for (byte[] frame : ours.values()) {
        rising.write(frame);
      }

      assertThat(rising.toByteArray()).isEqualTo(theirs(film, List.copyOf(ours.keySet())));
    }
  }

  @ParameterizedTest
  @EnumSource(Sample.class)
  void figuresAreThoseTheProgramFinds(Sample sample) throws IOException {
    Path film = sample.in(folder);
    try (Footage footage = Films.opened(film)) {
      Recording recording = footage.recording();
      String[] found = Program.probe(film, "stream=width,height,nb_read_frames").split(",", -1);

      assertThat(recording.width()).isEqualTo(Integer.parseInt(found[0]));
      assertThat(recording.height()).isEqualTo(Integer.parseInt(found[1]));
      assertThat(recording.frames()).isEqualTo(Integer.parseInt(found[2]));
      assertThat(recording.seconds()).isCloseTo(sample.seconds(), within(0.045));
    }
  }

  /** The number burned into the picture is the number asked for, from where the film begins. */
  @ParameterizedTest
  @EnumSource(Sample.class)
  void framesShowTheNumberBurnedIntoThem(Sample sample) throws IOException {
    Path film = sample.in(folder);
    List<Integer> numbers = new ArrayList<>();
    List<Integer> shown = new ArrayList<>();
    try (Footage footage = Films.opened(film)) {
      List<Integer> mixed = mixed(footage.times().count());
      boolean all = footage.sweep(mixed, Watch.NOBODY, frame -> note(frame, numbers, shown));
      int first = TestFilm.number(footage.frame(0).orElseThrow().raster());

      assertThat(all).isTrue();
      assertThat(numbers).isEqualTo(mixed.stream().sorted().toList());
      assertThat(shown).isEqualTo(numbers.stream().map(number -> first + number).toList());
    }
  }

  private static void note(Frame frame, List<Integer> numbers, List<Integer> shown) {
    numbers.add(frame.number());
    shown.add(TestFilm.number(frame.raster()));
  }

  /** Spread over the film, and in no order: strides of a number without common divisor. */
  private static List<Integer> mixed(int count) {
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < ASKED; i++) {
      numbers.add((int) ((i * 7L + 3) % ASKED * (count - 1) / (ASKED - 1)));
    }
    return numbers.stream().distinct().toList();
  }

  private static byte[] theirs(Path film, List<Integer> numbers) throws IOException {
    String chosen =
        numbers.stream().map(number -> "eq(n\\," + number + ")").collect(Collectors.joining("+"));
    return Program.ffmpeg(
        "-i",
        film.toString(),
        "-map",
        "0:v:0",
        "-vf",
        "select=" + chosen,
        "-fps_mode",
        "passthrough",
        "-f",
        "rawvideo",
        "-");
  }

  private static byte[] bytes(AVFrame frame) {
    int size = av_image_get_buffer_size(frame.format(), frame.width(), frame.height(), 1);
    byte[] bytes = new byte[size];
    try (BytePointer buffer = new BytePointer(size)) {
      av_image_copy_to_buffer(
          buffer,
          size,
          frame.data(),
          frame.linesize(),
          frame.format(),
          frame.width(),
          frame.height(),
          1);
      buffer.get(bytes);
    }
    return bytes;
  }
}
