package daylight.line.measure;

/** The kind of a complaint. Each room lists its own kinds as an enum that implements this. */
public interface ComplaintCode extends Key {
  /** How much it stands in the way. */
  Gravity gravity();
}
