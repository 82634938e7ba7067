package daylight.line.frost;

import daylight.line.measure.Measured;

/**
 * The cold that the ground gets: one winter, and the year around it.
 *
 * @param freezingIndex of the air over the winter, in °C·days; zero where it never freezes
 * @param meanTemperature of the year, in °C: the ground is taken to be that warm before it freezes
 * @param season how long it freezes, seconds
 */
public record Winter(Measured freezingIndex, Measured meanTemperature, Measured season) {
  public Winter {
    if (!(freezingIndex.value() >= 0) || !(season.value() > 0)) {
      throw new IllegalArgumentException(
          "a freezing index is not negative and a season lasts, were "
              + freezingIndex.value()
              + " °C·days and "
              + season.value()
              + " s");
    }
  }
}
