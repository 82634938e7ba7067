/**
 * What may be behind what the owner reported?
 *
 * <p>In: a complaint with its kinds, where it shows and when ({@link daylight.line.book.Reported}),
 * what one visit saw and tried ({@link daylight.line.cause.Scene}) and a table of causes as data
 * ({@link daylight.line.cause.CauseTable}). Out: {@link daylight.line.cause.Cause}s in order, each
 * with how strongly it is held, every clue for and against it, and what nobody looked at. Each clue
 * multiplies: {@code times} above one speaks for a cause, below one against it; of several findings
 * the most telling counts. What lies where the water complained of does not pass counts for nothing
 * and is told. The product is never shown as a chance, for nobody measured one. Where a book has
 * words only, {@link daylight.line.cause.WordList} tells which kinds they name. Metres; shares from
 * 0 to 1. Refuses a table without order in its words. Start with {@link
 * daylight.line.cause.Causes}.
 *
 * <p>Sources: the table carries its own; the figures that come with Daylight are common practice.
 */
@NullMarked
package daylight.line.cause;

import org.jspecify.annotations.NullMarked;
