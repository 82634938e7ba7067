package daylight.line.flow;

import daylight.line.measure.Measured;

/** What a pump does on its pipe. */
public sealed interface Operation {
  /**
   * It pumps.
   *
   * @param flow cubic metres per second
   * @param head which it lifts at that flow, metres
   * @param lift how much of it is lift
   * @param speed in the narrowest pipe, metres per second
   * @param regime there
   * @param power that goes into the water, watts
   * @param pumps the probability that it pumps at all: that its greatest head is above the lift
   */
  record Pumps(
      Propagated flow,
      Propagated head,
      double lift,
      double speed,
      Regime regime,
      double power,
      double pumps)
      implements Operation {
    /**
     * Energy for each cubic metre, joules.
     *
     * @param efficiency of pump and motor together, above 0, at most 1; 1 for what goes into the
     *     water alone
     */
    public double energy(double efficiency) {
      if (!(efficiency > 0 && efficiency <= 1)) {
        throw new IllegalArgumentException("efficiency must be above 0, at most 1");
      }
      return power / flow.value().value() / efficiency;
    }
  }

  /**
   * Its greatest head is no more than the lift: no water moves.
   *
   * @param shutOff its head at no flow, metres
   * @param lift metres
   * @param may the probability that it pumps all the same, as far as both are known
   */
  record WillNotPump(double shutOff, Measured lift, double may) implements Operation {}

  /**
   * The pipe takes more than the last point of the curve: it pumps at least that.
   *
   * @param flow of that point, cubic metres per second
   * @param head of that point, metres
   * @param needed head that the pipe needs there, metres: less
   */
  record BeyondCurve(double flow, double head, double needed) implements Operation {}
}
