package daylight.app.field;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.web.Sent;
import daylight.app.web.Types;
import daylight.archive.Sha256;
import daylight.archive.store.Arrival;
import daylight.archive.store.By;
import daylight.archive.store.MediaFolder;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;

/** Photographs and voice notes, which come piece by piece and go on where a line was cut. */
final class PushMedia implements Pages {
  /** No photograph and no note is longer, bytes. */
  static final long LARGEST = 200L << 20;

  private static final Pattern NAME =
      Pattern.compile("(?:photo|voice)-[0-9a-f-]{36}\\.(?:jpg|png|weba|m4a|ogg)");
  private static final Pattern NUMBER = Pattern.compile("\\d{1,12}");

  private final Office office;

  PushMedia(Office office) {
    this.office = office;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.post("/site/{book}/media/{sha}", reply -> office.withBook(reply, b -> take(reply, b)));
    routes.get("/site/{book}/media/{name}", this::show);
  }

  /** A piece, or with an empty one the question how much is there. */
  private void take(Context reply, BookNow book) {
    String sha = reply.pathParam("sha");
    String name = asked(reply, "name");
    String from = asked(reply, "from");
    String length = asked(reply, "length");
    Optional<By> by = office.scribe(reply);
    if (by.isEmpty()) {
      return;
    }
    if (!Sha256.isOne(sha)
        || !NAME.matcher(name).matches()
        || !NUMBER.matcher(from).matches()
        || !NUMBER.matcher(length).matches()) {
      office.refuse(reply, 400, "push.media.shape");
    } else if (Long.parseLong(length) > LARGEST || Long.parseLong(length) == 0) {
      office.refuse(reply, 413, "push.media.large", LARGEST >> 20);
    } else {
      try {
        piece(
            reply,
            book,
            new Piece(name, new Sha256(sha), Long.parseLong(from), Long.parseLong(length)),
            by.get());
      } catch (IOException e) {
        office.refuse(reply, 507, "push.media.disk");
      }
    }
  }

  private record Piece(String name, Sha256 content, long from, long length) {}

  private void piece(Context reply, BookNow book, Piece piece, By by) throws IOException {
    Optional<byte[]> body = office.body(reply);
    if (body.isEmpty()) {
      return;
    }
    byte[] bytes = body.get();
    if (piece.from() == 0 && bytes.length > 0 && !isWhatItsNameSays(piece.name(), bytes)) {
      office.refuse(reply, 415, "push.media.other");
      return;
    }
    MediaFolder media = office.archive().media();
    // A question takes nothing in, for what came before would be cut off at where it begins.
    Arrival arrival =
        bytes.length > 0
            ? media.receive(
                piece.content(), piece.length(), piece.from(), new ByteArrayInputStream(bytes))
            : media.file(piece.content()).isPresent()
                ? new Arrival.Whole()
                : new Arrival.Partly(media.arrived(piece.content()));
    ObjectNode out = EntryJson.object();
    switch (arrival) {
      case Arrival.Whole() -> {
        office.archive().nameMedia(book.book(), piece.name(), piece.content(), by);
        out.put("state", "whole");
      }
      case Arrival.Partly(long there) -> out.put("state", "partly").put("bytes", there);
      case Arrival.Other() -> out.put("state", "other");
      case Arrival.Busy() -> out.put("state", "busy");
    }
    Office.json(reply, out);
  }

  /**
   * Whether the first bytes are those of its kind: file signatures of JPEG, PNG, WebM, MP4, Ogg.
   */
  static boolean isWhatItsNameSays(String name, byte[] bytes) {
    return switch (name.substring(name.lastIndexOf('.') + 1)) {
      case "jpg" -> begins(bytes, 0, 0xff, 0xd8, 0xff);
      case "png" -> begins(bytes, 0, 0x89, 'P', 'N', 'G', 0x0d, 0x0a, 0x1a, 0x0a);
      case "weba" -> begins(bytes, 0, 0x1a, 0x45, 0xdf, 0xa3);
      case "m4a" -> begins(bytes, 4, 'f', 't', 'y', 'p');
      case "ogg" -> begins(bytes, 0, 'O', 'g', 'g', 'S');
      default -> false;
    };
  }

  private static boolean begins(byte[] bytes, int at, int... wanted) {
    if (bytes.length < at + wanted.length) {
      return false;
    }
    for (int i = 0; i < wanted.length; i++) {
      if ((bytes[at + i] & 0xff) != wanted[i]) {
        return false;
      }
    }
    return true;
  }

  private void show(Context reply) throws IOException {
    String name = reply.pathParam("name");
    Optional<UUID> book = Office.id(reply.pathParam("book"));
    Optional<Path> file =
        NAME.matcher(name).matches()
            ? book.map(office.archive()::mediaOf)
                .map(all -> all.get(name))
                .flatMap(office.archive().media()::file)
            : Optional.empty();
    if (file.isEmpty()) {
      reply.status(HttpStatus.NOT_FOUND);
    } else {
      Sent.part(reply, file.get(), Types.of(name));
    }
  }

  private static String asked(Context request, String name) {
    String given = request.queryParam(name);
    return given == null ? "" : given;
  }
}
