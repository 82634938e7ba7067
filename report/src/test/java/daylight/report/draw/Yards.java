package daylight.report.draw;

/** The yard of {@link ServicesTest} with and without a ticket and a finding. */
public final class Yards {
  private Yards() {}

  /** Without a ticket. */
  public static Subject without() {
    return Typed.of(ServicesTest.YARD);
  }

  /** With a ticket that is good after the visit. */
  public static Subject ticketed() {
    return Typed.of(
        ServicesTest.YARD.replace(
            "    services:\n",
            """
                tickets:
                  - {label: N1, number: INVENTED-9, expires: 2026-06-01}
                services:
            """));
  }

  /** Where the signal stayed at a locate beside the finding when the transmitter was off. */
  public static Subject doubted() {
    return Typed.of(
        ServicesTest.YARD.replace("out: 12, depth: 1.15", "out: 12, depth: 1.15, off-on: stayed"));
  }

  /** Where nothing asks for a dig. */
  public static Subject sound() {
    return Typed.of(
        ServicesTest.YARD.replace("kind: crack, cable: 9, width: 2 mm", "kind: joint, cable: 9"));
  }
}
