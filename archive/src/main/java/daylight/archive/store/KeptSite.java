package daylight.archive.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A site that is kept.
 *
 * @param book the identity of its book
 * @param address empty where none was written
 * @param visits how many
 * @param lastVisit null where no visit says its day
 * @param changed when it was written to last
 */
public record KeptSite(
    UUID book,
    String name,
    String address,
    int visits,
    @Nullable LocalDate lastVisit,
    Instant changed) {}
