package daylight.footage;

/** Who waits for long work: told how far it is, asked whether it is still wanted. */
public interface Watch {
  /** Nobody waits; the work runs to its end. */
  Watch NOBODY =
      new Watch() {
        @Override
        public void done(double share) {}

        @Override
        public boolean stopped() {
          return false;
        }
      };

  /** How much of the work is done, from 0 to 1; never less than before. */
  void done(double share);

  /** Whether the work should end as soon as it can, leaving nothing half-written. */
  boolean stopped();
}
