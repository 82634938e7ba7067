/**
 * Well-formed markup, built as a tree and escaped when written: shared by the drawings (SVG) and
 * the owner's report (XHTML).
 *
 * <p>In: names, attributes and texts as they are. Out: text that an XML reader and a browser's HTML
 * reader understand alike. Numbers are written with fixed decimals and the dot of the root locale,
 * so the same tree is the same bytes everywhere. Refused: attribute names given twice, and
 * characters that XML cannot carry are left out. Start with {@link daylight.report.markup.Tag}.
 */
@NullMarked
package daylight.report.markup;

import org.jspecify.annotations.NullMarked;
