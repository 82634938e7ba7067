package daylight.line.book;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was done and measured at the site on one occasion.
 *
 * @param date the day; null when not recorded
 * @param crew who was there, by role or initials
 * @param complaint what the owner reported; null when not recorded
 * @param kit the instruments used
 * @param passes pushes of the camera, in order
 * @param locates where the transmitter was found from above
 * @param exposures where the pipe itself was laid bare or touched
 * @param ties measurements in plan
 * @param levels measurements of height
 * @param tests water, dye, hold and smoke tests
 * @param works cleaning and repairs
 * @param papers media, consents, tickets, marks of other services, advice declined
 */
public record Visit(
    Id id,
    @Nullable LocalDate date,
    List<String> crew,
    @Nullable Reported complaint,
    Kit kit,
    List<Pass> passes,
    List<Locate> locates,
    List<Exposure> exposures,
    List<Tie> ties,
    List<Level> levels,
    List<Test> tests,
    List<Work> works,
    Papers papers)
    implements Entry {
  public Visit {
    crew = List.copyOf(crew);
    passes = List.copyOf(passes);
    locates = List.copyOf(locates);
    exposures = List.copyOf(exposures);
    ties = List.copyOf(ties);
    levels = List.copyOf(levels);
    tests = List.copyOf(tests);
    works = List.copyOf(works);
  }
}
