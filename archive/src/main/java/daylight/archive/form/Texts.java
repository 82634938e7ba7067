package daylight.archive.form;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.UUID;

/** Texts that are neither words nor quantities; empty for a text that is none of them. */
final class Texts {
  private Texts() {}

  /** A day as in 2026-04-18 (ISO 8601). */
  static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** A UUID in full (RFC 9562, section 4). */
  static Optional<UUID> uuid(String text) {
    return text.matches("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}")
        ? Optional.of(UUID.fromString(text))
        : Optional.empty();
  }

  /** A plain decimal number from one to another. */
  static Optional<Double> number(String text, double least, double most) {
    return Optional.of(text)
        .filter(digits -> digits.matches("[-+]?\\d{1,9}(\\.\\d{1,40})?"))
        .map(Double::valueOf)
        .filter(number -> number >= least && number <= most);
  }
}
