package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InkTest {

  /** Web Content Accessibility Guidelines 2.2, success criterion 1.4.3, level AA (from memory). */
  @ParameterizedTest
  @ValueSource(strings = {Ink.DARK, Ink.SOFT, Ink.DRAIN, Ink.WATER, Ink.STOP})
  void textStandsOutFromThePaper(String ink) {
    assertThat(contrast(ink, Ink.PAPER)).isGreaterThanOrEqualTo(4.5);
  }

  @Test
  void blackOnWhiteIsTheGreatestContrastThereIs() {
    assertThat(contrast("#000000", "#ffffff")).isCloseTo(21, within(1e-9));
  }

  static double contrast(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String colour) {
    return 0.2126 * linear(colour, 1) + 0.7152 * linear(colour, 3) + 0.0722 * linear(colour, 5);
  }

  private static double linear(String colour, int at) {
    double c = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
