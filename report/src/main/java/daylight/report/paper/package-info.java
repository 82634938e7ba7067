/**
 * The reports on paper: what {@code daylight.report.page} says, set as PDF.
 *
 * <p>In: an {@link daylight.report.page.Edition} and a sheet. Out: the bytes of a PDF 1.7 that is
 * tagged, brings its typeface along, and conforms to PDF/A-2a and PDF/UA-1. Drawings keep their
 * lines and letters: each is drawn once more, from the same tree as on the screen, as a form of its
 * own, with the fonts of the document, so that no font of the machine is ever asked for. Units:
 * points of 1/72 in; inside a drawing y runs down, as in SVG. Refuses: an element, an attribute or
 * a command in a drawing that it does not know; such a drawing is a fault of ours, and leaving
 * something out in silence would be a false drawing.
 *
 * <p>The same report gives the same bytes: dates and the document's id come from what is told, not
 * from a clock. Start with {@link daylight.report.paper.PaperReport}.
 *
 * <p>Sources: ISO 32000-1:2008 (PDF 1.7); ISO 19005-2:2011 (PDF/A-2); ISO 14289-1:2014 (PDF/UA-1);
 * Scalable Vector Graphics 1.1, second edition (W3C 2011); ICC.1:2001-04 and IEC 61966-2-1:1999
 * (colour), all from memory, and held against a validator in the tests.
 */
@NullMarked
package daylight.report.paper;

import org.jspecify.annotations.NullMarked;
