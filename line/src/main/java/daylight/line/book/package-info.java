/**
 * The field book: what was measured at one site, as plain immutable values, never altered by
 * computing.
 *
 * <p>In: nothing; these values are made by whoever reads a book or takes an entry. Out: nothing is
 * computed here beyond looking up a label. Start with {@link daylight.line.book.FieldBook}; it
 * holds one {@link daylight.line.book.Site} (landmarks, boundaries, nodes, reaches) and its {@link
 * daylight.line.book.Visit}s (passes with findings and bends, locates, exposures, ties, levels,
 * tests, works, papers).
 *
 * <p>Units are SI and radians whatever was written; each {@link daylight.line.measure.Reading}
 * keeps the words it was written in. <em>Cable</em> is always a reading of a pass's counter;
 * <em>depth</em> counts down from the named surface; <em>heights</em> count up from the site datum;
 * clock positions and bends are as the head looks. Points in plan share one set of labels.
 *
 * <p>Whether a book makes sense (labels that name something, a tree without loops, depths that are
 * not negative) is asked by {@link daylight.line.book.BookCheck}, which returns every fault and
 * refuses nothing by exception. {@link daylight.line.book.Priors} and {@link
 * daylight.line.book.Catalogue} are data that come with their sources.
 */
@NullMarked
package daylight.line.book;

import org.jspecify.annotations.NullMarked;
