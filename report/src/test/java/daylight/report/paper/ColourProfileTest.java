package daylight.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Held against the sRGB of the Java runtime, which is read by a colour engine of its own. */
class ColourProfileTest {

  @Test
  void everyColourMeansWhatItMeansOnScreen() {
    ICC_ColorSpace ours = new ICC_ColorSpace(ICC_Profile.getInstance(ColourProfile.srgb()));
    ColorSpace screen = ColorSpace.getInstance(ColorSpace.CS_sRGB);
    float[] steps = {0, 0.05f, 0.25f, 0.5f, 0.8f, 1};
    for (float red : steps) {
      for (float green : steps) {
        for (float blue : steps) {
          float[] colour = {red, green, blue};
          assertNear(ours.toCIEXYZ(colour), screen.toCIEXYZ(colour));
        }
      }
    }
  }

  private static void assertNear(float[] one, float[] other) {
    for (int i = 0; i < one.length; i++) {
      assertThat(one[i]).isCloseTo(other[i], Offset.offset(0.002f));
    }
  }
}
