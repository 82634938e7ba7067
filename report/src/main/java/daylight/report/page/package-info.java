/**
 * The reports: for the owner in full and in short, and cards for those who dig.
 *
 * <p>In: a {@link daylight.report.draw.Subject}. Out: HTML that is well-formed XML, with style,
 * drawings, pictures and typeface inside, for a phone and a laptop; and the tree of what it says,
 * which is set on paper too. The owner's report brings one script along, by which its three
 * drawings go under one cursor; without it the page is as whole, and its policy lets nothing else
 * run or be asked for. Stop orders come first, then a page in plain words, the probable causes, the
 * seven answers, the drawings, and what all of it rests on. Every sentence is {@code
 * daylight.report.words}'. Start with {@link daylight.report.page.OwnersReport}, {@link
 * daylight.report.page.ShortReport} and {@link daylight.report.page.CrewCards}; all give an {@link
 * daylight.report.page.Edition}, from the same parts.
 */
@NullMarked
package daylight.report.page;

import org.jspecify.annotations.NullMarked;
