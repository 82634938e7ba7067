/**
 * How deep and where is the transmitter, by the field it makes?
 *
 * <p>In: what the receiver showed over the pipe (distances of nulls and peaks along the pipe in
 * metres, field strengths of two antennas as ratios, a depth reading, the receiver's height, a lift
 * check). Out: the sonde's depth below the antenna and below its surface, its position along the
 * walk and its tilt, each with its standard uncertainty, and the named traps that the readings look
 * like. Units: metres and radians; depth is positive downward from the stated surface; tilt is
 * positive nose up. Refuses: non-positive spacings and ratios that no dipole makes; readings that
 * fit two places equally are answered with both. The field is that of a static magnetic dipole;
 * soil losses are left out, which holds to 3 m at 512 Hz in any soil above 5 ohm metres.
 *
 * <p>Sources: griffiths-5.89, griffiths-9.4, pease-1997.
 */
@NullMarked
package daylight.line.sonde;

import org.jspecify.annotations.NullMarked;
