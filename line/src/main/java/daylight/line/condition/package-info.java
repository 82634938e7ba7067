/**
 * Is it clear and sound?
 *
 * <p>In: findings with their kind, quantities, place and clock position, the stretches of sight,
 * and the catalogue of kinds. Out: a grade for structure and one for operation, each a number and a
 * word with the rule that gave it, the urgency that follows from what the place is to people, and
 * how much of the line was seen. Units: metres, fractions of height or section as the catalogue
 * says; class 1 is the worst. Refuses: nothing that was seen: a kind that the catalogue does not
 * know is kept and shown ungraded. A foreign pipe or cable through the bore outranks every grade.
 *
 * <p>Sources: stein-h5, atv-m-149, en-13508-2.
 */
@NullMarked
package daylight.line.condition;

import org.jspecify.annotations.NullMarked;
