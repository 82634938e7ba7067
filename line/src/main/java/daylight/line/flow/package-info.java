/**
 * Does it carry what comes, by gravity or by pump?
 *
 * <p>In: bores, slopes and roughness of pipes; a pump's curve, its lift, pipe and fittings; roofs,
 * rain, fixtures or a timed rise in a pit; each with its standard uncertainty. Out: what a pipe
 * carries when full ({@link daylight.line.flow.Gravity}), how deep and fast a flow runs in it, and
 * how likely it carries it; how high water backs up along a tree of pipes ({@link
 * daylight.line.flow.Backwater}); the flow at which a pump and its pipe agree ({@link
 * daylight.line.flow.Pumping}); how it comes and goes over its pit ({@link
 * daylight.line.flow.Cycles}); what rain brings ({@link daylight.line.flow.Rain}). Every figure
 * tells what its uncertainty comes from, and so which input decides. Units: cubic metres per
 * second, metres of head, metres per second; heads and lifts are positive upward, slopes with the
 * water.
 *
 * <p>What has no answer is one: a pipe that does not fall, a flow beyond its capacity, a pump whose
 * greatest head is below the lift, a pit that fills faster than it is emptied. Refused are figures
 * of a wall outside what its law is meant for, and bores, areas and lengths that are not positive.
 *
 * <p>Figures that nobody measures on site are data with their sources, {@link
 * daylight.line.flow.FlowTables}.
 *
 * <p>Sources: manning, chow-1959, colebrook, clamond-2009, hazen-williams, white-fm, aspe-vol2,
 * fritsch-carlson-1980, rational-method, engineersedge-water. Propagation of variance: Ghilani,
 * <em>Adjustment Computations</em>, ch. 6 (from memory).
 */
@NullMarked
package daylight.line.flow;

import org.jspecify.annotations.NullMarked;
