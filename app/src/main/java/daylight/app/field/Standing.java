package daylight.app.field;

/** How somebody stands to the archive. */
enum Standing {
  /** At the machine itself. */
  HERE,
  /** On a phone that joined. */
  JOINED,
  /** Anybody in the same network. */
  STRANGER
}
