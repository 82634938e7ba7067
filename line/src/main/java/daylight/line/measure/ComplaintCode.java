package daylight.line.measure;

/** The kind of a complaint. Each room lists its own kinds as an enum that implements this. */
public interface ComplaintCode {
  /** The key of its sentence in the message file, unique across rooms. */
  String key();

  /** How much it stands in the way. */
  Gravity gravity();
}
