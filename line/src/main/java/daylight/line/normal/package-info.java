/**
 * Least squares over unknowns that hang on a tree, with a border that all of them share.
 *
 * <p>In: observation equations, each a {@link daylight.line.normal.Gradient}, a misfit and a
 * standard uncertainty. Out: the step that takes the misfits away, and the covariance of
 * neighbouring unknowns, both at a cost linear in the number of blocks. Units are the caller's.
 * Refuses an equation that ties blocks which are not neighbours on the tree; unknowns that nothing
 * determines are an ordinary result.
 *
 * <p>Start with {@link daylight.line.normal.Pattern}, then {@link daylight.line.normal.Normal}. The
 * unknowns come in blocks, each but the first with a parent that comes before it. Blocks are
 * eliminated from the leaves to the root and the border last, so nothing fills in: the factor has
 * the pattern of the matrix. Neighbouring blocks of the inverse follow from the root outward by the
 * recursion of Takahashi, Fagan and Chin, <em>Formation of a sparse bus impedance matrix</em>
 * (1973), and Golub and Plemmons, <em>Large-scale geodetic least-squares adjustment by dissection
 * and orthogonal decomposition</em> (1980), both from memory. Sources: takahashi-1973, golub-1980.
 */
@NullMarked
package daylight.line.normal;

import org.jspecify.annotations.NullMarked;
