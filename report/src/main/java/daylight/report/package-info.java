/**
 * The report room: words, drawings, the owner's report and the hand-over files.
 *
 * <p>In: a {@link daylight.report.Handout}, which holds a field book, the line estimated from it,
 * the answers, the rules they were judged by, and the reader's language and units. Out: the files
 * to hand over, by name, as bytes; the same input gives the same bytes. Nothing is computed here
 * that an answer rests on, and nothing is read from clock, disk or machine.
 *
 * <p>Start with {@link daylight.report.Report}. Its packages, in reading order: {@code markup} (the
 * tree of tags that screen and paper share), {@code words} (sentences), {@code draw} (drawings),
 * {@code page} (the owner's report), {@code data} (files for other programs), {@code captions}
 * (what is written beside a recording).
 */
@NullMarked
package daylight.report;

import org.jspecify.annotations.NullMarked;
