/**
 * The workspace, as far as it goes: answered books to look at in a browser of this machine.
 *
 * <p>In: field books, as files that may change while it runs; requests by GET and HEAD, and two
 * orders by POST from its own pages: that counters be read no longer, or after all; beside them the
 * pages of {@link daylight.app.field}, which take more and share its guard and its ways of sending
 * files. Out: pages, drawings, stills and recordings with captions and chapters, the result files;
 * while footage is looked at, how far that is. Nothing is written but copies of recordings that
 * browsers cannot play, where those are wanted, and what was read of counters, and nothing is asked
 * of any other machine: it listens on 127.0.0.1, and at another address only while its {@link
 * daylight.app.door.Door} is open there, answers only to the name of the place that is asked, and
 * its pages may load nothing but what it serves itself. In the reader's language, as chosen, as
 * started or as the browser asks, and in the units chosen, else those of each book; a book is
 * answered once for all readers. Refuses: other methods (405), orders from elsewhere (403), other
 * host names (421), packed bodies (415), files that the book does not name (404). Computes nothing:
 * it calls {@link daylight.app.Job} and shows what came of it; a book that is refused shows its
 * complaints. Start at {@link daylight.app.web.Workspace}.
 *
 * <p>Sources: none of its own; RFC 9110 for byte ranges and conditions, RFC 6454 for origins.
 */
@NullMarked
package daylight.app.web;

import org.jspecify.annotations.NullMarked;
