/**
 * Words: turns typed reasons, figures and complaints into sentences.
 *
 * <p>In: {@link daylight.line.measure.Statement}s, {@link daylight.line.measure.Complaint}s,
 * findings and single keys. Out: plain sentences in a reader's language and units. Every sentence
 * comes from one message file a language ({@code en.properties}, {@code fr.properties}), which also
 * says how numbers, units and lists are written there; what French draws together where one word is
 * set into a sentence, {@link daylight.report.words.Joints} does. A key that a file lacks is our
 * own bug and throws. Start with {@link daylight.report.words.Words}.
 *
 * <p>A message holds its figures as {@code {0}}, {@code {1}} in the order of the statement's
 * arguments, and one of several things as {@code {0.1}}; the kind of argument decides how it is
 * shown. Uncertain figures say "give or take" half of the interval that holds 95 %, rounded up. A
 * message with a {@code .one} and an {@code .other} form is chosen by its first count.
 */
@NullMarked
package daylight.report.words;

import org.jspecify.annotations.NullMarked;
