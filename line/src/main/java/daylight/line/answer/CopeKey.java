package daylight.line.answer;

import daylight.line.measure.Key;
import java.util.Locale;

/** What "Does it cope" says; the arguments of each sentence are given in braces. */
public enum CopeKey implements Key {
  /**
   * It copes: {0} come at most, give or take {1}; from {2} to {3} from {4} it carries {5} to {6}.
   */
  YES,
  /**
   * It does not cope with {0}, give or take {1}: from {2} to {3} from {4} it carries {5} to {6}.
   */
  NO,
  /** {0} may come, give or take {1}, and from {2} to {3} from {4} it does not fall. */
  NO_FALL,
  /** Too close to say: {0} may come, give or take {1}; from {2} to {3} from {4} {5} to {6}. */
  CLOSE,
  /** Its worst stretch, from {0} to {1} from {2}, carries {3} to {4}; what comes is not known. */
  CARRIES,
  /** That it carries what comes without filling up: {0}. */
  CHANCE,
  /** That is by a fall of {0}, a bore of {1} and the roughness of {2}. */
  FALLS,
  /** Counted with it: {0}. Of the section {1} is free there. */
  NARROWED,
  /** Half full and full it runs {0}; slower than {1} grit stays behind. */
  SLOW,
  /** Most of the doubt is {0}: {1} of it. */
  DECIDES,
  /** It carried {0} from {1} to {2} in the test, and nothing was tried beyond that. */
  CARRIED,
  /** With that the water would stand up to {0} above the top of the pipe, highest {1} from {2}. */
  BACKS_UP,
  /** It would come out of the ground {0} from {1}. */
  COMES_OUT,
  /** The outlet was seen under water, {0}; counted with it, {1} deep there. */
  OUTLET_DROWNED,
  /** {0} come at most, give or take {1}; it carries that, but not with its outlet under water. */
  DROWNED,
  /** A pump presses {0} into it from {1}. */
  PUMP_FEEDS,
  /** Taken for {0}: {1} by {2}, from {3}. */
  WALL,
  /** Taken for roofs: {0} of the rain runs off, from {1}. */
  RUNOFF,
  /** Taken for the fittings: together {0} times speed² ÷ 2g, from {1}. */
  FITTINGS,
  /** A source and how it was come by. */
  ORIGIN,
  /** Fittings were not noted. */
  FITTINGS_USUAL,
  /** How good flows, areas and rain are was taken as usual. */
  USUAL_DOUBT,
  /** No table knows the fitting {0}. */
  FITTING_UNKNOWN,
  /** {0} come in, give or take {1}; what the pump lifts is not known. */
  COMES_IN,
  /** The pump will not pump: its greatest head is {0}, the lift {1}. */
  WILL_NOT_PUMP,
  /** That it pumps all the same: {0}. */
  PUMPS_CHANCE,
  /** It pumps {0} at least, and {1} come in, give or take {2}. */
  PUMP_AT_LEAST,
  /** Its curve ends at {0}, and the pipe takes more. */
  CURVE_ENDS,
  /** The pump lifts {0}, give or take {1}; what comes in is not known. */
  PUMPS,
  /** That it takes out what comes: {0}. */
  KEEPS_UP_CHANCE,
  /** It pumps its own water: what runs back starts it again. It lifts {0}, {2} come in. */
  OWN_WATER,
  /** The pump keeps up: it lifts {0}, give or take {1}, and {2} come in, give or take {3}. */
  PUMP_KEEPS_UP,
  /** The pump cannot keep up: it lifts {0}, give or take {1}, and {2} come in, give or take {3}. */
  PUMP_TOO_WEAK,
  /** Too close to say: it lifts {0}, give or take {1}, and {2} come in, give or take {3}. */
  PUMP_CLOSE,
  /** It works against {0} of head, {1} of it height; the water runs {2} in the pipe. */
  LIFTS,
  /** Slower than {0} solids stay behind in the pipe. */
  SLOW_PUMPED,
  /** Up to {0} run back into the pit when it stops. */
  RUNS_BACK,
  /** It runs {0} and rests {1}, {2} times an hour. */
  TURNS,
  /** Note what drains into it and what each gives at most. */
  MISSING_FIXTURES,
  /** Measure what {0} gives at most. */
  MISSING_FIXTURE_FLOW,
  /** Time how fast {0} fills with the pump off. */
  MISSING_PIT_RISE,
  /** Measure the area of {0}. */
  MISSING_PIT_AREA,
  /** Time the rise of the pit again, longer, and measure its area. */
  MISSING_RISE_AGAIN,
  /** Let in a measured flow as large as may come, and see whether it backs up. */
  MISSING_RUN,
  /** Measure how high the water is lifted from {0}. */
  MISSING_LIFT,
  /** Find the rest of the pump's curve. */
  MISSING_CURVE,
  /** Find how {0} falls. */
  MISSING_FALL,
  /** See first to why it does not cope. */
  NOW;

  @Override
  public String key() {
    return "cope." + name().toLowerCase(Locale.ROOT);
  }
}
