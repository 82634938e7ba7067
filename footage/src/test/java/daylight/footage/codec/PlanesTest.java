package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.Watch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.javacpp.BytePointer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which recordings are believed without being decoded. That their frames are then the right ones is
 * shown by {@link ExactFrameTest}; here, that they are believed at all, and only they.
 */
class PlanesTest {
  private static final String LONG = "55".repeat(40);

  @TempDir static Path folder = Path.of("");

  @ParameterizedTest
  @CsvSource({
    "MPEG4_AVI, true",
    "MJPEG_AVI, true",
    "MPEG4_B_AVI, false",
    "MPEG4_PACKED_AVI, false",
    "MPEG4_B_MP4, false",
    "MPEG2_MPG, false",
    "H264_MP4, true"
  })
  void whatStandsInOrderNeedsNoDecoding(Sample sample, boolean told) throws IOException {
    Path film = sample.in(folder);

    try (Input input = Input.open(film, Sniffed.of(film).orElseThrow())) {
      assertThat(ToldIndex.of(input, Files.size(film), new Progress(Watch.NOBODY)).isPresent())
          .isEqualTo(told);
    }
  }

  /** Start codes of ISO/IEC 14496-2, from memory: B6 a plane, 20 a layer, B3 a group. */
  @Test
  void onePlaneCodedFromBeforeIsOnePicture() {
    assertThat(inOrder("000001B610" + LONG)).isTrue();
    assertThat(inOrder("000001B650" + LONG)).isTrue();
    assertThat(inOrder("000001200080000001B3000001B610" + LONG)).isTrue();
    assertThat(inOrder("000001B690" + LONG)).as("from both sides").isFalse();
    assertThat(inOrder("000001B610" + LONG + "000001B690" + LONG)).as("two").isFalse();
    assertThat(inOrder("000001B65000")).as("not coded").isFalse();
    assertThat(inOrder(LONG)).as("none").isFalse();
  }

  private static boolean inOrder(String hex) {
    byte[] bytes = HexFormat.of().parseHex(hex);
    try (BytePointer data = new BytePointer(bytes);
        AVPacket packet = new AVPacket()) {
      packet.data(data).size(bytes.length);
      return new Planes().oneInOrder(packet);
    }
  }
}
