/**
 * Does it carry what comes, by gravity or by pump?
 *
 * <p>In: the fall along the line with bores and materials, roughness of materials, a pump's curve,
 * and the inflow from roofs, fixtures or a timed rise in a pit. Out: capacity of the worst stretch,
 * depth and speed of flow, whether it cleans itself; for a pump the operating point, run and rest
 * times and what drains back. Units: cubic metres per second, metres of head, metres per second;
 * heads and lifts are positive upward. Refuses: bores and roughness outside the range of the
 * formula; a pump whose shut-off head is below the static lift is an answer ("will not pump"),
 * never a number.
 *
 * <p>Sources: manning, chow-1959, colebrook, clamond-2009, swamee-jain-1976, white-fm,
 * epanet-manual-3.2, brater-king-1976, xon-pump.
 */
@NullMarked
package daylight.line.flow;

import org.jspecify.annotations.NullMarked;
