package daylight.app.field;

import daylight.app.door.Address;
import daylight.app.door.Authority;
import daylight.app.door.Codes;
import daylight.app.door.Doorkeeper;
import daylight.app.door.Phone;
import daylight.app.door.Square;
import daylight.report.markup.Tag;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What stands on the page of the phones: the door, a code, who joined, the secure connection. */
final class PhoneSheet {
  private static final DateTimeFormatter DAY_AND_TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss");
  private static final int CAUTIONS = 4;
  private static final int SQUARE = 264;

  private final Caller caller;
  private final Phrases phrases;
  private final Doorkeeper keeper;

  PhoneSheet(Caller caller, Doorkeeper keeper) {
    this.caller = caller;
    this.phrases = caller.phrases();
    this.keeper = keeper;
  }

  /**
   * @param wrong why an order was not carried out; null where it was
   */
  List<Tag> write(@Nullable String wrong) {
    Optional<Doorkeeper.Open> open = keeper.open();
    List<Tag> contents = new ArrayList<>();
    contents.add(Parts.heading(phrases.say("phones")));
    contents.add(Parts.paragraph("lead", phrases.say("phones.why")));
    if (wrong != null) {
      contents.add(
          Tag.of("div")
              .with("class", "trouble")
              .with("role", "alert")
              .add(Tag.of("h2", phrases.say("phones.trouble")))
              .add(Tag.of("p", wrong)));
    }
    contents.add(open.map(this::opened).orElseGet(this::shut));
    open.ifPresent(now -> contents.add(code(now)));
    if (open.isEmpty()) {
      // Before it is opened this comes first; afterwards the code does.
      contents.add(cautions());
    }
    contents.add(joined());
    if (open.isPresent()) {
      contents.add(cautions());
    }
    contents.add(secure(open.orElse(null)));
    return contents;
  }

  private Tag shut() {
    Tag section = Parts.section("door", phrases.say("phones.door"));
    section.add(Parts.paragraph("state", phrases.say("phones.shut")));
    List<Address> addresses = Address.ofThisMachine();
    if (addresses.isEmpty()) {
      section.add(Parts.paragraph("empty", phrases.say("phones.no_network")));
    } else {
      section.add(opening(addresses));
    }
    return section;
  }

  private Tag opening(List<Address> addresses) {
    Tag where = Tag.of("fieldset").add(Tag.of("legend", phrases.say("phones.where")));
    for (Address address : addresses) {
      String says =
          phrases.say(
              address.isPrivate() ? "phones.address" : "phones.address.public",
              address.text(),
              address.network());
      boolean first = address.equals(addresses.getFirst());
      where.add(choice("address", address.text(), says, first));
    }
    Tag form = Forms.form(caller, "/phones/open").add(where);
    if (keeper.authority().isPresent()) {
      form.add(
          Tag.of("fieldset")
              .add(Tag.of("legend", phrases.say("phones.how")))
              .add(choice("how", "secure", phrases.say("phones.how.secure"), true))
              .add(choice("how", "plain", phrases.say("phones.how.plain"), false)));
    }
    return form.add(Forms.submit(phrases.say("phones.open")));
  }

  private static Tag choice(String name, String value, String says, boolean chosen) {
    String id = name + "-" + value.replace('.', '-');
    Tag input =
        Tag.of("input")
            .with("type", "radio")
            .with("id", id)
            .with("name", name)
            .with("value", value);
    return Tag.of("div")
        .with("class", "tick")
        .add(chosen ? input.with("checked", "") : input)
        .add(Tag.of("label", says).with("for", id));
  }

  private Tag opened(Doorkeeper.Open open) {
    Tag section = Parts.section("door", phrases.say("phones.door"));
    section.add(
        Tag.of("p")
            .with("class", "state open")
            .text(phrases.say("phones.opened") + " ")
            .add(Tag.of("strong", open.origin())));
    section.add(Tag.of("p", phrases.say(open.secure() ? "phones.is_secure" : "phones.is_plain")));
    if (!open.isThere()) {
      section.add(Parts.paragraph("care", phrases.say("phones.gone", open.address().text())));
    }
    if (open.moved()) {
      section.add(Parts.paragraph("care", phrases.say("phones.moved", open.port())));
    }
    return section.add(
        Forms.form(caller, "/phones/shut").add(Forms.submit(phrases.say("phones.shut.go"))));
  }

  private Tag cautions() {
    List<Tag> items = new ArrayList<>();
    for (int i = 1; i <= CAUTIONS; i++) {
      items.add(Tag.of("li", phrases.say("phones.care." + i)));
    }
    return Parts.section("care", phrases.say("phones.care"))
        .add(Tag.of("div").with("class", "care").add(Tag.of("ul").addAll(items)));
  }

