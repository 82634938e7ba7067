/**
 * What is different from last time?
 *
 * <p>In: two passes over the same reaches, with the course each was placed on, their findings and
 * grades. Out: the passes aligned by joints, junctions and bends (an offset and a scale, with
 * standard uncertainties), and their findings matched: new, worse, same, better, gone. Units:
 * metres along the reach from its upstream node; a positive offset puts the later pass further
 * downstream. Refuses: passes that share no reach; a finding where the other pass could not see is
 * answered "not seen then", never new or gone.
 *
 * <p>Sources: none; the method is derived here.
 */
@NullMarked
package daylight.line.change;

import org.jspecify.annotations.NullMarked;
