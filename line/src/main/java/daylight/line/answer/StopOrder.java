package daylight.line.answer;

import daylight.line.course.PlacedFinding;

/** A foreign pipe or cable through the bore: the deadliest finding of all. */
public record StopOrder(PlacedFinding finding) {}
