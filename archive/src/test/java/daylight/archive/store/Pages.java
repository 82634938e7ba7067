package daylight.archive.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** A site as pages enter it: invented, one pipe, one visit, one push. */
final class Pages {
  static final By PHONE = new By("Someone", "phone", Instant.parse("2026-04-18T08:00:00Z"));
  static final By LAPTOP =
      new By("Someone Else", "laptop", Instant.parse("2026-04-18T12:00:00.5Z"));

  final UUID book;
  final UUID site;
  final UUID visit;
  final UUID push;

  Pages(String name) {
    book = id(name + " book");
    site = id(name + " site");
    visit = id(name + " visit");
    push = id(name + " push");
  }

  static UUID id(String name) {
    return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
  }

  static Archive opened(Path where) {
    return switch (Archive.open(where)) {
      case ArchiveOpening.Opened(Archive archive) -> archive;
      case ArchiveOpening.Refused(var why) -> throw new AssertionError(why);
    };
  }

  /** The book, its site, two landmarks, a pipe, a visit and a push. */
  List<Entered> begun() {
    return List.of(
        new Entered(
            book,
            null,
            "",
            0,
            "{\"daylight-book\": 1, \"units\": {\"distance\": \"ft\","
                + " \"depth\": \"ft\", \"bore\": \"in\", \"level\": \"ft\"}}"),
        new Entered(
            site,
            book,
            "site",
            0,
            "{\"name\": \"Willow Cottage\", \"address\": \"Nowhere 1\","
                + " \"invented\": \"yes\"}"),
        in(site, "landmarks", "A", "{\"label\": \"A\", \"kind\": \"corner\"}"),
        in(site, "landmarks", "B", "{\"label\": \"B\", \"kind\": \"corner\"}"),
        in(site, "nodes", "C1", "{\"label\": \"C1\", \"kind\": \"access\"}"),
        in(site, "nodes", "O1", "{\"label\": \"O1\", \"kind\": \"outlet\"}"),
        in(
            site,
            "reaches",
            "R1",
            "{\"label\": \"R1\", \"line\": \"drain\", \"from\": \"C1\", \"to\": \"O1\","
                + " \"water\": \"forward\", \"bore\": \"4 in\"}"),
        new Entered(
            visit, book, "visits", 0, "{\"date\": \"2026-04-18\", \"complaint\": \"It gurgles.\"}"),
        new Entered(
            push,
            visit,
            "passes",
            0,
            "{\"label\": \"P1\", \"entry\": \"C1\", \"walk\": [\"R1\"],"
                + " \"zero\": {\"reads\": 0}}"));
  }

  private Entered in(UUID parent, String section, String label, String content) {
    return new Entered(id(book + label), parent, section, 0, content);
  }

  /** A finding on the push. */
  Entered finding(int number, int base, String cable) {
    return new Entered(
        findingId(number),
        push,
        "findings",
        base,
        "{\"label\": \"F%d\", \"kind\": \"roots\", \"cable\": \"%s\", \"remark\": \"é #2: yes\"}"
            .formatted(number, cable));
  }

  UUID findingId(int number) {
    return id(book + " finding " + number);
  }

  /** The same, withdrawn. */
  Entered withdrawn(int number, int base) {
    return new Entered(findingId(number), push, "findings", base, null);
  }
}
