package daylight.report.words;

import daylight.line.book.FieldBook;
import daylight.line.book.Node;
import daylight.line.measure.Argument;
import daylight.line.proving.Connection;
import java.util.List;
import java.util.Locale;

/**
 * Says where what comes in and how that is known.
 *
 * @param book whose places are named
 */
public record ConnectionWords(Words words, FieldBook book) {
  /** What comes in: its words and its label. */
  public String source(Connection connection) {
    String what = connection.what();
    String kind = words.word("connection." + lower(connection.kind()));
    String named = what == null ? kind : what;
    return named.equals(connection.source())
        ? Words.capitalised(named)
        : Words.capitalised(named) + " (" + connection.source() + ")";
  }

  /** Where it comes in. */
  public String joins(Connection connection) {
    String label = connection.joins();
    return book.site()
        .findNode(label)
        .map(Node::what)
        .map(what -> what + " (" + label + ")")
        .orElse(label);
  }

  /** How that is known. */
  public String known(Connection connection) {
    return words.say(
        "connection." + lower(connection.known()), new Argument.Several(labels(connection.by())));
  }

  /** What speaks against it; nothing where nothing does. */
  public String against(Connection connection) {
    return connection.against().isEmpty()
        ? ""
        : words.say("connection.against", new Argument.Several(labels(connection.against())));
  }

  /** All of it in a sentence. */
  public String sentence(Connection connection) {
    String said =
        words.say(
            "connection.sentence",
            new Argument.Text(source(connection)),
            new Argument.Text(joins(connection)),
            new Argument.Text(known(connection)));
    String against = against(connection);
    return against.isEmpty() ? said : said + " " + Words.capitalised(against) + ".";
  }

  private static List<Argument> labels(List<String> labels) {
    return labels.stream().map(label -> (Argument) new Argument.Label(label)).toList();
  }

  private static String lower(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
