package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
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
}
