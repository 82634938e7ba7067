/**
 * How bad is what was seen?
 *
 * <p>In: a finding's kind, sizes and particulars, the bore, the catalogue of kinds, and a published
 * scheme of grades as data. Out: {@link daylight.line.condition.FindingGrade}: for structure and
 * for operation a class from 1, the worst, to 5, with the row and limit that gave it and, where the
 * size has a doubt, the chance of each class; what must be known first where none can be given;
 * and, by a list apart from the classes, whether it calls for action at once. A line is as bad as
 * its worst finding in each aspect. Units: metres; shares from 0 to 1 of the section, the height or
 * the diameter, as the row says. Refuses: no finding; a kind without row is ungraded and says why,
 * a scheme whose limits do not fall is refused at birth. A foreign pipe or cable through the bore
 * outranks every grade. Start with {@link daylight.line.condition.Condition}.
 *
 * <p>Sources: stein-h5, atv-m-149, en-13508-2.
 */
@NullMarked
package daylight.line.condition;

import org.jspecify.annotations.NullMarked;
