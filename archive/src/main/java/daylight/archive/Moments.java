package daylight.archive;

import daylight.archive.form.Fields;
import daylight.line.measure.Argument;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalQuery;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Moments as people write them: {@code 10:42} of the visit's day, {@code 2026-04-18 10:42} in the
 * site's zone, or either date form with an offset. A local time that the clocks of the zone showed
 * twice or not at all is refused, not guessed.
 */
final class Moments {
  private final @Nullable ZoneId zone;
  private final @Nullable LocalDate day;

  Moments(@Nullable ZoneId zone, @Nullable LocalDate day) {
    this.zone = zone;
    this.day = day;
  }

  /** The moment at a key; null when none is written. */
  @Nullable Instant read(Fields fields, String key) {
    String text = fields.text(key);
    if (text == null) {
      return null;
    }
    return switch (parsed(text.replaceFirst("(?<=\\d) (?=\\d)", "T"))) {
      case OffsetDateTime fixed -> fixed.toInstant();
      case LocalDateTime local -> resolved(local, text, fields, key);
      case LocalTime time when day != null -> resolved(day.atTime(time), text, fields, key);
      case LocalTime time -> refused(FileTrouble.TIME_WITHOUT_DATE, text, fields, key);
      case null, default -> refused(FileTrouble.NOT_A_TIME, text, fields, key);
    };
  }

  private static @Nullable TemporalAccessor parsed(String text) {
    TemporalAccessor fixed = parsed(text, DateTimeFormatter.ISO_DATE_TIME, OffsetDateTime::from);
    if (fixed != null) {
      return fixed;
    }
    TemporalAccessor local =
        parsed(text, DateTimeFormatter.ISO_LOCAL_DATE_TIME, LocalDateTime::from);
    return local != null ? local : parsed(text, DateTimeFormatter.ISO_LOCAL_TIME, LocalTime::from);
  }

  private static @Nullable TemporalAccessor parsed(
      String text, DateTimeFormatter format, TemporalQuery<? extends TemporalAccessor> type) {
    try {
      return format.parse(text, type);
    } catch (DateTimeParseException e) {
      return null;
    }
  }

  private @Nullable Instant resolved(LocalDateTime local, String text, Fields fields, String key) {
    if (zone == null) {
      fields.complain(FileTrouble.TIME_WITHOUT_ZONE, key, new Argument.Text(text));
      return local.toInstant(ZoneOffset.UTC);
    }
    List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
    if (offsets.size() == 1) {
      return local.toInstant(offsets.getFirst());
    }
    if (offsets.isEmpty()) {
      return refused(FileTrouble.TIME_SKIPPED, text, fields, key);
    }
    List<String> both = offsets.stream().map(offset -> local.atOffset(offset).toString()).toList();
    fields.complain(
        FileTrouble.TIME_TWICE, key, new Argument.Text(text), new Argument.Choices(both));
    return null;
  }

  private static @Nullable Instant refused(
      FileTrouble code, String text, Fields fields, String key) {
    fields.complain(code, key, new Argument.Text(text));
    return null;
  }
}
