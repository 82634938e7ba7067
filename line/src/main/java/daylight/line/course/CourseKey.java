package daylight.line.course;

import daylight.line.measure.Key;
import java.util.Locale;

/** What the estimate has to say in words. */
public enum CourseKey implements Key {
  /** No locate, exposure or access point of the line {0} has a place in plan. */
  NO_SPOTS,
  /** Only {0} has a place in plan on the line {1}; a second one gives the direction. */
  ONE_SPOT,
  /** Nothing tells how long the reach {0} is. */
  LENGTH_UNKNOWN,
  /** No pass went through the reach {0} and nothing on it was located. */
  REACH_NOT_LOCATED,
  /** {2} of cable between {0} and {1} are unaccounted for: a bend missed or the counter slipped. */
  CABLE_UNACCOUNTED,
  /**
   * Between {0} and {1} there is {2} less cable than ground: the counter slipped or a spot is off.
   */
  CABLE_TOO_SHORT,
  /** {0} lies {1} beside the course that the others give. */
  SPOT_OFF,
  /** {0} reads {1} deeper or shallower than the course that the others give. */
  DEPTH_OFF,
  /** Between {0} and {1} the line turns by about {2} more than any bend that was noted. */
  UNSEEN_BEND,
  /** Nothing checks {0}: an error in it would not show. */
  NOTHING_CHECKS,
  /** {0} has no counter reading and no track gives one. */
  NO_CABLE,
  /** {0} was noted by a moment of the footage that no track covers; it has no place. */
  MOMENT_UNPLACED,
  /** How far the transmitter sits behind the lens was not recorded; {0} was taken. */
  SONDE_OFFSET_ASSUMED,
  /** The estimate for the line {0} did not settle. */
  NOT_SETTLED,
  /** The surfaces {0} and {1} are not tied by a level, so a fall across them means little. */
  SURFACES_NOT_TIED;

  @Override
  public String key() {
    return "course." + name().toLowerCase(Locale.ROOT);
  }
}
