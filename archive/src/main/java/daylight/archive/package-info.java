/**
 * Keeping field books: reading and writing them as files, the data that come with their sources,
 * and results that are put down whole or not at all.
 *
 * <p>In: bytes and folders. Out: values of {@code daylight.line.book} and complaints with file,
 * line, column and path; never an exception for anything a file holds. Values are SI and radians
 * once read; their written words are kept.
 *
 * <p>Start with {@link daylight.archive.FieldBookReader} and {@link
 * daylight.archive.FieldBookWriter}; {@link daylight.archive.BookShape} is the table of every key
 * of a book, from which reading, writing and the published schema all come. {@link
 * daylight.archive.DataReader} reads priors, catalogue, rules and grades, {@link
 * daylight.archive.Bundled} the ones that come with Daylight. {@link daylight.archive.ResultFolder}
 * puts results down.
 */
@NullMarked
package daylight.archive;

import org.jspecify.annotations.NullMarked;
