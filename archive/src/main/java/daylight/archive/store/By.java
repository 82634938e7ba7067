package daylight.archive.store;

import java.time.Instant;

/**
 * Who writes, when and on which device.
 *
 * @param person as people call them; not blank
 * @param device which; not blank
 */
public record By(String person, String device, Instant at) {
  public By {
    if (person.isBlank() || device.isBlank()) {
      throw new IllegalArgumentException("person and device must be named");
    }
  }
}
