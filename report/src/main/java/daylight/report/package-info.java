/**
 * What is handed over: words, drawings, the owner's report, files for maps and drawing programs.
 * The only room that may know PDF.
 *
 * <p>In: a field book, its line, its answers and stills as bytes. Out: sentences in the reader's
 * language and units, drawings as SVG for screen and paper alike, HTML and PDF, and the hand-over
 * files. Units: the reader's choice at the very edge; SI until then; drawings show flow to the
 * right. Refuses: a number in a sentence that its evidence does not hold. Adds no judgement: it
 * says what the answers say, cautions first. Measures text by the font file it carries, so that a
 * machine without fonts gives the same pages.
 *
 * <p>Sources: rfc-7946, apwa-colours, wcag-2.2, pdf-a-2, pdf-ua-1.
 */
@NullMarked
package daylight.report;

import org.jspecify.annotations.NullMarked;
