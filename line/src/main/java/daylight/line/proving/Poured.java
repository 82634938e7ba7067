package daylight.line.proving;

import daylight.line.book.Test;
import daylight.line.measure.Measured;
import org.jspecify.annotations.Nullable;

/**
 * How much water was put in, and what became of it.
 *
 * @param test the water run
 * @param in cubic metres; null when neither a volume nor a flow over a time was recorded
 * @param out what was caught, cubic metres; null when nothing was
 * @param missing what was put in and not caught, cubic metres: it may still stand in the pipe or
 *     have leaked; negative where more came than was put in; null unless both are known
 */
public record Poured(
    Test test, @Nullable Measured in, @Nullable Measured out, @Nullable Measured missing) {}
