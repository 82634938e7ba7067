/**
 * Keeping: field books as files and in a store, and what was issued. The only room that may know
 * SQL, but for the GeoPackage writer of the report.
 *
 * <p>In: field-book files as people write them, entries with who, when and on what device, and the
 * bytes of what is issued. Out: field books as values with complaints beside them, revisions,
 * sealed bundles and the proof that they are unchanged. Units: a file says its own; what leaves is
 * SI. Refuses: nothing silently: a bad row becomes a complaint with file, line and column beside
 * the good rows; a file outside the book's folder is not opened; what was acknowledged is not lost.
 *
 * <p>Sources: yaml-1.2, rfc-9562.
 */
@NullMarked
package daylight.archive;

import org.jspecify.annotations.NullMarked;
