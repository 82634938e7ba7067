/**
 * An atlas in the formats of maps, drawings and tables. In: a {@link daylight.report.map.Atlas}.
 * Out: files by name, the same bytes every time.
 *
 * <p>KML holds longitude and latitude and is made only where the site is tied to the earth. DXF is
 * of release 12, on the site grid, in metres or feet as the reader measures, with the height of the
 * pipe as z where it is known. CSV and XLSX hold text that would be taken for a formula as text.
 * Values are in metres and degrees in every format.
 *
 * <p>Start with {@link daylight.report.exchange.MapFiles}. Sources: {@code ogc-07-147}, {@code
 * dxf-r12}, {@code rfc-4180}, {@code csv-injection}, {@code ecma-376}.
 */
@NullMarked
package daylight.report.exchange;

import org.jspecify.annotations.NullMarked;