  private Tag code(Doorkeeper.Open open) {
    Tag section = Parts.section("code", phrases.say("phones.code"));
    Optional<Codes.Code> good = keeper.goodCode();
    good.ifPresent(
        code -> {
          String address = open.origin() + "/join?code=" + code.text();
          section.add(
              Tag.of("ol")
                  .add(Tag.of("li", phrases.say("phones.code.1")))
                  .add(Tag.of("li", phrases.say("phones.code.2")))
                  .add(Tag.of("li", phrases.say("phones.code.3", open.origin() + "/join"))));
          section.add(
              Tag.of("div")
                  .with("class", "scan")
                  .add(square(address, phrases.say("phones.code.picture")))
                  .add(
                      Tag.of("div")
                          .add(Parts.paragraph("code", code.spaced()))
                          .add(
                              Tag.of(
                                  "p", phrases.say("phones.code.until", at(code.until(), TIME))))));
        });
    Tag form = Forms.form(caller, "/phones/code");
    return section.add(
        form.add(
            Forms.submit(phrases.say(good.isPresent() ? "phones.code.more" : "phones.code.go"))));
  }

  /** Dark on white in every light, as cameras want it. */
  static Tag square(String address, String says) {
    Square square = Square.of(address);
    String side = Integer.toString(square.side());
    return Tag.of("svg")
        .with("class", "square")
        .with("role", "img")
        .with("aria-label", says)
        .with("viewBox", "0 0 " + side + " " + side)
        .with("width", SQUARE)
        .with("height", SQUARE)
        .with("shape-rendering", "crispEdges")
        .add(
            Tag.of("rect").with("width", side).with("height", side).with("fill", "#fff"),
            Tag.of("path").with("d", square.path()).with("fill", "#000"));
  }

  private Tag joined() {
    Tag section = Parts.section("joined", phrases.say("phones.joined"));
    List<Phone> phones = keeper.phones().stream().filter(Phone::isJoined).toList();
    if (phones.isEmpty()) {
      return section.add(Parts.paragraph("empty", phrases.say("phones.none")));
    }
    section.add(Parts.list("phones", phones.stream().map(this::row).toList()));
    return section.add(Parts.paragraph("quiet", phrases.say("phones.revoke.why")));
  }

  private Tag row(Phone phone) {
    return Tag.of("li")
        .add(
            Tag.of("div")
                .add(Tag.of("strong", phone.name()))
                .add(
                    Tag.of(
                        "span",
                        phrases.say(phone.secure() ? "phones.row.secure" : "phones.row.plain")))
                .add(
                    Tag.of(
                        "span", phrases.say("phones.row.since", at(phone.since(), DAY_AND_TIME))))
                .add(
                    Tag.of("span", phrases.say("phones.row.seen", at(phone.seen(), DAY_AND_TIME)))))
        .add(
            Forms.form(caller, "/phones/revoke")
                .add(Forms.hidden("number", phone.number()))
                .add(
                    Tag.of("button", phrases.say("phones.revoke"))
                        .with("class", "button second")
                        .with("type", "submit")
                        .with("aria-label", phrases.say("phones.revoke.whom", phone.name()))));
  }

  private static String at(Instant time, DateTimeFormatter how) {
    return time.atZone(ZoneId.systemDefault()).format(how);
  }

  private Tag secure(Doorkeeper.@Nullable Open open) {
    Tag section = Parts.section("secure", phrases.say("phones.secure"));
    Optional<Authority> known = keeper.authority();
    if (known.isEmpty()) {
      return section
          .add(Tag.of("p", phrases.say("phones.secure.why")))
          .add(Tag.of("p", phrases.say("phones.secure.cost")))
          .add(
              Forms.form(caller, "/phones/secure")
                  .add(Forms.submit(phrases.say("phones.secure.make"))));
    }
    Authority authority = known.get();
    section.add(
        Tag.of(
            "p", phrases.say("phones.secure.is", authority.name(), SecureSteps.until(authority))));
    section.add(Tag.of("p", phrases.say("secure.compare.how")));
    section.add(SecureSteps.fingerprint(authority));
    if (open != null && open.secure()) {
      String address = open.plainOrigin() + "/join/secure";
      section.add(Tag.of("p", phrases.say("phones.secure.scan")));
      section.add(
          Tag.of("div")
              .with("class", "scan")
              .add(square(address, phrases.say("phones.secure.picture")))
              .add(Tag.of("p", address).with("class", "long")));
    } else {
      section.add(Tag.of("p", phrases.say("phones.secure.shut")));
    }
    return section.add(
        Tag.of("p")
            .with("class", "turn")
            .add(Tag.of("a", phrases.say("phones.secure.steps")).with("href", "/join/secure")));
  }
}
