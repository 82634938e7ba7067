package daylight.line.course;

import daylight.line.book.Id;
import daylight.line.book.Place;
import daylight.line.measure.Measured;
import daylight.line.survey.PlanPoint;
import org.jspecify.annotations.Nullable;

/**
 * How one locate or exposure fits the estimated course.
 *
 * @param entry which one
 * @param place the transmitter's place in the pipe
 * @param spot the surveyed spot; null when its ties do not give one
 * @param across how far the spot lies to the left of the course, metres; null without a spot
 * @param acrossSd standard uncertainty of {@code across}, metres; null without a spot
 * @param depth of the invert below the ground by this reading alone, metres; null without a depth
 * @param depthResidual how much deeper the course lies than this reading says, metres; null without
 *     a depth
 * @param off how many standard uncertainties the worst of these is away from the course
 * @param spotShows the smallest error of the spot square to the pipe that would show in 95 of 100
 *     cases, metres; null where nothing checks it
 * @param depthShows the same for the depth
 */
public record LocateFit(
    Id entry,
    Place place,
    @Nullable PlanPoint spot,
    @Nullable Double across,
    @Nullable Double acrossSd,
    @Nullable Measured depth,
    @Nullable Double depthResidual,
    double off,
    @Nullable Double spotShows,
    @Nullable Double depthShows) {}
