package daylight.archive;

import daylight.archive.form.Fields;
import daylight.line.book.Entry;
import daylight.line.book.Papers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads what belongs to a visit beside its measurements. */
final class PaperReader {
  private final Clerk clerk;
  private final Moments moments;
  private final MediaFiles files;

  PaperReader(Clerk clerk, Moments moments, @Nullable Path folder) {
    this.clerk = clerk;
    this.moments = moments;
    this.files = new MediaFiles(folder);
  }

  Papers papers(Fields visit) {
    return new Papers(
        rows(visit, "media", this::media),
        rows(visit, "consents", this::consent),
        rows(visit, "tickets", this::ticket),
        rows(visit, "services", this::service),
        rows(visit, "declined", this::declined));
  }

  private <T extends Entry> List<T> rows(Fields visit, String key, Function<Fields, T> reader) {
    List<T> rows = new ArrayList<>();
    visit.rows(key).forEach(row -> clerk.keep(rows, row, reader.apply(row)));
    return rows;
  }

  private Papers.Media media(Fields row) {
    List<Papers.Pin> pins = new ArrayList<>();
    row.rows("pins").forEach(pin -> pin(row, pin, pins));
    Papers.Media media =
        new Papers.Media(
            clerk.name(row, "media", "M"),
            row.choice("kind", Papers.Media.Kind.class, Papers.Media.Kind.DOCUMENT),
            row.wantedWords("file"),
            row.words("sha256"),
            row.words("pass"),
            pins);
    files.check(row, media);
    return media;
  }

  private static void pin(Fields media, Fields row, List<Papers.Pin> pins) {
    String point = row.wantedWords("of");
    double across = Pixels.along(row, "across");
    double down = Pixels.along(row, "down");
    if (row.sound()) {
      pins.add(new Papers.Pin(point, across, down));
    } else {
      media.spoil();
    }
  }

  private Papers.Consent consent(Fields row) {
    return new Papers.Consent(
        clerk.name(row, "consent", "consent-"),
        row.wantedWords("who"),
        row.wantedWords("what"),
        moments.read(row, "when"),
        row.words("signature"));
  }

  private Papers.Ticket ticket(Fields row) {
    return new Papers.Ticket(
        clerk.name(row, "ticket", "ticket-"),
        row.wantedWords("number"),
        row.date("issued"),
        row.date("expires"));
  }

  private Papers.ServiceMark service(Fields row) {
    return new Papers.ServiceMark(
        clerk.name(row, "service", "service-"),
        row.choice("service", Papers.Service.class, Papers.Service.UNKNOWN),
        row.texts("points"));
  }

  private Papers.Declined declined(Fields row) {
    return new Papers.Declined(
        clerk.name(row, "declined", "declined-"),
        row.wantedWords("what"),
        row.wantedWords("who"),
        row.date("date"));
  }
}
