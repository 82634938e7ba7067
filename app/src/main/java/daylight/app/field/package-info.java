/**
 * The pages of an archive: sites and visits, and what is written down in the field.
 *
 * <p>In: an open archive; requests by GET from a browser, and what is written by POST from these
 * pages: forms, which work without any script, and entries as JSON. Out: pages in English or French
 * with lengths in feet and inches or in metres, by the choice of whoever looks; entries in the
 * archive, each kept, or refused with the reader's own complaints. Nothing here knows what a book
 * is made of beyond the keys that a page writes: the reader of files decides. Units: those of each
 * book, as text; none are computed with. Refuses: what comes from another page than its own, by
 * Origin, Sec-Fetch-Site, the key of the device in a cookie and a token made from it (403); whoever
 * came in by the door and has not joined, all but the page for joining (403); more than a megabyte,
 * five hundred entries, or twenty levels at once (413, 400); identities that are none (404);
 * pictures and sound that do not begin as files of their kind do (415).
 *
 * <p>Start at {@link daylight.app.field.FieldPages}, which lists the makers of pages. A new page is
 * a class that is one of the {@link daylight.app.field.Pages} and a line in that list; its words go
 * into {@code en.properties} and {@code fr.properties}, which a test keeps alike.
 *
 * <p>The walk and the push keep what they write in the browser until the archive has it. Where a
 * spot of the walk lies and how it fits comes from the job that answers the whole book, in metres
 * on the site grid; the page itself checks by arithmetic only.
 *
 * <p>Pencil sheets are printed and typed by one list of columns, and make the entries that the push
 * and the walk would have made. Heights of rods are sums in metres, above the first known point.
 *
 * <p>Sources: {@code apwa-colours} for marks of other services; {@code mdn-accuracy} for fixes;
 * {@code trust-on-phones}; {@code rfc-6265bis} for cookies, RFC 6454 for origins, RFC 9110 for
 * languages.
 */
@NullMarked
package daylight.app.field;

import org.jspecify.annotations.NullMarked;
