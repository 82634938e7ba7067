package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples are those of RFC 9110, section 14.1.2: a file of 10 000 bytes. */
class ByteRangeTest {
  private static final long SIZE = 10_000;

  @ParameterizedTest
  @CsvSource({
    "bytes=0-499, 0, 499",
    "bytes=500-999, 500, 999",
    "bytes=-500, 9500, 9999",
    "bytes=9500-, 9500, 9999",
    "bytes=0-0, 0, 0",
    "bytes=0-, 0, 9999",
    "bytes=9000-20000, 9000, 9999",
    "bytes=-20000, 0, 9999",
    "BYTES=1-2, 1, 2"
  })
  void onePartIsTakenUp(String header, long first, long last) {
    assertThat(ByteRange.of(header, SIZE)).isEqualTo(new ByteRange.Part(first, last));
  }

  @ParameterizedTest
  @ValueSource(strings = {"bytes=10000-", "bytes=10000-10001", "bytes=-0"})
  void whatLiesPastTheEndIsOutside(String header) {
    assertThat(ByteRange.of(header, SIZE)).isEqualTo(new ByteRange.Outside());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bytes=0-0,-1",
        "bytes=",
        "bytes=-",
        "bytes=5-4",
        "bytes=a-b",
        "lines=1-2",
        "bytes=99999999999999999999-",
        ""
      })
  void whatIsNotUnderstoodIsSentWhole(String header) {
    assertThat(ByteRange.of(header, SIZE)).isEqualTo(new ByteRange.Whole());
  }

  @Test
  void nothingLiesInAnEmptyFile() {
    assertThat(ByteRange.of("bytes=0-", 0)).isEqualTo(new ByteRange.Outside());
    assertThat(ByteRange.of("bytes=-5", 0)).isEqualTo(new ByteRange.Outside());
  }
}
