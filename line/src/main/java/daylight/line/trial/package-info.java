/**
 * What would a repair change?
 *
 * <p>In: an estimated line, the rules, and a list of edits: an outlet lowered, a stretch relaid at
 * a fall, a belly lifted, a pump changed, each with the tolerance it can be built to. Out: the
 * edited line judged again, beside today's answers, and the least change of an outlet that empties
 * a pond. Units: metres and slopes as drop over length, positive downstream. Refuses: an edit
 * outside the line or with a tolerance that is not positive. Invents no reading: only the estimate
 * is edited, and only the judging runs again.
 *
 * <p>Sources: none of its own; those of the rooms that judge.
 */
@NullMarked
package daylight.line.trial;

import org.jspecify.annotations.NullMarked;
