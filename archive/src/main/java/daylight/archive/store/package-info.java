/**
 * Keeping field books: every entry with all its revisions, in one folder on the owner's own
 * machine.
 *
 * <p>In come field books and who writes them when, on which device; out go the same books again,
 * their history, backups. A book is taken apart into its entries as they are written in a file, and
 * put together again the same way, so what the reader of files complains of it complains of here.
 * Revisions are only added, and their contents taken out where somebody must be forgotten.
 * Recordings and photographs lie beside the database by their SHA-256. What holds now is derived
 * from them and can be made anew. Refused, with what is wrong: a folder that is no archive, a
 * damaged one, one of a newer Daylight. Times are UTC.
 */
@NullMarked
package daylight.archive.store;

import org.jspecify.annotations.NullMarked;
