package daylight.report.draw;

/**
 * Where a place of the line lies on a drawing, in points of its sheet, and what a cursor there
 * shows: a stroke from one height to another, and the region that holds the place with 95 %.
 *
 * @param x of the place, to the right
 * @param y of the place, down the sheet
 * @param from height on the sheet at which the cursor's stroke begins
 * @param to height on the sheet at which it ends; no stroke where it is the same
 * @param wide half axis of the region before it is turned; 0 where it has no width
 * @param high the other half axis
 * @param turn of the region, degrees clockwise
 */
public record Spot(
    double x, double y, double from, double to, double wide, double high, double turn) {}
