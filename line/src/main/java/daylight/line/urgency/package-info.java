/**
 * How soon is something to be done about a finding?
 *
 * <p>In: a finding with its grade, where it lies, and what the book says of use, fixtures,
 * buildings and roads. Out: {@link daylight.line.urgency.HowSoon}: a word for how soon, from class
 * and consequence by a table of data, with the row that gave it and what is not known. What calls
 * for action at once by the published list is at once; what outranks every grade stops the work.
 * Metres. A consequence that nobody can tell is said to be unknown, and taken for the worse only
 * where the table says so. Refuses a table that is less urgent where things are worse. Start with
 * {@link daylight.line.urgency.Urgencies}.
 *
 * <p>Sources: none published. The table that comes with Daylight is our own rule, common practice.
 */
@NullMarked
package daylight.line.urgency;

import org.jspecify.annotations.NullMarked;
