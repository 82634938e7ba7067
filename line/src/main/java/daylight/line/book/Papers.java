package daylight.line.book;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What belongs to a visit beside its measurements.
 *
 * @param media footage, photographs, voice notes
 * @param consents who agreed to what
 * @param tickets of the notify-before-you-dig service
 * @param services marks of other services on the ground
 * @param declined advice the owner did not take
 */
public record Papers(
    List<Media> media,
    List<Consent> consents,
    List<Ticket> tickets,
    List<ServiceMark> services,
    List<Declined> declined) {
  /** Nothing recorded. */
  public static final Papers NONE =
      new Papers(List.of(), List.of(), List.of(), List.of(), List.of());

  public Papers {
    media = List.copyOf(media);
    consents = List.copyOf(consents);
    tickets = List.copyOf(tickets);
    services = List.copyOf(services);
    declined = List.copyOf(declined);
  }

  /**
   * A file that belongs to the book.
   *
   * @param file its name relative to the book, inside the book's folder
   * @param sha256 its digest in lower-case hexadecimal; null when not recorded
   * @param pass the label of the pass it shows; null for none
   * @param pins where points of the site are seen on it, for a plan or a picture from above that is
   *     drawn beneath a sketch; nothing is ever computed from it
   */
  public record Media(
      Id id, Kind kind, String file, @Nullable String sha256, @Nullable String pass, List<Pin> pins)
      implements Entry {
    public Media {
      pins = List.copyOf(pins);
    }

    /** What a file holds. */
    public enum Kind {
      FOOTAGE,
      PHOTO,
      VOICE,
      DOCUMENT
    }
  }

  /**
   * A point of the site on a picture.
   *
   * @param point its label
   * @param across pixels from the left edge of the picture as it is shown
   * @param down pixels from its upper edge
   */
  public record Pin(String point, double across, double down) {}

  /**
   * Somebody agreed to something.
   *
   * @param signature the label of the file that holds the signature; null where nobody signed
   */
  public record Consent(
      Id id, String who, String what, @Nullable Instant when, @Nullable String signature)
      implements Entry {}

  /** A ticket of the notify-before-you-dig service. */
  public record Ticket(
      Id id, String number, @Nullable LocalDate issued, @Nullable LocalDate expires)
      implements Entry {}

  /**
   * A mark of another service on the ground.
   *
   * @param points labels of the points it was seen at, tied like any others
   */
  public record ServiceMark(Id id, Service service, List<String> points) implements Entry {
    public ServiceMark {
      points = List.copyOf(points);
    }
  }

  /** Whose mark it is. */
  public enum Service {
    ELECTRIC,
    GAS,
    COMMUNICATION,
    WATER,
    RECLAIMED_WATER,
    SEWER,
    UNKNOWN
  }

  /** Advice that was given and not taken. */
  public record Declined(Id id, String what, String who, @Nullable LocalDate date)
      implements Entry {}
}
