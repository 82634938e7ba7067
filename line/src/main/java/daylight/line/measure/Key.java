package daylight.line.measure;

/** The key of a sentence or a word in the message file; each room lists its own as an enum. */
public interface Key {
  /** The key, unique across rooms, in lower case with dots. */
  String key();
}
