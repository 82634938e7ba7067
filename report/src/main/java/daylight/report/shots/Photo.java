package daylight.report.shots;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * One photograph that the book gives for a finding.
 *
 * @param file its name within the results, such as {@code stills/F2-P1.jpg}
 * @param finding the label of what it shows
 * @param media its label in the book
 * @param taken by its camera's own clock, of which no zone is known; null where it does not say
 * @param width of the photograph itself, upright, pixels
 * @param picture the photograph, or a smaller copy in the same proportions
 */
public record Photo(
    String file,
    String finding,
    String media,
    @Nullable LocalDateTime taken,
    int width,
    Picture picture) {}
