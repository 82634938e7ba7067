package daylight.line.sonde;

/** What a walk tells: where the sonde is, or what is lacking. */
public sealed interface WalkReading permits WalkFix, WalkRefused {}
