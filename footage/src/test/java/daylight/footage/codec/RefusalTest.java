package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.FootageTrouble;
import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Remark;
import daylight.footage.Watch;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RefusalTest {
  @TempDir Path folder = Path.of("");

  @Test
  void whatIsNotThereOrNoFile() {
    assertThat(Films.refused(folder.resolve("none.mp4"))).isEqualTo(FootageTrouble.NOT_A_FILE);
    assertThat(Films.refused(folder)).isEqualTo(FootageTrouble.NOT_A_FILE);
  }

  @Test
  void emptyFiles() throws IOException {
    assertThat(Films.refused(file("empty.mp4"))).isEqualTo(FootageTrouble.EMPTY_FILE);
  }

  @Test
  void textsAndPicturesAndPlaylistsWhateverTheirName() throws IOException {
    byte[] text = "The camera went in at ten.\n".repeat(400).getBytes(StandardCharsets.UTF_8);
    byte[] list =
        "#EXTM3U\n#EXT-X-TARGETDURATION:10\n#EXTINF:10,\nother.ts\n"
            .getBytes(StandardCharsets.UTF_8);
    byte[] chain = "ffconcat version 1.0\nfile other.mp4\n".getBytes(StandardCharsets.UTF_8);
    byte[] picture = Jpeg.of(new Raster(64, 48));

    assertThat(Films.refused(file("text.mp4", text))).isEqualTo(FootageTrouble.NOT_VIDEO);
    assertThat(Films.refused(file("list.mp4", list))).isEqualTo(FootageTrouble.NOT_VIDEO);
    assertThat(Films.refused(file("chain.mp4", chain))).isEqualTo(FootageTrouble.NOT_VIDEO);
    assertThat(Films.refused(file("picture.mp4", picture))).isEqualTo(FootageTrouble.NOT_VIDEO);
  }

  @Test
  void bytesByChance() throws IOException {
    for (int seed = 0; seed < 20; seed++) {
      byte[] bytes = new byte[50_000];
      new SplittableRandom(seed).nextBytes(bytes);

      assertThat(Films.refused(file("chance.mp4", bytes))).isEqualTo(FootageTrouble.NOT_VIDEO);
    }
  }

  @Test
  void soundWithoutPictures() throws IOException {
    for (String name : new String[] {"sound.wav", "sound.m4a", "sound.mp3", "sound.flac"}) {
      Path sound = folder.resolve(name);
      Program.ffmpeg("-f", "lavfi", "-i", "sine=duration=1", sound.toString());

      assertThat(Files.size(sound)).isPositive();
      assertThat(Films.refused(sound)).as(name).isEqualTo(FootageTrouble.NO_PICTURES);
    }
  }

  @Test
  void picturesThatNobodyCanRead() throws IOException {
    Path film = TestFilm.of(Make.MJPEG_AVI).frames(10).write(folder.resolve("film.avi"));
    byte[] bytes = Files.readAllBytes(film);
    String letters = new String(bytes, StandardCharsets.ISO_8859_1);
    for (int at = letters.indexOf("MJPG"); at >= 0; at = letters.indexOf("MJPG", at + 1)) {
      System.arraycopy("ZQZQ".getBytes(StandardCharsets.ISO_8859_1), 0, bytes, at, 4);
    }

    assertThat(Films.refused(file("unheard.avi", bytes))).isEqualTo(FootageTrouble.UNSUPPORTED);
  }

  @ParameterizedTest
  @EnumSource(Make.class)
  void filmsCutShortPlayAsFarAsTheyGo(Make make) throws IOException {
    Path film = TestFilm.of(make).write(folder.resolve("film." + make.extension()));
    byte[] bytes = Files.readAllBytes(film);
    for (int percent : new int[] {10, 50, 99}) {
      byte[] start = Arrays.copyOf(bytes, bytes.length * percent / 100);
      switch (Footage.open(file("cut." + make.extension(), start), Watch.NOBODY)) {
        case Opening.Opened(Footage footage) -> playsAsFarAsItGoes(footage, make, percent);
        case Opening.Refused(Remark why) ->
            assertThat(why.trouble()).isEqualTo(FootageTrouble.TRUNCATED);
        case Opening.Stopped() -> throw new AssertionError("nobody stopped it");
      }
    }
  }

  private static void playsAsFarAsItGoes(Footage footage, Make make, int percent)
      throws IOException {
    try (footage) {
      int count = footage.times().count();
      assertThat(count).as(make + " cut at " + percent + " %").isBetween(1, 100);
      assertThat(footage.frame(count - 1)).isPresent();
      boolean announced = make != Make.MPEG2_MPG && make != Make.MPEG2_TS;
      if (announced && percent < 99) {
        assertThat(footage.notes())
            .extracting(Remark::trouble)
            .contains(FootageTrouble.TRUNCATED_TAIL);
      }
    }
  }

  @Test
  void filmsWithoutTheirListOfFrames() throws IOException {
    Path film = TestFilm.of(Make.MJPEG_MOV).write(folder.resolve("film.mov"));
    byte[] bytes = Files.readAllBytes(film);

    assertThat(Films.refused(file("half.mov", Arrays.copyOf(bytes, bytes.length / 2))))
        .isEqualTo(FootageTrouble.TRUNCATED);
  }

  @Test
  void namesThatContradictTheContentAreOnlyNoted() throws IOException {
    Path film = TestFilm.of(Make.H264_MP4).write(folder.resolve("film.avi"));
    try (Footage footage = Films.opened(film)) {
      assertThat(footage.recording().container()).isEqualTo("MP4");
      assertThat(footage.recording().frames()).isEqualTo(100);
      assertThat(footage.notes())
          .extracting(Remark::trouble)
          .containsExactly(FootageTrouble.WRONG_EXTENSION);
    }
  }

  @Test
  void aWholeFilmHasNothingToNote() throws IOException {
    for (Make make : Make.values()) {
      Path film = TestFilm.of(make).frames(40).write(folder.resolve("film." + make.extension()));
      try (Footage footage = Films.opened(film)) {
        assertThat(footage.notes()).as(make.toString()).isEmpty();
      }
    }
  }

  private Path file(String name, byte... bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }
}
