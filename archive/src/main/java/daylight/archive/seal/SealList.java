package daylight.archive.seal;

import daylight.archive.Sha256;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a bundle holds, as a text that can be read with the eyes: a line for each fact and for each
 * file, and at the end the SHA-256 of all lines before, which is the seal.
 *
 * @param facts what is known of the sealing, in the order in which it was told
 * @param items in the order of their names
 */
record SealList(Map<String, String> facts, List<Item> items) {
  /** Its own name in the bundle, where it comes first. */
  static final String NAME = "seal.txt";

  private static final String FORM = "daylight-seal 1";
  private static final Pattern FACT = Pattern.compile("fact ([a-z-]+) (\\P{Cntrl}*)");
  private static final Pattern FILE = Pattern.compile("file ([0-9a-f]{64}) (\\d{1,18}) (.+)");

  SealList {
    facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    items = List.copyOf(items);
    facts.forEach(
        (name, value) -> {
          if (!FACT.matcher(fact(name, value)).matches()) {
            throw new IllegalArgumentException("no fact of a seal: " + name + " " + value);
          }
        });
  }

  private static String fact(String name, String value) {
    return "fact " + name + " " + value;
  }

  /** All lines but the last. */
  private String told() {
    StringBuilder told = new StringBuilder(FORM).append('\n');
    facts.forEach((name, value) -> told.append(fact(name, value)).append('\n'));
    items.forEach(
        item ->
            told.append("file ")
                .append(item.content().hex())
                .append(' ')
                .append(item.size())
                .append(' ')
                .append(item.name())
                .append('\n'));
    return told.toString();
  }

  /** The SHA-256 of what it lists. */
  Sha256 seal() {
    return Sha256.of(told());
  }

  /** The whole text. */
  String text() {
    return told() + "seal " + seal().hex() + "\n";
  }

  /**
   * What was read of a text, line by line, as far as the lines are ones of a list.
   *
   * @param sound whether it is, to the letter, the text of that list
   */
  record Read(SealList list, boolean sound) {}

  /** Reads a text; empty where it does not begin as a list does. */
  static Optional<Read> read(String text) {
    if (!text.startsWith(FORM + "\n")) {
      return Optional.empty();
    }
    Map<String, String> facts = new LinkedHashMap<>();
    List<Item> items = new ArrayList<>();
    for (String line : text.split("\n", -1)) {
      Matcher fact = FACT.matcher(line);
      Matcher file = FILE.matcher(line);
      if (fact.matches()) {
        facts.put(fact.group(1), fact.group(2));
      } else if (file.matches() && Item.isName(file.group(3))) {
        items.add(
            new Item(file.group(3), Long.parseLong(file.group(2)), new Sha256(file.group(1))));
      }
    }
    SealList list = new SealList(facts, items);
    return Optional.of(new Read(list, list.text().equals(text)));
  }
}
