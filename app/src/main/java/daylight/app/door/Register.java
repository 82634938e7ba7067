package daylight.app.door;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The phones that joined, and the port at which they know this machine: a small file beside the
 * archive. A phone that was taken off the list stays in it, so that it can be told why.
 */
final class Register {
  static final String FILE = "phones.json";

  private static final JsonMapper MAPPER = new JsonMapper();
  private static final int HIGHEST_PORT = 65_535;

  /** When a phone was last seen need not be on the disk to the second. */
  private static final Duration SEEN = Duration.ofMinutes(1);

  /** So many that were taken off the list are remembered. */
  private static final int MOST_REVOKED = 200;

  private final Path file;
  private final Map<String, Phone> phones = new LinkedHashMap<>();
  private final Map<String, Instant> written = new LinkedHashMap<>();
  private int port;

  private Register(Path file) {
    this.file = file;
  }

  /**
   * That of the archive in a folder.
   *
   * @throws IOException where there is one that cannot be read, with what was expected
   */
  static Register of(Path archive) throws IOException {
    Register register = new Register(archive.resolve(FILE));
    if (Files.exists(register.file)) {
      register.read(Files.readAllBytes(register.file));
    }
    return register;
  }

  private void read(byte[] bytes) throws IOException {
    try {
      JsonNode all = MAPPER.readTree(bytes);
      port = all.required("port").asInt(-1);
      for (JsonNode one : all.required("phones")) {
        Phone phone = phone(one);
        phones.put(phone.number(), phone);
        written.put(phone.number(), phone.seen());
      }
      if (port < 0 || port > HIGHEST_PORT) {
        throw new IllegalArgumentException("port " + port);
      }
    } catch (JacksonException | IllegalArgumentException | DateTimeException e) {
      String found =
          e instanceof JacksonException json ? told(json) : String.valueOf(e.getMessage());
      throw new IOException(
          FILE
              + " is not the list of phones that was written here ("
              + found
              + "); expected an object with port and phones. Mend it, or remove it: then every"
              + " phone joins anew",
          e);
    }
  }

  private static String told(JacksonException e) {
    JsonLocation at = e.getLocation();
    String what = String.valueOf(e.getOriginalMessage()).replaceFirst("(?s)[:(\\n].*", "").strip();
    return at == null
        ? what
        : "line " + at.getLineNr() + ", column " + at.getColumnNr() + ": " + what;
  }

  private static Phone phone(JsonNode one) {
    return new Phone(
        one.required("number").asText(),
        one.required("name").asText(),
        one.required("secure").asBoolean(),
        Instant.parse(one.required("since").asText()),
        Instant.parse(one.required("seen").asText()),
        one.has("revoked") ? Instant.parse(one.get("revoked").asText()) : null);
  }

  private void write() throws IOException {
    ObjectNode all = MAPPER.createObjectNode().put("port", port);
    var list = all.putArray("phones");
    for (Phone phone : phones.values()) {
      ObjectNode one = list.addObject();
      one.put("number", phone.number()).put("name", phone.name()).put("secure", phone.secure());
      one.put("since", phone.since().toString()).put("seen", phone.seen().toString());
      if (phone.revoked() != null) {
        one.put("revoked", phone.revoked().toString());
      }
    }
    OwnerFile.write(file, MAPPER.writerWithDefaultPrettyPrinter().writeValueAsBytes(all));
    phones.values().forEach(phone -> written.put(phone.number(), phone.seen()));
  }

  /** The port at which the door was open last; 0 where it never was. */
  synchronized int port() {
    return port;
  }

  /** Remembers the port, for what waits in a phone waits for this address and port. */
  synchronized void port(int now) throws IOException {
    if (port != now) {
      int before = port;
      port = now;
      orElse(() -> port = before);
    }
  }

  /** All of them, the last that joined first; those that were taken off the list as well. */
  synchronized List<Phone> all() {
    return phones.values().stream()
        .sorted(Comparator.comparing(Phone::since).reversed().thenComparing(Phone::number))
        .toList();
  }

  synchronized Optional<Phone> find(String number) {
    return Optional.ofNullable(phones.get(number));
  }

  synchronized void join(Phone phone) throws IOException {
    phones.put(phone.number(), phone);
    orElse(() -> phones.remove(phone.number()));
  }

  /**
   * Takes a phone off the list; it is so at once, also where that cannot be written down.
   *
   * @throws IOException where it cannot, and the phone would be back when the program begins again
   */
  synchronized void revoke(String number, Instant now) throws IOException {
    Phone phone = phones.get(number);
    if (phone == null || !phone.isJoined()) {
      return;
    }
    phones.put(number, phone.revokedAt(now));
    List<String> old =
        phones.values().stream()
            .filter(one -> !one.isJoined())
            .sorted(Comparator.comparing(Phone::since).reversed())
            .skip(MOST_REVOKED)
            .map(Phone::number)
            .toList();
    old.forEach(phones::remove);
    write();
  }

  /** A phone asked for something. */
  synchronized void seen(String number, Instant now) {
    Phone phone = phones.get(number);
    if (phone == null) {
      return;
    }
    phones.put(number, phone.seenAt(now));
    Instant last = written.getOrDefault(number, Instant.EPOCH);
    if (last.plus(SEEN).isBefore(now)) {
      try {
        written.put(number, now);
        write();
      } catch (IOException full) {
        // It is known while the program runs, and no phone is turned away for it.
        return;
      }
    }
  }

  /** Writes, or undoes what cannot be written. */
  private void orElse(Runnable undo) throws IOException {
    try {
      write();
    } catch (IOException e) {
      undo.run();
      throw e;
    }
  }
}
