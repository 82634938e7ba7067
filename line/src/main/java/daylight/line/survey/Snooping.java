package daylight.line.survey;

/**
 * How hard to look for blunders.
 *
 * @param familyRate the chance of a false alarm anywhere in a clean network, between 0 and 0.5
 * @param noncentrality δ0 of the smallest detectable blunder, δ0·σ/√r; 4.132 finds it with 80 %
 *     power at α0 = 0.001 (Baarda 1968)
 * @param setsAside whether a suspect that stands alone is left out of the result; otherwise it is
 *     only named
 */
public record Snooping(double familyRate, double noncentrality, boolean setsAside) {

  /** One per cent over the whole network, and Baarda's 4.132. */
  public static final Snooping USUAL = new Snooping(0.01, 4.132);

  /** Setting aside what stands alone. */
  public Snooping(double familyRate, double noncentrality) {
    this(familyRate, noncentrality, true);
  }

  public Snooping {
    Require.between("familyRate", familyRate, 0, 0.5);
    Require.positive("noncentrality", noncentrality, "");
  }
}
