package daylight.line.book;

/** Anything written in a field book that has an identity of its own. */
public interface Entry {
  /** Its identity and label. */
  Id id();

  /** What people call it. */
  default String label() {
    return id().label();
  }
}
