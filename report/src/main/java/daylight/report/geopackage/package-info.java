/**
 * An atlas as a GeoPackage (OGC 12-128r, version 1.3): a SQLite file with one table a layer, made
 * in memory. In: a {@link daylight.report.map.Atlas}. Out: bytes, the same every time; the only
 * date in them is that of the visit. On WGS 84 where the site is tied to the earth, else in the
 * undefined Cartesian frame that the standard provides, in metres. Heights of the pipe are the z of
 * its points, in metres above the site datum in either frame. The only room of this module that
 * knows SQL. Start with {@link daylight.report.geopackage.GeoPackage}.
 *
 * <p>Source: {@code ogc-12-128} for tables, header and codes of geometries.
 */
@NullMarked
package daylight.report.geopackage;

import org.jspecify.annotations.NullMarked;
