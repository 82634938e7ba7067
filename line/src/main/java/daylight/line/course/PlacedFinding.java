package daylight.line.course;

import daylight.line.book.Finding;
import daylight.line.book.Place;
import org.jspecify.annotations.Nullable;

/**
 * A finding at its place in the pipe.
 *
 * @param visit the label of the visit
 * @param pass the label of the pass it was seen in
 * @param from where it is, or where it starts, the upstream end first
 * @param to where it ends; null for a finding at one place
 * @param sd standard uncertainty of its distance along the pipe, metres
 */
public record PlacedFinding(
    String visit, String pass, Finding finding, Place from, @Nullable Place to, double sd) {}
