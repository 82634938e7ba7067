/**
 * Quantities as people write them, with and without uncertainty, and what is wrong with an entry.
 *
 * <p><b>Comes in:</b> texts such as {@code 4' 7"}, {@code 1:48} or {@code 10 gpm}. <b>Goes out:</b>
 * a {@link daylight.line.measure.Reading} in SI units (metres, radians, seconds, m³, m³/s; slopes
 * and shares are ratios; temperatures are degrees Celsius), or a typed {@link
 * daylight.line.measure.Refusal} with texts that would have been understood. The other way, values
 * become texts in the units a person chose. There are no sentences in this room.
 *
 * <p><b>Signs:</b> lengths, slopes, angles and temperatures keep theirs; everything else refuses
 * negative values. Angles of the clock and bearings turn clockwise.
 *
 * <p><b>Refused:</b> bare numbers of a quantity without a chosen unit, any comma in a number,
 * exponents, twelve or more inches after feet, values beyond their dimension's range. Nothing is
 * guessed.
 *
 * <p><b>Start with</b> {@link daylight.line.measure.Quantities} to read, {@link
 * daylight.line.measure.Print} to show, {@link daylight.line.measure.Measured} for a value with its
 * standard uncertainty, {@link daylight.line.measure.Complaint} for a bad entry.
 *
 * <p><b>Sources</b> (from memory): 1 ft = 0.3048 m exactly, NIST Special Publication 811; US gallon
 * = 231 in³ exactly, NIST Handbook 44; rounding with uncertainty, Guide to the Expression of
 * Uncertainty in Measurement (JCGM 100), 7.2.6.
 */
@NullMarked
package daylight.line.measure;

import org.jspecify.annotations.NullMarked;
