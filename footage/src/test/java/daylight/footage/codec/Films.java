package daylight.footage.codec;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.footage.FootageTrouble;
import daylight.footage.Watch;
import java.nio.file.Path;

/** Opening in tests, where it is known what has to come of it. */
final class Films {
  private Films() {}

  static Footage opened(Path film) {
    Opening opening = Footage.open(film, Watch.NOBODY);
    assertThat(opening).isInstanceOf(Opening.Opened.class);
    return ((Opening.Opened) opening).footage();
  }

  static FootageTrouble refused(Path film) {
    Opening opening = Footage.open(film, Watch.NOBODY);
    assertThat(opening).isInstanceOf(Opening.Refused.class);
    return ((Opening.Refused) opening).why().trouble();
  }
}
