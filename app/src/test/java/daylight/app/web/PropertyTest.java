package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PropertyTest {

  @ParameterizedTest
  @CsvSource({
    "shop/field-book.yaml, shop",
    "Bücher/Straße 5 (hinten).yaml, stra-e-5-hinten",
    "S21-foreign-pipe.yaml, s21-foreign-pipe",
    "???.yaml, book",
    "field-book.yaml, field-book"
  })
  void anAddressIsMadeOfPlainLetters(Path file, String name) {
    assertThat(Property.nameOf(file)).isEqualTo(name);
  }

  @Test
  void recordingsThatBrowsersShareArePlayedAsTheyAre() {
    assertThat(Playable.asItIs("a/film.MP4", "H.264")).isTrue();
    assertThat(Playable.asItIs("film.webm", "VP9")).isTrue();
    assertThat(Playable.asItIs("film.mp4", null)).isTrue();
    assertThat(Playable.asItIs("film.mp4", "MPEG-4")).isFalse();
    assertThat(Playable.asItIs("film.avi", "H.264")).isFalse();
    assertThat(Playable.asItIs("film", null)).isFalse();
  }
}
