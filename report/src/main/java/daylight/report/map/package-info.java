/**
 * What a site holds for maps and drawings of other programs, before any format.
 *
 * <p>In: a {@link daylight.report.draw.Subject}. Out: an {@link daylight.report.map.Atlas}, which
 * has the rows of every {@link daylight.report.map.Layer}, each with its shape on the site grid in
 * metres and its values by the layer's {@link daylight.report.map.Field}s. That one table says what
 * there is: each writer goes through it, and the data dictionary is made of it, so none can have
 * what another lacks. Values are in metres and degrees; what is not known is absent, never zero,
 * and {@code missing} says why where that is known. A value that the table does not name, or of
 * another type, is our own bug and throws.
 *
 * <p>Start with {@link daylight.report.map.Atlas}.
 */
@NullMarked
package daylight.report.map;

import org.jspecify.annotations.NullMarked;
