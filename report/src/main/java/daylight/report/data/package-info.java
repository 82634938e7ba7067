/**
 * Files for other programs.
 *
 * <p>{@code answers.json}: the answers with their figures in SI units and each sentence in words;
 * stop orders first, keys always in one order. {@code line.geojson} (RFC 7946): the line, findings,
 * locates, nodes and landmarks on WGS 84 where satellite fixes tie the site grid to the earth;
 * where none do, features without a place on the globe (section 3.2), their positions on the site
 * grid under {@code grid}, and why. Start with {@link daylight.report.data.AnswersFile} and {@link
 * daylight.report.data.LineFile}.
 */
@NullMarked
package daylight.report.data;

import org.jspecify.annotations.NullMarked;
