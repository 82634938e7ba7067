package daylight.line.cause;

/** What may speak for a cause or against it. */
public enum Sign {
  /** Something of certain kinds was found where it matters. */
  FOUND,
  /** All of it was seen clearly, and nothing of those kinds was found. */
  NOT_FOUND,
  /** Something stopped the camera there. */
  STOPPED,
  /** It is nearly certainly flatter than the rule. */
  TOO_FLAT,
  /** It nearly certainly runs backward. */
  BACKWARD,
  /** It nearly certainly falls as much as the rule asks, all along. */
  FALLS,
  /** Water or dye let in came out. */
  ARRIVED,
  /** Water or dye let in did not come. */
  NOT_ARRIVED,
  /** The line was filled and held. */
  HELD,
  /** The line was filled and the water fell. */
  FELL,
  /** Smoke came out at a fixture, an inlet or an access point. */
  SMOKE_INSIDE,
  /** Smoke came out of the ground. */
  SMOKE_FROM_GROUND,
  /** Smoke came out nowhere that was looked at. */
  NO_SMOKE,
  /** It lies shallow. */
  SHALLOW,
  /** It lies deep. */
  DEEP,
  /** When it shows. */
  WHEN
}
