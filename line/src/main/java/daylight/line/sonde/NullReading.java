package daylight.line.sonde;

/** What the nulls tell: where the sonde is, or that no dipole makes such marks. */
public sealed interface NullReading permits NullFix, NoDipole {}
