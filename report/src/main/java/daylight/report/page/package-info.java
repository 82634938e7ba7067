/**
 * The owner's report: one page that needs nothing beside it, answers first.
 *
 * <p>In: a {@link daylight.report.draw.Subject}. Out: HTML that is well-formed XML, with style,
 * drawings, pictures and typeface inside, without a script, for a phone and a laptop; and the tree
 * of what it says, which is set on paper too. Stop orders come first, then the complaint and its
 * probable cause, the seven answers, the drawings, and what all of it rests on. Every sentence is
 * {@code daylight.report.words}'. Start with {@link daylight.report.page.OwnersReport}.
 */
@NullMarked
package daylight.report.page;

import org.jspecify.annotations.NullMarked;
