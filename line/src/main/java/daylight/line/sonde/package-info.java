/**
 * How deep and where is the transmitter, by the field it makes?
 *
 * <p>In: what the receiver showed over the pipe (where it fell silent along the pipe in metres,
 * strengths at two heights or at many places, a depth reading with the receiver's height, a lift
 * check), or a locate of the field book with the priors. Out: the sonde's place, depth, bearing and
 * tilt, each with its standard uncertainty and what they share; how wrong a receiver a lift check
 * could have found; depths of invert and cover with the parts of their variance; the named traps
 * that the readings look like. Units: metres and radians; strengths in any unit that stays the
 * same; depth is positive downward from the antenna or the stated surface; tilt is positive nose
 * up; bearings are clockwise. Refuses: lengths and strengths that cannot be; readings that no
 * dipole makes and walks that leave something open are answers that say so; readings that fit two
 * places about equally are answered with both. The field is that of a static magnetic dipole; soil
 * losses are left out, which holds to 3 m at 512 Hz in any soil above 5 ohm metres.
 *
 * <p>Start at {@link daylight.line.sonde.Sonde}.
 *
 * <p>Sources: griffiths-5.89, griffiths-9.4, pease-1997, karst-radiolocation, marquardt-1963,
 * iron-constants.
 */
@NullMarked
package daylight.line.sonde;

import org.jspecify.annotations.NullMarked;
