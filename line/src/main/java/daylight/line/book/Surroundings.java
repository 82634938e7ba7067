package daylight.line.book;

import daylight.line.measure.Reading;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the line has to live with: climate, soil, what runs into it and what pumps it.
 *
 * @param climate null when not recorded
 * @param soil null when not recorded
 */
public record Surroundings(
    @Nullable Climate climate,
    @Nullable Soil soil,
    List<Roof> roofs,
    List<Fixture> fixtures,
    List<Pump> pumps) {
  /** Nothing recorded. */
  public static final Surroundings UNRECORDED =
      new Surroundings(null, null, List.of(), List.of(), List.of());

  public Surroundings {
    roofs = List.copyOf(roofs);
    fixtures = List.copyOf(fixtures);
    pumps = List.copyOf(pumps);
  }

  /**
   * The winter of the place.
   *
   * @param freezingIndex of the air, in °C·days
   * @param meanTemperature of the year, in °C
   * @param season length of the freezing season, in seconds
   * @param rain design intensity, in metres per second
   * @param snow that lies over the line all winter, in metres
   * @param source where the figures were taken from
   */
  public record Climate(
      @Nullable Reading freezingIndex,
      @Nullable Reading meanTemperature,
      @Nullable Reading season,
      @Nullable Reading rain,
      @Nullable Reading snow,
      @Nullable String source) {}

  /**
   * The ground the pipe lies in.
   *
   * @param kind in words, "silty clay"
   * @param water its moisture by dry weight
   * @param surface what covers it over the line in winter, in words, "lawn"; null when not recorded
   */
  public record Soil(String kind, @Nullable Reading water, @Nullable String surface) {}

  /**
   * A roof or paved area that drains into a node.
   *
   * @param node the label of the node
   * @param area in square metres, in plan
   */
  public record Roof(Id id, String node, Reading area) implements Entry {}

  /**
   * Something in the house that drains into a node.
   *
   * @param kind in words, "floor drain"
   * @param flow what it gives at most, in cubic metres per second; null when not recorded
   */
  public record Fixture(Id id, String node, String kind, @Nullable Reading flow) implements Entry {}

  /**
   * A pump in a pit.
   *
   * @param node the label of the pit
   * @param curve points of its head over its flow, by rising flow
   * @param area plan area of the pit in square metres; null when not recorded
   * @param start water above the pit floor at which it starts, in metres
   * @param stop water above the pit floor at which it stops, in metres
   * @param lift from the water half way between both up to the highest point of its pipe, in
   *     metres; null when not recorded
   * @param fittings on its pipe, by their names in the table of fittings; each as often as it is
   *     there
   */
  public record Pump(
      Id id,
      String node,
      List<CurvePoint> curve,
      @Nullable Reading area,
      @Nullable Reading start,
      @Nullable Reading stop,
      @Nullable Reading lift,
      List<String> fittings)
      implements Entry {
    public Pump {
      curve = List.copyOf(curve);
      fittings = List.copyOf(fittings);
    }
  }

  /**
   * One point of a pump's curve.
   *
   * @param flow in cubic metres per second
   * @param head in metres
   */
  public record CurvePoint(Reading flow, Reading head) {}
}
